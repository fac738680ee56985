using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>The clock of an ignition that is on: it runs, warns, sounds when its time is over, and is made quiet.</summary>
/// <remarks>The browser's clock is moved, the program's is not. What the page reads anew sets its clock by the program's, so
/// no news may come while a test moves the browser's.</remarks>
public sealed partial class EndClockTests(BrowserFixture fixture)
    : BenchTests(fixture, new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true })
{
    private const string OverItsTime = "Over its time: Ignition switched on. Switch the ignition off.";

    /// <summary>Keeps news away, and writes down what the page announces, sounds and shakes.</summary>
    private const string Noted = """
        globalThis.EventSource = class extends EventTarget {};
        globalThis.noted = { announced: [], tones: 0, shakes: 0 };
        const start = OscillatorNode.prototype.start;
        OscillatorNode.prototype.start = function (...at) { noted.tones++; return start.apply(this, at); };
        navigator.vibrate = () => { noted.shakes++; return true; };
        let last = "";
        new MutationObserver(() => {
          const says = document.getElementById("announcements")?.textContent ?? "";
          if (says !== last && says !== "") {
            noted.announced.push(says);
          }

          last = says;
        }).observe(document, { subtree: true, childList: true, characterData: true });
        """;

    private ILocator Strip => Page.Locator("#ends");

    private ILocator Summary => Strip.Locator("#ends-list > summary");

    private ILocator Elapsed => Summary.Locator(".elapsed");

    private ILocator Over => Page.Locator(".end-over");

    private ILocator Quiet => Over.GetByRole(AriaRole.Button, new() { NameRegex = new("^Quiet") });

    [Fact]
    public async Task Clock_runs_and_nothing_moves_while_it_does()
    {
        await SwitchOnAsync();
        await Expect(Summary).ToContainTextAsync("of 2:00");
        var before = await SecondsAsync();
        await Page.UntilAsync($"document.querySelector('#ends .elapsed').textContent > '{await Elapsed.TextContentAsync()}'"); // by itself
        var boxes = await BoxesAsync();

        for (var moved = 0; moved < 3; moved++)
        {
            await Page.Clock.FastForwardAsync(17_000);
            await Page.UntilAsync($"{Seconds} >= {before + ((moved + 1) * 17)}");
            Assert.Equal(boxes, await BoxesAsync());
        }

        await Expect(Over).ToBeHiddenAsync();
        await Summary.ClickAsync();
        await Expect(Strip.Locator(".end .elapsed")).ToHaveTextAsync(await Elapsed.TextContentAsync() ?? "");
        Assert.Equal(0, await NotedAsync("tones"));
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Time_that_is_over_is_said_sounded_made_quiet_and_gone_once_the_ignition_is_off()
    {
        await SwitchOnAsync();
        await PassAsync(105);
        await Page.UntilAsync("noted.announced.some(says => /^Ignition switched on: \\d+ seconds? left\\. Switch the ignition off\\.$/.test(says))");
        Assert.Equal(0, await NotedAsync("tones"));

        await PassAsync(125);
        await Expect(Over).ToBeVisibleAsync();
        await Expect(Over).ToContainTextAsync("Switch the ignition off. With the engine standing,");
        await Expect(Summary).ToContainTextAsync("Over its time: Ignition switched on");
        await Page.UntilAsync("noted.tones === 2 && noted.shakes === 1");
        Assert.True(await Over.IsInViewAsync(), "what to do is out of view");
        await Page.UntilAsync($"noted.announced.filter(says => says === '{OverItsTime}').length === 1");

        await PassAsync(160);
        await Page.UntilAsync("noted.tones === 4 && noted.shakes === 2");
        Assert.InRange((await Quiet.BoundingBoxAsync())!.Height, 44, 100);
        await Quiet.ClickAsync();
        await Expect(Over.GetByText("Quiet until it is put right.")).ToBeVisibleAsync();
        await Expect(Over.Locator("button[type=submit]")).ToBeFocusedAsync();
        await PassAsync(300);
        Assert.Equal(4, await NotedAsync("tones"));
        Assert.Equal(1, await Page.EvaluateAsync<int>($"noted.announced.filter(says => says === '{OverItsTime}').length"));

        await Over.GetByRole(AriaRole.Button, new() { NameRegex = new("^Done") }).ClickAsync();

        await Expect(Page.Locator("#did")).ToContainTextAsync("Done:");
        await Expect(Over).ToHaveCountAsync(0);
        await Expect(Strip.Locator(".end-clock")).ToHaveCountAsync(0);
        await Expect(Page.Locator("#ends[data-over]")).ToHaveCountAsync(0);
        Assert.Single(Entries("loose-end-tied"));
        await Page.UntilAsync("localStorage.getItem('inspectlog.quiet-ends') === '[]'");
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Clock_of_the_phone_may_be_wrong_and_quiet_lasts_over_a_reload()
    {
        await SwitchOnAsync();
        await PassAsync(125);
        await Quiet.ClickAsync();
        await Page.Clock.FastForwardAsync("10:00:00");

        await Page.ReloadAsync();
        await Page.UntilAsync("document.readyState === 'complete'");

        // By the program's clock, whatever the phone's shows.
        var real = await Page.EvaluateAsync<double>(
            "(Date.parse(document.getElementById('ends').dataset.now) - Date.parse(document.querySelector('.end-over').dataset.opened)) / 1000");
        Assert.InRange(await SecondsAsync() - real, -1, 60);

        await Page.Locator("#check-title").ClickAsync(); // sound may come of it now
        await PassAsync(125);
        await Expect(Over.GetByText("Quiet until it is put right.")).ToBeVisibleAsync();
        await Expect(Quiet).ToBeHiddenAsync();
        Assert.Equal(0, await NotedAsync("tones"));
        Assert.Empty(Watch.Complaints);
    }

    private const string Seconds =
        "document.querySelector('#ends .elapsed').textContent.split(':').reduce((sum, part) => 60 * sum + Number(part), 0)";

    /// <summary>Opens the check, and presses that the ignition is on now.</summary>
    private async Task SwitchOnAsync()
    {
        await Page.Clock.InstallAsync();
        await Page.AddInitScriptAsync(Noted);
        await OpenAsync("supply-voltage", 390, 844);
        await Page.Locator("#disturbs").GetByRole(AriaRole.Button, new() { Name = "It is so now" }).ClickAsync();
        await Expect(Elapsed).ToBeVisibleAsync();
        await Page.UntilAsync("document.querySelector('.htmx-request, .htmx-settling') === null");
    }

    /// <summary>Lets time pass until the ignition is on for so many seconds at least.</summary>
    private async Task PassAsync(int seconds)
    {
        var missing = seconds - await SecondsAsync();
        if (missing > 0)
        {
            await Page.Clock.FastForwardAsync(missing * 1000);
        }

        await Page.UntilAsync($"{Seconds} >= {seconds}");
    }

    private Task<int> SecondsAsync() => Page.EvaluateAsync<int>(Seconds);

    private Task<int> NotedAsync(string what) => Page.EvaluateAsync<int>($"noted.{what}");

    /// <summary>Where what is seen of the strip and the check stands.</summary>
    /// <remarks>What a folded list holds has a box or none as the browser likes, and is not seen.</remarks>
    private Task<string> BoxesAsync() => Page.EvaluateAsync<string>(
        "JSON.stringify([...document.querySelectorAll('#ends summary, #ends summary *, #check > *')].filter(one => one.checkVisibility()).map(one => one.getBoundingClientRect()).map(box => [box.left, box.top, box.width, box.height]))");
}
