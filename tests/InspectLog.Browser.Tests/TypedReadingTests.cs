using System.Text.RegularExpressions;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>A reading typed by hand: by keyboard alone, without scripts, and straight from the start page.</summary>
public sealed class TypedReadingTests(BrowserFixture fixture)
{
    private static readonly Regex Passed = new("9\\.400?\u00a0kΩ ± .*: pass\\.");

    /// <summary>From the start page to the first decided reading: counts what a newcomer has to press.</summary>
    [Fact]
    public async Task First_decided_reading_takes_four_presses_a_name_and_a_value()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await Visit.OpenAsync(fixture.Browser, program);
        var page = visit.Page;
        var presses = 0;
        Task PressAsync(ILocator target)
        {
            presses++;
            return target.ClickAsync();
        }

        await page.GetByLabel("What do you call the first vehicle?").FillAsync("Marigold");
        await PressAsync(page.Button("Add it"));
        await PressAsync(page.Button("Start with 6 cylinders"));
        await PressAsync(page.Locator("#tools").GetByText("Measure"));
        await Expect(page.GetByLabel("Value", new() { Exact = true })).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("9.4");
        await PressAsync(page.Locator("#measure").GetByRole(AriaRole.Button, new() { Name = "Keep reading" }));

        await Expect(page.Locator("#result .decision")).ToBeVisibleAsync();
        Assert.Equal(4, presses);
        Assert.Empty(visit.Watch.Complaints);
    }

    /// <summary>On a slow line the page is there before its scripts are.</summary>
    [Fact]
    public async Task Tool_pressed_before_the_scripts_arrive_has_the_focus_once_they_do()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await Visit.OpenAsync(fixture.Browser, program);
        var page = visit.Page;
        await page.StartFirstInspectionAsync();
        var arrives = new TaskCompletionSource();
        await page.RouteAsync("**/js/tools.js*", async route =>
        {
            await arrives.Task;
            await route.ContinueAsync();
        });

        await page.ReloadAsync(new() { WaitUntil = WaitUntilState.Commit });
        await page.Locator("#tools").GetByText("Measure").ClickAsync();
        await Expect(page.GetByLabel("Value", new() { Exact = true })).ToBeVisibleAsync();
        arrives.SetResult();

        await Expect(page.GetByLabel("Value", new() { Exact = true })).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Keyboard_alone_gets_from_the_start_page_to_a_decision()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await Visit.OpenAsync(fixture.Browser, program);
        var page = visit.Page;

        await TabToAsync(page, page.GetByLabel("What do you call the first vehicle?"));
        await page.Keyboard.TypeAsync("Marigold");
        await page.Keyboard.PressAsync("Enter");
        await TabToAsync(page, page.Button("Start with 6 cylinders"));
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#bench")).ToBeVisibleAsync();
        await TabToAsync(page, page.Locator("#sheet").GetByRole(AriaRole.Link).Filter(new() { HasText = "Coil secondary" }));
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#check-title")).ToBeFocusedAsync();
        await TabToAsync(page, page.Locator("#measure > summary"));
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByLabel("Value", new() { Exact = true })).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("9.4k");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.Locator("#result")).ToHaveAttributeAsync("data-sentence", Passed);
        await Expect(page.Locator("#result")).ToBeFocusedAsync();
        await Expect(page.Locator("#announcements")).ToHaveTextAsync(Passed);
        Assert.Empty(visit.Watch.Complaints);
    }

    [Fact]
    public async Task Without_scripts_a_reading_can_be_typed_and_decided()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await Visit.OpenAsync(fixture.Browser, program, new() { JavaScriptEnabled = false });
        var page = visit.Page;

        await page.StartFirstInspectionAsync();
        await page.OpenCoilSecondaryAsync();
        await page.MeasureAsync("9.4");

        await Expect(page.Locator("#result")).ToHaveAttributeAsync("data-sentence", Passed);
        await Expect(page).ToHaveURLAsync(new Regex(@"check=coil-secondary-resistance"));
    }

    /// <summary>Presses Tab until the element has the focus; a keyboard user can go no other way.</summary>
    private static async Task TabToAsync(IPage page, ILocator target)
    {
        const int patience = 100;
        for (var pressed = 0; pressed < patience; pressed++)
        {
            if (await target.EvaluateAsync<bool>("element => element === document.activeElement"))
            {
                return;
            }

            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"{patience} presses of Tab did not reach {target}.");
    }
}
