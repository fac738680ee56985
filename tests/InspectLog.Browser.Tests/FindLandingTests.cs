using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>A hit that is pressed brings what was searched for into view, said in words, on a phone and on a laptop.
/// </summary>
public sealed class FindLandingTests(BrowserFixture fixture, DemoFixture demo) : IClassFixture<DemoFixture>
{
    [Theory]
    [InlineData(390, 844, "tower 3 corroded", "corroded")]
    [InlineData(1280, 900, "tower 3 corroded", "corroded")]
    [InlineData(390, 844, "lead resistance lead 1 pass", "kΩ")]
    [InlineData(1280, 900, "lead resistance lead 1 pass", "kΩ")]
    [InlineData(390, 844, "loose end", "Done")]
    [InlineData(390, 844, "inspection started", "The inspection of")]
    [InlineData(390, 844, "teasel van", "Teasel")]
    public async Task Hit_brings_its_entry_into_view_and_says_so(int width, int height, string words, string holds)
    {
        await using var visit = await Visit.OpenAsync(
            fixture.Browser, demo.Program, new() { ViewportSize = new() { Width = width, Height = height } });
        var page = visit.Page;
        await page.GotoAsync($"/find?words={Uri.EscapeDataString(words)}");

        await page.Locator(".hit a").First.ClickAsync();

        var mark = page.Locator(".found-mark");
        await Expect(mark).ToHaveTextAsync("What you searched for");
        await Expect(mark).ToBeInViewportAsync(new() { Ratio = 1 });
        await Expect(page.Locator(":has(> .found-mark)")).ToContainTextAsync(holds);
        await page.UntilAsync("document.readyState === 'complete'");

        // What the bench reads anew on its own leaves the mark where it is.
        await page.WaitForTimeoutAsync(1000);
        await Expect(mark).ToBeInViewportAsync(new() { Ratio = 1 });
        Assert.False(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth > innerWidth"));
        Assert.Empty(visit.Watch.Complaints);
    }

    [Fact]
    public async Task Without_scripts_a_hit_lands_too()
    {
        await using var visit = await Visit.OpenAsync(
            fixture.Browser, demo.Program, new() { JavaScriptEnabled = false, ViewportSize = new() { Width = 390, Height = 844 } });
        await visit.Page.GotoAsync("/find?words=loose+end");

        await visit.Page.Locator(".hit a").First.ClickAsync();

        await Expect(visit.Page.Locator(".found-mark")).ToBeInViewportAsync(new() { Ratio = 1 });
    }
}
