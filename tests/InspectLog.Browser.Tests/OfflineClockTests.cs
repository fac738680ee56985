using System.Globalization;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>What was switched on while the network is gone has its clock all the same, and what is typed meanwhile stays.</summary>
public sealed class OfflineClockTests(BrowserFixture fixture) : BenchTests(fixture)
{
    [Fact]
    public async Task Clock_runs_on_the_device_while_the_network_is_gone_and_counts_from_the_press_once_it_is_back()
    {
        await OpenAsync("supply-voltage", 390, 844);
        await Page.Context.SetOfflineAsync(true);
        await Page.Locator("#disturbs").GetByRole(AriaRole.Button, new() { Name = "Ignition switched on" }).ClickAsync();
        await Expect(Page.Locator("#unsent-count")).ToHaveTextAsync("1 only on this device");
        await Expect(Page.Locator("#ends .elapsed")).ToHaveTextAsync("0:07", new() { Timeout = 60_000 });
        await Expect(Page.Locator("#ends")).ToContainTextAsync("of 2:00, only on this device");
        Assert.Empty(await Accessibility.FaultsAsync(Page));

        await Page.Context.SetOfflineAsync(false);
        await Expect(Page.Locator("#unsent-fold")).ToBeHiddenAsync(new() { Timeout = 60_000 });

        await Expect(Page.Locator("#ends")).Not.ToContainTextAsync("only on this device", new() { Timeout = 60_000 });
        var (minutes, seconds) = Clock(await Page.Locator("#ends .elapsed").First.TextContentAsync());
        Assert.InRange((60 * minutes) + seconds, 7, 600);
        var stamp = Assert.Single(Entries("loose-end-opened")).GetProperty("body").GetProperty("stamp");
        Assert.InRange(stamp.GetProperty("waited").GetInt64(), 7, 600);
    }

    [Fact]
    public async Task What_is_typed_while_a_note_is_on_its_way_is_the_beginning_of_the_next()
    {
        await OpenAsync("lead-condition", 390, 844);
        var answer = new TaskCompletionSource();
        await Page.RouteAsync("**/notes", async route =>
        {
            await answer.Task;
            await route.ContinueAsync();
        });
        await Page.Locator("#write > summary").ClickAsync();
        await Expect(Page.Locator("#note-text")).ToBeFocusedAsync();
        await Page.Keyboard.TypeAsync("The boot is stiff.");
        await Page.Button("Keep note").ClickAsync();
        await Page.Locator("#note-text").FocusAsync();
        await Page.Keyboard.PressAsync("End");
        await Page.Keyboard.TypeAsync(" The clip rattles");
        answer.SetResult();

        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(1);
        await Expect(Page.Locator("#note-text")).ToHaveValueAsync("The clip rattles");
        await Expect(Page.Locator("#write[open]")).ToHaveCountAsync(1);
        await Page.Button("Keep note").ClickAsync();
        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(2);
        Assert.Equal(["The boot is stiff.", "The clip rattles"], Entries("note-written").Select(entry => entry.GetProperty("body").GetProperty("text").GetString()));
    }

    [Fact]
    public async Task Note_that_is_begun_outlives_a_reload_and_is_gone_once_it_is_kept()
    {
        await OpenAsync("lead-condition", 390, 844);
        await Page.Locator("#write > summary").ClickAsync();
        await Expect(Page.Locator("#note-text")).ToBeFocusedAsync();
        await Page.Keyboard.TypeAsync("The boot is stiff");
        await Page.ReloadAsync();
        await Page.UntilAsync("document.readyState === 'complete'");

        await Expect(Page.Locator("#note-text")).ToHaveValueAsync("The boot is stiff");
        await Page.Locator("#write > summary").ClickAsync();
        await Page.Button("Keep note").ClickAsync();
        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(1);
        await Page.ReloadAsync();
        await Page.UntilAsync("document.readyState === 'complete'");
        await Expect(Page.Locator("#note-text")).ToHaveValueAsync("");
    }

    private static (int Minutes, int Seconds) Clock(string? text)
    {
        var parts = text!.Split(':').Select(part => int.Parse(part, CultureInfo.InvariantCulture)).ToList();
        return (parts[0], parts[1]);
    }
}
