using System.Text.Json;
using System.Text.RegularExpressions;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>Hands-free listening with a real browser, its microphone played from a file, and the real speech model.</summary>
public sealed class HandsFreeTests(BrowserFixture fixture) : IAsyncLifetime
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1.8);

    /// <summary>"The secondary of the coil is ten point six kilohms."</summary>
    private const string CoilSecondary = "000";

    private readonly TempFolder _folder = new();
    private readonly List<IAsyncDisposable> _started = [];

    private string Data => Path.Combine(_folder.Path, "data");

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        foreach (var one in Enumerable.Reverse(_started))
        {
            await one.DisposeAsync();
        }

        _folder.Dispose();
    }

    /// <summary>What the five sentences mean stands in the corpus under their numbers.</summary>
    [Fact]
    public async Task Five_utterances_become_five_notes_and_a_spoken_confirmation_confirms_the_last()
    {
        var page = await ListenAsync(await Recordings.SpeakAsync([CoilSecondary, "006", "012", "016", "024", "confirm-that"], Pause, _folder.Path));

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
        Assert.Empty(_visit!.Watch.Complaints);
    }

    [Fact]
    public async Task Wrong_confirmation_is_taken_back_by_voice_and_stays_in_the_journal()
    {
        var page = await ListenAsync(await Recordings.SpeakAsync([CoilSecondary, "confirm-that", "drop-that"], Pause, _folder.Path));

        await Expect(page.Locator("#hands-free .answer")).ToHaveTextAsync("Taken back: Coil secondary: 10.60\u00a0kΩ.");

        Assert.Single(Bodies("reading-decided"));
        Assert.Single(Bodies("entry-withdrawn"));
        await Expect(page.Locator("#captures")).ToContainTextAsync("confirmed and then withdrawn");
    }

    [Fact]
    public async Task Next_check_opens_it_and_stop_listening_lets_the_microphone_go()
    {
        var page = await ListenAsync(await Recordings.SpeakAsync(["next-check", "stop-listening"], Pause, _folder.Path));
        var first = await page.Locator("#check-title").TextContentAsync();

        await Expect(page.Locator("#check-title")).Not.ToHaveTextAsync(first!);
        await Expect(page.Locator("#hands-free")).ToBeHiddenAsync();

        await Expect(page.Locator("#hands-free-start")).ToBeFocusedAsync();
        await Expect(page.Locator("#say")).ToBeEnabledAsync();
        Assert.Equal("ended", await page.EvaluateAsync<string>("theStream.getAudioTracks()[0].readyState"));
        Assert.Empty(_visit!.Watch.Complaints);
    }

    [Fact]
    public async Task Note_spoken_while_the_program_is_out_of_reach_is_kept_in_the_page_and_sent_later()
    {
        var page = await ListenAsync(await Recordings.SpeakAsync([CoilSecondary, "confirm-that"], Pause, _folder.Path));
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
        var page = await ListenAsync(await Recordings.SpeakAsync([CoilSecondary, "006"], Pause, _folder.Path));
        await page.RouteAsync("**/recordings*", route => route.AbortAsync());
        await Expect(page.Locator("#unsent li")).ToHaveCountAsync(2);

        await page.Locator("#unsent li").First.GetByRole(AriaRole.Button, new() { Name = "Throw away" }).ClickAsync();
        await Expect(page.Locator("#unsent li")).ToHaveCountAsync(1);
        await page.UnrouteAllAsync();

        await Expect(page.Locator("#hands-free .answer")).ToContainTextAsync("Supply voltage: 11.9\u00a0V");
        Assert.Single(Bodies("utterance-kept"));
    }

    [Fact]
    public async Task Page_does_not_listen_to_its_own_voice()
    {
        var sound = await Recordings.SpeakAsync([CoilSecondary], Pause, _folder.Path);
        var page = await ListenAsync(sound, again: true, script: """
            globalThis.said = [];
            Object.defineProperty(globalThis, "speechSynthesis", { value: Object.assign(new EventTarget(), {
              getVoices: () => [{ name: "test" }],
              speak: (words) => { said.push(words.text); globalThis.endSpeaking = () => words.onend(); },
              cancel: () => {},
            }) });
            globalThis.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
            """);
        var word = page.Locator("#hands-free-word");

        await Expect(word).ToHaveTextAsync("Speaking");
        Assert.Equal("Coil secondary: 10.6 kilohms, would be a pass.", await page.EvaluateAsync<string>("said[0]"));
        var kept = Bodies("utterance-kept").Count;

        // The sentence is played twice more into the microphone meanwhile; the page itself waits 8 s for this answer.
        await Task.Delay(sound.Length, TestContext.Current.CancellationToken);
        Assert.Equal(kept, Bodies("utterance-kept").Count);
        await page.EvaluateAsync("endSpeaking()");

        await Expect(page.Locator("#hands-free .counts")).ToContainTextAsync($"{kept + 1} kept");
    }

    [Fact]
    public async Task Answers_aloud_can_be_switched_off_and_stay_off()
    {
        var page = await ListenAsync(Recordings.BeSilent(TimeSpan.FromSeconds(20), _folder.Path), script: """
            Object.defineProperty(globalThis, "speechSynthesis", { value: Object.assign(new EventTarget(), { getVoices: () => [{}], speak() {}, cancel() {} }) });
            """);
        var aloud = page.GetByLabel("Read answers aloud");
        await Expect(aloud).ToBeCheckedAsync();

        await aloud.UncheckAsync();
        await page.ReloadAsync();
        await page.Locator("#hands-free-start").ClickAsync();

        await Expect(aloud).Not.ToBeCheckedAsync();
    }

    [Theory]
    [InlineData(390, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    public async Task Panel_is_accessible_and_readable_at_arms_length(int width, ColorScheme scheme)
    {
        var page = await ListenAsync(
            await Recordings.SpeakAsync([CoilSecondary], Pause, _folder.Path),
            look: new() { ViewportSize = new() { Width = width, Height = 844 }, ColorScheme = scheme });

        await Expect(page.Locator("#hands-free .answer")).ToHaveTextAsync("Coil secondary: 10.6\u00a0kΩ, would be a pass.");
        await Expect(page.Locator("#hands-free-word")).ToHaveTextAsync("Listening");
        await page.GetByText("What you can say").ClickAsync();
        await Expect(page.GetByText("\u201Cconfirm that\u201D")).ToBeVisibleAsync();

        Assert.Empty(await Accessibility.FaultsAsync(page));
        Assert.Equal(0, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));
        Assert.True(await FontSizeAsync(page.Locator("#hands-free .answer")) >= 26);
        Assert.True(await FontSizeAsync(page.Locator("#hands-free-word")) >= 26);
        Assert.True((await page.Locator("#hands-free-stop").BoundingBoxAsync())!.Height >= 56);
        await page.GetByText("What you can say").ClickAsync();
        if (Environment.GetEnvironmentVariable("INSPECTLOG_PICTURES") is { } pictures)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(pictures, $"hands-free-{width}-{scheme}.png") });
        }
    }

    [Fact]
    public async Task Microphone_that_is_not_allowed_is_explained()
    {
        var page = await OpenAsync(fixture.Browser);

        await page.Locator("#hands-free-start").ClickAsync();

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("then press Hands-free again");
        await Expect(page.Locator("#hands-free")).ToBeHiddenAsync();
        await Expect(page.Locator("#say")).ToBeEnabledAsync();
        Assert.Empty(await Accessibility.FaultsAsync(page));
    }

    [Fact]
    public async Task Page_that_is_not_secure_says_why_there_is_no_microphone()
    {
        var page = await OpenAsync(fixture.Browser, script: """
            Object.defineProperty(globalThis, "isSecureContext", { value: false });
            Object.defineProperty(navigator, "mediaDevices", { value: undefined });
            """);

        await page.Locator("#hands-free-start").ClickAsync();

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("only to pages of this machine itself");
    }

    [Fact]
    public async Task Microphone_that_goes_away_is_said_and_what_was_heard_is_kept()
    {
        // 1.2 s after the words began they are still going on.
        var page = await ListenAsync(await Recordings.SpeakAsync([CoilSecondary], Pause, _folder.Path));
        await Expect(page.Locator("#hands-free-word")).ToHaveTextAsync("Hearing you");
        await page.WaitForTimeoutAsync(1200);

        await page.EvaluateAsync("theStream.getAudioTracks()[0].dispatchEvent(new Event('ended'))");

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("The microphone went away");
        await Expect(page.Locator("#hands-free")).ToBeHiddenAsync();
        await Expect(page.Locator("#captures > li")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Phone_call_is_waited_out()
    {
        var page = await ListenAsync(Recordings.BeSilent(TimeSpan.FromSeconds(20), _folder.Path));
        await Expect(page.Locator("#hands-free-word")).ToHaveTextAsync("Listening");

        await page.EvaluateAsync("theStream.getAudioTracks()[0].dispatchEvent(new Event('mute'))");
        await Expect(page.Locator("#hands-free-word")).ToHaveTextAsync("Microphone taken");
        await Expect(page.Locator("#hands-free-hint")).ToContainTextAsync("phone call");
        Assert.Empty(await Accessibility.FaultsAsync(page));
        await page.EvaluateAsync("theStream.getAudioTracks()[0].dispatchEvent(new Event('unmute'))");

        await Expect(page.Locator("#hands-free-word")).ToHaveTextAsync("Listening");
    }

    [Fact]
    public async Task Muted_microphone_is_noticed()
    {
        var page = await ListenAsync(Recordings.BeSilent(TimeSpan.FromSeconds(30), _folder.Path));

        await Expect(page.Locator("#hands-free-hint")).ToHaveTextAsync("Nothing is heard. Is the microphone muted?");
    }

    [Fact]
    public async Task Screen_is_kept_on_and_asked_for_again_when_the_page_comes_back()
    {
        var page = await ListenAsync(Recordings.BeSilent(TimeSpan.FromSeconds(20), _folder.Path), script: """
            globalThis.locks = { asked: 0, released: 0 };
            Object.defineProperty(navigator, "wakeLock", { value: { request: async () => { locks.asked++; return { release: async () => { locks.released++; } }; } } });
            """);
        await page.WaitForFunctionAsync("locks.asked === 1");

        await page.EvaluateAsync("document.dispatchEvent(new Event('visibilitychange'))");
        await page.WaitForFunctionAsync("locks.asked === 2");
        await page.Locator("#hands-free-stop").ClickAsync();

        await page.WaitForFunctionAsync("locks.released === 1");
        await page.EvaluateAsync("document.dispatchEvent(new Event('visibilitychange'))");
        Assert.Equal(2, await page.EvaluateAsync<int>("locks.asked"));
    }

    [Fact]
    public async Task Browser_that_cannot_keep_the_screen_on_says_so()
    {
        var page = await ListenAsync(
            Recordings.BeSilent(TimeSpan.FromSeconds(20), _folder.Path), script: "Object.defineProperty(navigator, 'wakeLock', { value: undefined });");

        await Expect(page.Locator("#hands-free-hint")).ToContainTextAsync("cannot keep the screen on");
    }

    private Visit? _visit;

    /// <summary>Opens the bench in a browser that hears a sound, and starts listening.</summary>
    private async Task<IPage> ListenAsync(Sound sound, bool again = false, string? script = null, BrowserNewContextOptions? look = null)
    {
        var browser = await InstalledChromium.ThatHearsAsync(fixture.Playwright, sound, again);
        _started.Add(browser);
        var page = await OpenAsync(browser, script, look);
        await page.Locator("#hands-free-start").ClickAsync();
        await Expect(page.Locator("#hands-free-word")).Not.ToHaveTextAsync("Starting");
        return page;
    }

    private async Task<IPage> OpenAsync(IBrowser browser, string? script = null, BrowserNewContextOptions? look = null)
    {
        var program = await RunningProgram.ServeAsync(Data);
        _started.Add(program);
        _visit = await Visit.OpenAsync(browser, program, look);
        _started.Add(_visit);
        await _visit.Page.AddInitScriptAsync($$"""
            {
              const open = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
              navigator.mediaDevices.getUserMedia = async (wish) => (globalThis.theStream = await open(wish));
            }
            {{script}}
            """);
        await _visit.Page.StartFirstInspectionAsync();
        return _visit.Page;
    }

    private static async Task<double> FontSizeAsync(ILocator locator) =>
        await locator.EvaluateAsync<double>("one => parseFloat(getComputedStyle(one).fontSize)");

    /// <summary>What each note proposed, in the order of speaking.</summary>
    private List<(string Check, double Value)> Proposals() =>
        [.. Bodies("findings-proposed")
            .OrderBy(body => body.GetProperty("recording").GetInt64())
            .SelectMany(body => body.GetProperty("findings").EnumerateArray())
            .Select(finding => (finding.GetProperty("check").GetString()!, finding.GetProperty("value").GetDouble()))];

    private List<JsonElement> Bodies(string kind) =>
        [.. File.ReadLines(Path.Combine(Data, "vehicles", "marigold", "journal.jsonl"))
            .Select(line => JsonDocument.Parse(line).RootElement)
            .Where(entry => entry.GetProperty("kind").GetString() == kind)
            .Select(entry => entry.GetProperty("body"))];
}
