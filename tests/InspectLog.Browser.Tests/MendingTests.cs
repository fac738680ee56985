using System.Text.RegularExpressions;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>Mistakes are cheap: what was recorded is put right, withdrawn and restored where it stands, on a phone.</summary>
public sealed class MendingTests(BrowserFixture fixture)
{
    private static readonly BrowserNewContextOptions Phone = new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true };

    private int _presses;

    [Fact]
    public async Task Older_reading_is_put_right_in_two_presses_and_the_value()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await OpenBenchAsync(program, Phone);
        var page = visit.Page;
        await MeasureAsync(page, "coil-secondary-resistance", "8.4");
        await MeasureAsync(page, "supply-voltage", "12.4");
        var older = page.Locator("#captures > li").Filter(new() { HasText = "8.40" });
        _presses = 0;

        await PressAsync(older.GetByRole(AriaRole.Button, new() { NameRegex = new("^Change") }));
        await Expect(older.GetByLabel("Value")).ToBeFocusedAsync();
        await Expect(older.GetByLabel("Value")).ToBeInViewportAsync();
        Assert.Empty(await PressTargets.FaultsAsync(page));
        await page.Keyboard.TypeAsync("9.1");
        await PressAsync(older.GetByRole(AriaRole.Button, new() { Name = "Save the change" }));

        var mended = page.Locator("#captures > li").Filter(new() { HasText = "9.10" });
        await Expect(mended).ToContainTextAsync(new Regex("Put right\\s+at \\d\\d:\\d\\d by Tess Okafor, was 8\\.40"));
        await Expect(mended.Locator("[data-amending]")).ToHaveCountAsync(0);
        await Expect(mended.GetByRole(AriaRole.Button, new() { NameRegex = new("^Change") })).ToBeFocusedAsync();
        Assert.Equal(2, _presses);
        Assert.Empty(visit.Watch.Complaints);
    }

    [Fact]
    public async Task Withdrawal_takes_a_press_on_its_reason_and_one_to_undo_and_a_refusal_is_in_view()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await OpenBenchAsync(program, Phone);
        var page = visit.Page;
        await MeasureAsync(page, "coil-secondary-resistance", "8.4");
        var item = page.Locator("#captures > li").First;

        await PressAsync(item.GetByText("Withdraw", new() { Exact = true }));
        await PressAsync(item.GetByRole(AriaRole.Button, new() { Name = "Withdraw it" }));
        await Expect(item.Locator(".problems")).ToBeInViewportAsync();
        await Expect(item.Locator(".problems")).ToContainTextAsync("Say why it no longer counts");
        await PressAsync(item.GetByRole(AriaRole.Button, new() { Name = "Misread" }));

        await Expect(item).ToContainTextAsync(new Regex("Withdrawn\\s+at \\d\\d:\\d\\d by Tess Okafor: misread"));
        var undo = item.GetByRole(AriaRole.Button, new() { NameRegex = new("^Undo") });
        await Expect(undo).ToBeFocusedAsync();
        await Expect(undo).ToBeInViewportAsync();
        await PressAsync(undo);

        await Expect(item).Not.ToContainTextAsync("Withdrawn");
        await Expect(item).ToContainTextAsync("8.40");
        Assert.Empty(visit.Watch.Complaints);
    }

    [Fact]
    public async Task Findings_of_a_typed_note_are_changed_given_their_place_and_confirmed()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await OpenBenchAsync(program, Phone);
        var page = visit.Page;
        await page.Locator("#write > summary").ClickAsync();
        await page.GetByLabel("Note", new() { Exact = true }).FillAsync("Tower two corroded. Lead resistance is 9 k. Plug four wet.");
        await page.Button("Keep note").ClickAsync();
        var item = page.Locator("#captures > li").First;
        await Expect(item.Locator("mark")).ToHaveCountAsync(3);

        await item.GetByRole(AriaRole.Link, new() { NameRegex = new("^Change .*tower 2") }).ClickAsync();
        await page.GetByLabel("Place (where a check has several)").SelectOptionAsync("3");
        await page.Button("Record it so").ClickAsync();
        await Expect(item).ToContainTextAsync(new Regex("Cap contacts, tower 3:\\s*corroded"));
        await Expect(item).ToContainTextAsync("Understood at first: Cap contacts, tower 2: corroded");

        await Expect(item).ToContainTextAsync("Which lead?");
        _presses = 0;
        await PressAsync(item.GetByRole(AriaRole.Button, new() { Name = "Confirm for lead 5" }));
        await Expect(item).ToContainTextAsync(new Regex("Lead resistance, lead 5:\\s*9\\.00"));
        Assert.Equal(1, _presses);

        await item.GetByRole(AriaRole.Button, new() { NameRegex = new("^Confirm .*plug 4") }).ClickAsync();
        await Expect(item).ToContainTextAsync(new Regex("plug 4:\\s*wet, confirmed"));
        Assert.Empty(visit.Watch.Complaints);
    }

    [Fact]
    public async Task Form_that_was_opened_stays_with_what_is_typed_while_the_bench_brings_news()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await OpenBenchAsync(program, new());
        var page = visit.Page;
        await MeasureAsync(page, "coil-secondary-resistance", "8.4");
        var item = page.Locator("#captures > li").Last;
        await item.GetByRole(AriaRole.Button, new() { NameRegex = new("^Change") }).ClickAsync();
        await item.GetByLabel("Value").FillAsync("9.");
        var second = await page.Context.NewPageAsync();
        await second.GotoAsync(page.Url);
        await MeasureAsync(second, "supply-voltage", "12.4");

        await Expect(page.Locator("#captures > li")).ToHaveCountAsync(2);
        await Expect(item.GetByLabel("Value")).ToHaveValueAsync("9.");

        await item.GetByRole(AriaRole.Link, new() { Name = "Leave it as it is" }).ClickAsync();
        await Expect(item.Locator("[data-amending]")).ToHaveCountAsync(0);
        await Expect(item).ToContainTextAsync("8.40");
    }

    [Fact]
    public async Task Without_scripts_the_same_form_is_a_page()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(folder.Path);
        await using var visit = await OpenBenchAsync(program, new() { JavaScriptEnabled = false });
        var page = visit.Page;
        await MeasureAsync(page, "coil-secondary-resistance", "8.4");

        await page.Locator("#captures > li").GetByRole(AriaRole.Button, new() { NameRegex = new("^Change") }).ClickAsync();
        await page.GetByLabel("Value").FillAsync("9.1");
        await page.Button("Save the change").ClickAsync();

        await Expect(page.Locator("#captures > li")).ToContainTextAsync("was 8.40");
        await Expect(page).ToHaveURLAsync(new Regex("#item-\\d+$"));
    }

    private async Task<Visit> OpenBenchAsync(RunningProgram program, BrowserNewContextOptions options)
    {
        var visit = await Visit.OpenAsync(fixture.Browser, program, options);
        await visit.Page.StartFirstInspectionAsync();
        return visit;
    }

    private static async Task MeasureAsync(IPage page, string check, string value)
    {
        await page.GotoAsync(new Uri(new Uri(page.Url), $"?check={check}").ToString());
        await page.MeasureAsync(value);
        await Expect(page.Locator("#result .decision")).ToBeVisibleAsync();
    }

    private Task PressAsync(ILocator target)
    {
        _presses++;
        return target.ClickAsync();
    }
}
