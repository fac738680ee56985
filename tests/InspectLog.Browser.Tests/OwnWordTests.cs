using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>A word of the workshop's own is added with the keyboard alone, with scripts and without.</summary>
public sealed class OwnWordTests(BrowserFixture fixture)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Word_is_added_in_two_steps_by_keyboard(bool scripts)
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await Visit.OpenAsync(fixture.Browser, program, new() { JavaScriptEnabled = scripts });
        var page = visit.Page;
        await page.GotoAsync("/words");

        await page.GetByLabel("You say").FocusAsync();
        await page.Keyboard.TypeAsync("cooked");
        await page.Keyboard.PressAsync("Tab");
        await ChooseAsync(page.GetByLabel("Check it belongs to"), "Lead con", "Lead condition (Breakerless ignition)");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.GetByLabel("It means").GetByRole(AriaRole.Option)).ToHaveCountAsync(6);
        await Expect(page.GetByLabel("You say")).ToHaveValueAsync("cooked");
        await page.GetByLabel("It means").FocusAsync();
        await ChooseAsync(page.GetByLabel("It means"), "burnt", "burnt");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.Locator("tbody tr")).ToContainTextAsync("burnt, of Lead condition");
        Assert.Empty(visit.Watch.Complaints);
    }

    /// <summary>Types what an option begins with. Keys that come with a second between them, as they can on a busy machine,
    /// each begin a new search in the list: then they are typed again.</summary>
    private static async Task ChooseAsync(ILocator list, string keys, string option)
    {
        for (var attempt = 0; attempt < 10 && await ChosenAsync() != option; attempt++)
        {
            await list.Page.Keyboard.TypeAsync(keys);
            await list.Page.WaitForTimeoutAsync(1100); // the search is over
        }

        Assert.Equal(option, await ChosenAsync());

        Task<string> ChosenAsync() => list.EvaluateAsync<string>("one => one.selectedOptions[0].text");
    }
}
