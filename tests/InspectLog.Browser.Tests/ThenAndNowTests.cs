using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>One place then and now: the handle by finger, mouse and keys, and what is seen of each photo.</summary>
public sealed class ThenAndNowTests(BrowserFixture fixture, DemoFixture demo) : IClassFixture<DemoFixture>
{
    [Fact]
    public async Task Handle_moves_by_keys_and_by_finger_and_the_three_looks_are_different_pictures()
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program, new() { HasTouch = true });
        var page = visit.Page;
        await OpenAsync(page);
        var picture = page.Locator("[data-over] svg");
        var handle = page.GetByLabel("Earlier photo");
        await Expect(picture).ToBeVisibleAsync();

        await handle.FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await Expect(page.Locator("#over-clip rect")).ToHaveAttributeAsync("width", "0");
        await page.Keyboard.PressAsync("End");
        await Expect(page.Locator("#over-clip rect")).ToHaveAttributeAsync("width", "1000");

        var box = (await picture.BoundingBoxAsync())!;
        await page.Touchscreen.TapAsync(box.X + (box.Width / 4), box.Y + (box.Height / 2));
        await Expect(handle).ToHaveValueAsync("25");
        await page.Mouse.MoveAsync(box.X + (box.Width / 4), box.Y + (box.Height / 2));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + (box.Width * 3 / 4), box.Y + (box.Height / 2));
        await page.Mouse.UpAsync();
        await Expect(handle).ToHaveValueAsync("75");

        var wiped = await picture.ScreenshotAsync();
        await page.GetByLabel("Fading").CheckAsync();
        var faded = await picture.ScreenshotAsync();
        await page.GetByLabel("What changed").CheckAsync();
        await Expect(page.GetByText("Bright is where the two differ")).ToBeVisibleAsync();
        var changed = await picture.ScreenshotAsync();

        Assert.NotEqual(wiped, faded);
        Assert.NotEqual(faded, changed);
        Assert.Empty(visit.Watch.Complaints);
    }

    [Fact]
    public async Task Page_is_accessible_in_every_look_and_says_all_without_scripts()
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        await OpenAsync(visit.Page);
        foreach (var look in Look.All)
        {
            await look.TakeOnAsync(visit.Page);
            Assert.Empty(await PressTargets.FaultsAsync(visit.Page));
            Assert.Equal((look, 0), (look, await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")));
        }

        await using var plain = await Visit.OpenAsync(fixture.Browser, demo.Program, new() { JavaScriptEnabled = false });
        await OpenAsync(plain.Page);
        await Expect(plain.Page.Locator("[data-over] svg")).ToBeVisibleAsync();
        await Expect(plain.Page.GetByLabel("Earlier photo")).ToBeHiddenAsync();
    }

    /// <summary>By the ways a person goes: from the vehicle to its photos, and to the first part with photos of two years.</summary>
    private static async Task OpenAsync(IPage page)
    {
        await page.GotoAsync("/vehicles/marigold");
        await page.GetByRole(AriaRole.Link, new() { Name = "All photos, part by part" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Then and now") }).First.ClickAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync("Then and now");
    }
}
