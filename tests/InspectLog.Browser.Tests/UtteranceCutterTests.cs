using System.Text.Json;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests;

/// <summary>The script that cuts utterances at the pauses, by itself: made-up sound in, events out. It needs no
/// microphone and no clock, so the browser only lends its JavaScript.</summary>
public sealed class UtteranceCutterTests(BrowserFixture fixture) : IAsyncLifetime
{
    private readonly TempFolder _folder = new();
    private RunningProgram _program = null!;
    private Visit _visit = null!;

    public async ValueTask InitializeAsync()
    {
        _program = await RunningProgram.ServeAsync(_folder.Path);
        _visit = await Visit.OpenAsync(fixture.Browser, _program);
    }

    public async ValueTask DisposeAsync()
    {
        await _visit.DisposeAsync();
        await _program.DisposeAsync();
        _folder.Dispose();
    }

    [Fact]
    public async Task Two_stretches_of_speech_are_two_utterances_with_some_quiet_before_each()
    {
        var events = await CutAsync("quiet(2), speech(1.5), quiet(2), speech(2), quiet(2)");

        Assert.Equal(["began", "ended", "began", "ended"], events.Select(one => one.Kind));
        Assert.InRange(events[1].Seconds, 1.5 + 0.4 + 0.8, 1.5 + 0.7 + 1.1);
        Assert.InRange(events[3].Seconds, 2.0 + 0.4 + 0.8, 2.0 + 0.7 + 1.1);
    }

    [Fact]
    public async Task Pause_for_breath_does_not_end_an_utterance()
    {
        var events = await CutAsync("quiet(2), speech(1), quiet(0.7), speech(1), quiet(2)");

        Assert.Equal(["began", "ended"], events.Select(one => one.Kind));
        Assert.InRange(events[1].Seconds, 3.5, 4.6);
    }

    [Fact]
    public async Task Click_is_dismissed()
    {
        var events = await CutAsync("quiet(2), speech(0.1), quiet(2)");

        Assert.DoesNotContain(events, one => one.Kind == "ended");
    }

    [Fact]
    public async Task Silence_and_a_steady_noise_are_no_utterances_once_the_floor_has_followed()
    {
        var events = await CutAsync("quiet(3), noise(20, 0.05)");

        // The step itself is heard until the floor has followed it; the server's own check finds no speech in it.
        Assert.InRange(events.Count(one => one.Kind == "ended"), 0, 1);
        Assert.All(events, one => Assert.True(one.At < 3 + 6, $"{one.Kind} at {one.At} s"));
        Assert.Empty(await CutAsync("quiet(10)"));
    }

    [Fact]
    public async Task Speech_is_found_above_a_steady_noise()
    {
        var events = await CutAsync("noise(8, 0.02), mixed(1.5, 0.02), noise(3, 0.02)");

        var spoken = events.Where(one => one.At > 7).ToList();
        Assert.Equal(["began", "ended"], spoken.Select(one => one.Kind));
    }

    [Fact]
    public async Task Hum_of_the_mains_is_not_heard() => Assert.Empty(await CutAsync("hum(10, 0.05)"));

    [Fact]
    public async Task Speech_without_end_is_cut_at_its_quietest_place_and_nothing_is_lost()
    {
        var events = await CutAsync("quiet(1), speech(26), faint(0.3), speech(20), quiet(2)");

        var ended = events.Where(one => one.Kind == "ended").ToList();
        Assert.Equal(2, ended.Count);
        Assert.InRange(ended[0].Seconds, 26.4, 27.2);
        Assert.InRange(ended.Sum(one => one.Seconds), 46.3 + 1.2, 46.3 + 2.2);
    }

    [Fact]
    public async Task Blocks_of_any_length_give_the_same_events()
    {
        var one = await CutAsync("quiet(2), speech(1.5), quiet(2)", block: 128);
        var other = await CutAsync("quiet(2), speech(1.5), quiet(2)", block: 4099);

        Assert.Equal(one.Select(e => (e.Kind, e.Seconds)), other.Select(e => (e.Kind, e.Seconds)));
    }

