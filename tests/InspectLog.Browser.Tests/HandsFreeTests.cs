using System.Text.RegularExpressions;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>What is said to the hands-free page, heard by the real speech model, and what becomes of it.</summary>
public sealed class HandsFreeTests(BrowserFixture fixture) : ListeningTests(fixture)
{
    /// <summary>What the five sentences mean stands in the corpus under their numbers.</summary>
    [Fact]
    public async Task Five_utterances_become_five_notes_and_a_spoken_confirmation_confirms_the_last()
    {
        var page = await ListenAsync(await SpeakAsync(CoilSecondary, "006", "012", "016", "024", "confirm-that"));

        await Expect(page.Locator("#hands-free .answer")).ToHaveTextAsync(
            new Regex("^Confirmed: Plug gap, plug 3: 0\\.75\u00a0mm, (pass|conditional pass|conditional fail|fail)\\."));

        await Expect(page.Locator("#hands-free .counts")).ToContainTextAsync("6 kept");
        await Expect(page.Locator("#hands-free .counts")).ToContainTextAsync("0 thinking");
        Assert.Equal(
            [
                ("coil-secondary-resistance", 10_600), ("supply-voltage", 11.9), ("coil-circuit-resistance", 0.8),
                ("pickup-air-gap", 0.28), ("plug-gap", 0.75),
            ],
            Proposals());
        Assert.Equal(6, Bodies("utterance-kept").Count);
        var reading = Assert.Single(Bodies("reading-decided"));
        Assert.Equal(("plug-gap", 3), (reading.GetProperty("check").GetString(), reading.GetProperty("cylinder").GetInt32()));
        var done = Assert.Single(Bodies("command-done"));
        Assert.Equal("confirmed", done.GetProperty("outcome").GetString());
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Wrong_confirmation_is_taken_back_by_voice_and_stays_in_the_journal()
    {
        var page = await ListenAsync(await SpeakAsync(CoilSecondary, "confirm-that", "drop-that"));

        await Expect(page.Locator("#hands-free .answer")).ToHaveTextAsync("Taken back: Coil secondary: 10.60\u00a0kΩ.");

        Assert.Single(Bodies("reading-decided"));
        Assert.Single(Bodies("entry-withdrawn"));
        await Expect(page.Locator("#captures")).ToContainTextAsync("Withdrawn at");
    }

    [Fact]
    public async Task Next_check_opens_it_and_stop_listening_lets_the_microphone_go()
    {
        var page = await ListenAsync(await SpeakAsync("next-check", "stop-listening"));
        var first = await page.Locator("#check-title").TextContentAsync();

        await Expect(page.Locator("#check-title")).Not.ToHaveTextAsync(first!);
        await Expect(page.Locator("#hands-free")).ToBeHiddenAsync();

        await Expect(page.Locator("#hands-free-start")).ToBeFocusedAsync();
        await Expect(page.Locator("#say")).ToBeEnabledAsync();
        Assert.Equal("ended", await page.EvaluateAsync<string>("theStream.getAudioTracks()[0].readyState"));
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Note_spoken_while_the_program_is_out_of_reach_is_kept_in_the_page_and_sent_later()
    {
        var page = await ListenAsync(await SpeakAsync(CoilSecondary, "confirm-that"));
        await page.Context.SetOfflineAsync(true);

        await Expect(page.Locator("#unsent li")).ToHaveCountAsync(2);
        await Expect(page.Locator("#unsent li").Last).ToContainTextAsync("It waits for the one before it.");
        await Expect(page.Locator("#hands-free-unsent")).ToHaveTextAsync("2 not sent yet");
        Assert.Empty(Bodies("utterance-kept"));
        Assert.Empty(await Accessibility.FaultsAsync(page));

        await page.Context.SetOfflineAsync(false);

        await Expect(page.Locator("#hands-free .answer")).ToContainTextAsync("Confirmed: Coil secondary: 10.6\u00a0kΩ, pass.");
        await Expect(page.Locator("#unsent li")).ToHaveCountAsync(0);
        Assert.Equal(2, Bodies("utterance-kept").Count);
    }

    [Fact]
    public async Task Utterance_thrown_away_lets_those_behind_it_go()
    {
        var page = await ListenAsync(await SpeakAsync(CoilSecondary, "006"));
        await page.RouteAsync("**/recordings*", route => route.AbortAsync());
        await Expect(page.Locator("#unsent li")).ToHaveCountAsync(2);

        await page.Locator("#unsent li").First.GetByRole(AriaRole.Button, new() { Name = "Throw away" }).ClickAsync();
        await Expect(page.Locator("#unsent li")).ToHaveCountAsync(1);
        await page.UnrouteAllAsync();

        await Expect(page.Locator("#hands-free .answer")).ToContainTextAsync("Supply voltage: 11.9\u00a0V");
        Assert.Single(Bodies("utterance-kept"));
    }

    /// <summary>Notes are sent in the order of speaking, so once the third sentence is kept, the second would be. The page
    /// itself gives up a voice that does not end within some seconds; here it has as long as the test takes.</summary>
    [Fact]
    public async Task Page_does_not_listen_to_its_own_voice()
    {
        var page = await ListenToPlayedAsync("""
            globalThis.said = [];
            Object.defineProperty(globalThis, "speechSynthesis", { value: Object.assign(new EventTarget(), {
              getVoices: () => [{ name: "test" }],
              speak: (words) => { said.push(words.text); globalThis.endSpeaking = () => words.onend(); },
              cancel: () => {},
            }) });
            globalThis.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
            const soon = setTimeout;
            globalThis.setTimeout = (then, after, ...given) => soon(then, after > 5000 ? 3_600_000 : after, ...given);
            """);
        var word = page.Locator("#hands-free-word");

        await page.PlayAsync(await SpeakAsync(CoilSecondary));
        await Expect(word).ToHaveTextAsync("Speaking");
        Assert.Equal("Coil secondary: 10.6 kilohms, would be a pass.", await page.EvaluateAsync<string>("said[0]"));

        await page.PlayAsync(await SpeakAsync("012"));
        await Expect(word).ToHaveTextAsync("Speaking");
        await page.EvaluateAsync("endSpeaking()");
        await Expect(word).ToHaveTextAsync("Listening");
        await page.PlayAsync(await SpeakAsync("006"));

        await Expect(page.Locator("#hands-free .answer")).ToContainTextAsync("Supply voltage: 11.9\u00a0V");
        Assert.Equal([("coil-secondary-resistance", 10_600), ("supply-voltage", 11.9)], Proposals());
        Assert.Equal(2, Bodies("utterance-kept").Count);
    }

    /// <summary>What each note proposed, in the order of speaking.</summary>
    private List<(string Check, double Value)> Proposals() =>
        [.. Bodies("findings-proposed")
            .OrderBy(body => body.GetProperty("recording").GetInt64())
            .SelectMany(body => body.GetProperty("findings").EnumerateArray())
            .Select(finding => (finding.GetProperty("check").GetString()!, finding.GetProperty("value").GetDouble()))];
}
