using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>What is sent twice, because its answer got lost, a tab was opened or a button pressed twice, is one entry.
/// </summary>
public sealed class SentOnceTests(BrowserFixture fixture) : BenchTests(fixture)
{
    [Fact]
    public async Task Condition_whose_answer_got_lost_is_one_entry_after_it_is_sent_again()
    {
        await Page.OpenCheckAsync("Plug condition", "Plug condition");
        await LoseAnswersAsync(Page, "**/observations");
        var wet = Page.Locator("button[name=condition][value=wet]");
        await wet.ClickAsync();
        await Expect(Page.Locator("#unsent li")).ToContainTextAsync("only on this device");
        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(1); // the news of it came all the same

        await Page.UnrouteAllAsync();
        await SendAgainAsync();

        await Expect(Page.Locator("#unsent li")).ToHaveCountAsync(0);
        var first = Assert.Single(Entries("observation-made"));
        Assert.Equal("wet", first.GetProperty("body").GetProperty("condition").GetString());
        var stamp = first.GetProperty("body").GetProperty("stamp");
        Assert.True((TimeProvider.System.GetLocalNow() - stamp.GetProperty("at").GetDateTimeOffset()).Duration() < TimeSpan.FromMinutes(2));

        // The form was given another id, so the next press is another entry.
        await wet.ClickAsync();
        await Expect(Page.Locator("#did")).ToContainTextAsync("Recorded: Plug condition");
        Assert.Equal(2, Entries("observation-made").Count);
    }

    [Fact]
    public async Task Button_pressed_twice_is_one_entry()
    {
        await Page.OpenCheckAsync("Plug condition", "Plug condition");

        await Page.Locator("button[name=condition][value=wet]").DblClickAsync();

        await Expect(Page.Locator("#did")).ToContainTextAsync("Recorded: Plug condition");
        Assert.Single(Entries("observation-made"));
    }

    [Fact]
    public async Task Recording_whose_answer_got_lost_is_sent_after_a_reload_as_the_same_one()
    {
        await LoseAnswersAsync(Page, "**/recordings*");
        await Page.SendRecordingAsync();
        await Expect(Page.Locator("#unsent li")).ToHaveCountAsync(1);

        await Page.ReloadAsync();
        await Expect(Page.Locator("#unsent li")).ToHaveCountAsync(1);
        await Page.UnrouteAllAsync();
        await SendAgainAsync();
        await Expect(Page.Locator("#unsent li")).ToHaveCountAsync(0);

        var stamp = Assert.Single(Entries("recording-kept")).GetProperty("body").GetProperty("stamp");
        Assert.Equal(new DateTimeOffset(2026, 5, 3, 8, 11, 12, 345, TimeSpan.Zero), stamp.GetProperty("at").GetDateTimeOffset());
        await Page.ReloadAsync();
        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(1);
        Assert.Single(Entries("recording-kept"));
    }

    [Fact]
    public async Task Recording_that_another_tab_sends_leaves_this_one_and_is_one_entry()
    {
        await LoseAnswersAsync(Page, "**/recordings*");
        await Page.SendRecordingAsync();
        await Expect(Page.Locator("#unsent li")).ToHaveCountAsync(1);

        var tab = await Page.Context.NewPageAsync();
        await tab.GotoAsync(Page.Url);

        await Expect(Page.Locator("#unsent li")).ToHaveCountAsync(0);
        await Expect(tab.Locator("#captures > li")).ToHaveCountAsync(1);
        Assert.Single(Entries("recording-kept"));
    }

    [Fact]
    public async Task Answer_that_comes_after_the_news_of_it_is_put_in_place_of_the_bench()
    {
        await Page.SetViewportSizeAsync(390, 844);
        await Page.Locator("#write > summary").ClickAsync();
        await Page.Locator("#write textarea").FillAsync("Coil secondary 9.4 k.");
        await Page.Locator("#write").GetByRole(AriaRole.Button, new() { Name = "Keep note" }).ClickAsync();
        var confirm = Page.Locator("#heard button.main");
        await Page.RouteAsync("**/confirm", async route =>
        {
            var answer = await route.FetchAsync();
            await Expect(confirm).ToHaveCountAsync(0); // the news took it away
            await route.FulfillAsync(new() { Response = answer });
        });

        await confirm.ClickAsync();

        await Expect(Page.Locator("#did")).ToContainTextAsync("Confirmed: Coil secondary.");
        await Expect(Page.Locator("#bench")).ToHaveCountAsync(1);
        Assert.Single(Entries("reading-decided"));
    }

    /// <summary>Presses Send again where it is still there: what waits is also sent by itself.</summary>
    private Task SendAgainAsync() => Page.EvaluateAsync("document.querySelector('#unsent li button')?.click()");

    /// <summary>Lets requests through to the program and loses its answers.</summary>
    private static Task LoseAnswersAsync(IPage page, string address) => page.RouteAsync(address, async route =>
    {
        await route.FetchAsync();
        await route.AbortAsync();
    });
}
