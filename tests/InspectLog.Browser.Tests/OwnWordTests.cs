using InspectLog.Browser.Tests.Support;
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
        await page.Keyboard.TypeAsync("Lead con");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.GetByLabel("It means").GetByRole(Microsoft.Playwright.AriaRole.Option)).ToHaveCountAsync(6);
        await Expect(page.GetByLabel("You say")).ToHaveValueAsync("cooked");
        await page.GetByLabel("It means").FocusAsync();
        await page.Keyboard.TypeAsync("burnt");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.Locator("tbody tr")).ToContainTextAsync("burnt, of Lead condition");
        Assert.Empty(visit.Watch.Complaints);
    }
}