    [Fact]
    public async Task Other_rates_are_cut_alike()
    {
        var events = await CutAsync("quiet(2), speech(1.5), quiet(2)", rate: 44_100);

        Assert.Equal(["began", "ended"], events.Select(one => one.Kind));
    }

    [Fact]
    public async Task Forgetting_drops_what_was_heard_and_keeps_the_floor()
    {
        var left = await _visit.Page.EvaluateAsync<string>(
            Sound + """
            (async () => {
              const { UtteranceCutter } = await import("/js/utterance-cutter.js");
              const cutter = new UtteranceCutter(16000);
              cutter.push(noise(4, 0.02));
              cutter.push(speech(1));
              const before = [cutter.isHearing, cutter.floor];
              cutter.forget();
              const after = [cutter.isHearing, cutter.floor];
              return JSON.stringify({ was: before[0], is: after[0], same: Math.abs(before[1] - after[1]) < 0.01, flushed: cutter.flush() });
            })()
            """);

        Assert.Equal("""{"was":true,"is":false,"same":true,"flushed":null}""", left);
    }

    [Fact]
    public async Task Flushing_gives_what_is_being_said()
    {
        var seconds = await _visit.Page.EvaluateAsync<double>(
            Sound + """
            (async () => {
              const { UtteranceCutter } = await import("/js/utterance-cutter.js");
              const cutter = new UtteranceCutter(16000);
              cutter.push(quiet(2));
              cutter.push(speech(1));
              return cutter.flush().length / 16000;
            })()
            """);

        Assert.InRange(seconds, 1.4, 1.8);
    }

    /// <summary>Speech here is a tone that swells four times a second, as syllables do, down to a twentieth.</summary>
    private const string Sound = """
        var seed = 1;
        var at = 16000;
        var random = () => { seed = (seed * 16807) % 2147483647; return seed / 1073741823.5 - 1; };
        var make = (seconds, f) => Float32Array.from({ length: Math.round(seconds * at) }, (_, i) => f(i / at));
        var swell = (t) => 0.05 + 0.95 * Math.sin(4 * Math.PI * t) ** 2;
        var voice = (t, loud) => loud * swell(t) * (Math.sin(2 * Math.PI * 220 * t) + 0.5 * Math.sin(2 * Math.PI * 880 * t));
        var quiet = (seconds) => make(seconds, () => 0.0005 * random());
        var speech = (seconds) => make(seconds, (t) => voice(t, 0.2) + 0.0005 * random());
        var faint = (seconds) => make(seconds, () => 0.001 * random());
        var noise = (seconds, loud) => make(seconds, () => loud * random());
        var mixed = (seconds, loud) => make(seconds, (t) => voice(t, 0.2) + loud * random());
        var hum = (seconds, loud) => make(seconds, (t) => loud * Math.sin(2 * Math.PI * 50 * t));

        """;

    private async Task<List<Happened>> CutAsync(string parts, int block = 2048, int rate = 16_000)
    {
        var json = await _visit.Page.EvaluateAsync<string>(
            Sound + $$"""
            (async () => {
              const { UtteranceCutter } = await import("/js/utterance-cutter.js");
              at = {{rate}};
              const cutter = new UtteranceCutter(at);
              const events = [];
              let seen = 0;
              for (const part of [{{parts}}]) {
                for (let from = 0; from < part.length; from += {{block}}) {
                  const samples = part.subarray(from, from + {{block}});
                  seen += samples.length;
                  for (const one of cutter.push(samples)) {
                    events.push({ kind: one.kind, seconds: (one.samples?.length ?? 0) / at, at: seen / at });
                  }
                }
              }
              return JSON.stringify(events);
            })()
            """);
        return JsonSerializer.Deserialize<List<Happened>>(json, JsonSerializerOptions.Web)!;
    }

    private sealed record Happened(string Kind, double Seconds, double At);
}
