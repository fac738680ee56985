using InspectLog.Browser.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <content>What is over its time, seen and heard hands-free.</content>
public sealed partial class EndClockTests
{
    [Fact]
    public async Task Hands_free_it_is_said_aloud_once_nobody_speaks()
    {
        await SwitchOnAsync();
        await Page.EvaluateAsync("""
            async () => {
              const { $hands_free_session: { now } } = await import(document.querySelector("script[type=module]").src);
              globalThis.aloud = [];
              now.session = { turns: new Set(), answered: new Set(), deafUntil: 0, cutter: { isHearing: true }, voice: { isSpeaking: false, say: (text) => aloud.push(text) } };
              globalThis.session = now.session;
            }
            """);
        await PassAsync(125);
        await Expect(Over).ToBeVisibleAsync();
        await PassAsync(128);
        Assert.Equal((0, 0), (await NotedAsync("tones"), await Page.EvaluateAsync<int>("aloud.length")));

        await Page.EvaluateAsync("session.cutter.isHearing = false");

        await Page.UntilAsync("noted.tones === 2 && session.deafUntil > performance.now() - 60000 && session.deafUntil > 0");
        await Page.UntilAsync("aloud.length === 1");
        await PassAsync(200);
        Assert.Equal([OverItsTime], await Page.EvaluateAsync<string[]>("aloud"));
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Strip_that_is_over_its_time_can_be_read_and_pressed_in_every_look()
    {
        await SwitchOnAsync();
        await PassAsync(125);
        await Expect(Over).ToBeVisibleAsync();
        foreach (var (look, sun) in Look.All.SelectMany(look => new[] { (look, false), (look, true) }))
        {
            await look.TakeOnAsync(Page);
            await Page.EvaluateAsync("sun => document.documentElement.toggleAttribute('data-sunlight', sun)", sun);
            IReadOnlyList<string> faults = [.. await Accessibility.FaultsAsync(Page), .. await PressTargets.FaultsAsync(Page)];
            Assert.True(faults.Count == 0, $"{look}, sunlight {sun}: {string.Join("\n\n", faults)}");
            await PhotographAsync($"{look.Width}-{look.Scheme}-{(sun ? "sun" : "usual")}");
        }

        foreach (var window in Window.Small)
        {
            await window.TakeOnAsync(Page);
            var hidden = await Window.HiddenAsync(Page);
            Assert.True(hidden.Count == 0, $"{window}: {string.Join("\n\n", hidden)}");
        }
    }

    private async Task PhotographAsync(string name)
    {
        if (Environment.GetEnvironmentVariable("INSPECTLOG_PICTURES") is { } pictures)
        {
            await Page.ScreenshotAsync(new() { Path = Path.Combine(pictures, $"end-clock-{name}.png") });
        }
    }
}
