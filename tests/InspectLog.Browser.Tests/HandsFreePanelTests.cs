using System.Text.RegularExpressions;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>The hands-free panel itself, its microphone, and what is said when that fails.</summary>
public sealed class HandsFreePanelTests(BrowserFixture fixture) : ListeningTests(fixture)
{
    [Fact]
    public async Task Answers_aloud_can_be_switched_off_and_stay_off()
    {
        var page = await ListenAsync(BeSilent(20), script: """
            Object.defineProperty(globalThis, "speechSynthesis", { value: Object.assign(new EventTarget(), { getVoices: () => [{}], speak() {}, cancel() {} }) });
            """);
        var aloud = page.GetByLabel("Read answers aloud");
        await Expect(aloud).ToBeCheckedAsync();

        await aloud.UncheckAsync();
        await page.ReloadAsync();
        await page.Locator("#hands-free-start").ClickAsync();

        await Expect(aloud).Not.ToBeCheckedAsync();
    }

    [Fact]
    public async Task Panel_is_accessible_and_readable_at_arms_length_in_every_look()
    {
        var page = await ListenAsync(await SpeakAsync(CoilSecondary));
        await Expect(page.Locator("#hands-free .answer")).ToHaveTextAsync("Coil secondary: 10.6\u00a0kΩ, would be a pass.");
        await Expect(page.Locator("#hands-free-word")).ToHaveTextAsync("Listening");

        foreach (var look in Look.All)
        {
            await look.TakeOnAsync(page);
            await PhotographAsync(page, look);
            await page.GetByText("What you can say").ClickAsync();
            await Expect(page.GetByText("\u201Cconfirm that\u201D")).ToBeVisibleAsync();

            Assert.True(await page.Locator("#hands-free .answer").IsVisibleAsync(), $"{look}: the answer is not shown");
            var faults = await Accessibility.FaultsAsync(page);
            Assert.True(faults.Count == 0, $"{look}: {string.Join("\n\n", faults)}");
            Assert.Equal((look, 0), (look, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")));
            Assert.True(await FontSizeAsync(page.Locator("#hands-free .answer")) >= 26, $"{look}: the answer is too small");
            Assert.True(await FontSizeAsync(page.Locator("#hands-free-word")) >= 26, $"{look}: the state is too small");
            Assert.True((await page.Locator("#hands-free-stop").BoundingBoxAsync())!.Height >= 56, $"{look}: the button is too small");
            await page.GetByText("What you can say").ClickAsync();
        }
    }

    [Fact]
    public async Task Above_a_keyboard_what_was_heard_last_is_read_and_confirmed()
    {
        var page = await ListenAsync(await SpeakAsync(CoilSecondary));
        await page.SetViewportSizeAsync(390, 300);
        var answer = page.Locator("#hands-free .answer");
        await Expect(answer).ToHaveTextAsync("Coil secondary: 10.6\u00a0kΩ, would be a pass.");
        await Expect(page.Locator("#hands-free-word")).ToHaveTextAsync("Listening");

        foreach (var shown in new[] { answer, page.Locator("#hands-free-word"), page.Locator("#hands-free-stop"), page.Locator("#heard") })
        {
            Assert.True(await shown.IsInViewAsync(), $"{shown} is out of view");
        }

        var box = (await page.Locator("#heard .heard-confirm button").BoundingBoxAsync())!;
        await page.Mouse.ClickAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await Expect(page.Locator("#did")).ToContainTextAsync("Confirmed: Coil secondary");
        Assert.Single(Bodies("reading-decided"));
    }

    [Fact]
    public async Task Microphone_that_is_not_allowed_is_explained()
    {
        var page = await OpenAsync(Fixture.Browser);

        await page.Locator("#hands-free-start").ClickAsync();

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("then press Hands-free again");
        await Expect(page.Locator("#hands-free")).ToBeHiddenAsync();
        await Expect(page.Locator("#say")).ToBeEnabledAsync();
        Assert.Empty(await Accessibility.FaultsAsync(page));
    }

    [Fact]
    public async Task Page_that_is_not_secure_says_why_there_is_no_microphone()
    {
        var page = await OpenAsync(Fixture.Browser, script: """
            Object.defineProperty(globalThis, "isSecureContext", { value: false });
            Object.defineProperty(navigator, "mediaDevices", { value: undefined });
            """);

        await page.Locator("#hands-free-start").ClickAsync();

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("only to pages of this machine itself");
    }

    [Theory]
    [InlineData("#say", "Say")]
    [InlineData("#hands-free-start", "Hands-free")]
    public async Task Sound_that_does_not_start_is_explained(string button, string again)
    {
        var page = await OpenWithMicrophoneAsync(
            BeSilent(20), script: "AudioContext.prototype.resume = () => new Promise(() => {});");

        await page.Locator(button).ClickAsync();

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync(
            new Regex($"The sound of this machine did not start\\..*then press {again} again"));
        await Expect(page.Locator("#hands-free")).ToBeHiddenAsync();
        await Expect(page.Locator("#say")).ToBeEnabledAsync();
        await Expect(page.Locator("#say")).Not.ToContainTextAsync("Starting");
        Assert.Equal("ended", await page.EvaluateAsync<string>("theStream.getAudioTracks()[0].readyState"));
    }

    [Fact]
    public async Task Microphone_that_goes_away_is_said_and_what_was_heard_is_kept()
    {
        // It goes as the last word ends, before the pause that would end the note.
        var page = await ListenToPlayedAsync();

        await page.PlayAsync(
            await SpeakWithoutPauseAsync(CoilSecondary), then: "theStream.getAudioTracks()[0].dispatchEvent(new Event('ended'))");

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("The microphone went away");
        await Expect(page.Locator("#hands-free")).ToBeHiddenAsync();
        await Expect(page.Locator("#captures > li")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Phone_call_is_waited_out()
    {
        var page = await ListenAsync(BeSilent(20));
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
        var page = await ListenAsync(BeSilent(30));

        await Expect(page.Locator("#hands-free-hint")).ToHaveTextAsync("Nothing is heard. Is the microphone muted?");
    }

    [Fact]
    public async Task Screen_is_kept_on_and_asked_for_again_when_the_page_comes_back()
    {
        var page = await ListenAsync(BeSilent(20), script: """
            globalThis.locks = { asked: 0, released: 0 };
            Object.defineProperty(navigator, "wakeLock", { value: { request: async () => { locks.asked++; return { release: async () => { locks.released++; } }; } } });
            """);
        await page.UntilAsync("locks.asked === 1");

        await page.EvaluateAsync("document.dispatchEvent(new Event('visibilitychange'))");
        await page.UntilAsync("locks.asked === 2");
        await page.Locator("#hands-free-stop").ClickAsync();

        await page.UntilAsync("locks.released === 1");
        await page.EvaluateAsync("document.dispatchEvent(new Event('visibilitychange'))");
        Assert.Equal(2, await page.EvaluateAsync<int>("locks.asked"));
    }

    [Fact]
    public async Task Browser_that_cannot_keep_the_screen_on_says_so()
    {
        var page = await ListenAsync(
            BeSilent(20), script: "Object.defineProperty(navigator, 'wakeLock', { value: undefined });");

        await Expect(page.Locator("#hands-free-hint")).ToContainTextAsync("cannot keep the screen on");
    }

    private static async Task PhotographAsync(IPage page, Look look)
    {
        if (Environment.GetEnvironmentVariable("INSPECTLOG_PICTURES") is { } pictures)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(pictures, $"hands-free-{look.Width}-{look.Scheme}.png") });
        }
    }

    private static async Task<double> FontSizeAsync(ILocator locator) =>
        await locator.EvaluateAsync<double>("one => parseFloat(getComputedStyle(one).fontSize)");
}
