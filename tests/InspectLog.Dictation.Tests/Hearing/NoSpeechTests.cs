using InspectLog.Benchmarks.Dictation;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

[Collection(SpeechFixture.OneAtATime)]
[Trait("Takes", "long")]
public sealed class NoSpeechTests(SpeechFixture fixture, ITestOutputHelper output)
{
    /// <summary>A clip of seven seconds; by its level the voice begins at 0.2 s and ends at 6.8 s.</summary>
    private const string Clip = "ps_librivox_0870.wav";

    private const string Said =
        "and mister john dashwood had then leisure to consider how much there might be prudently in his power to do for them";

    public static TheoryData<string> SoundNames => [.. Made.Keys];

    private static Dictionary<string, Func<PcmAudio>> Made { get; } = new(StringComparer.Ordinal)
    {
        ["silence"] = () => Sounds.Silence(30),
        ["white noise"] = () => Sounds.White(30),
        ["hum"] = () => Sounds.Hum(30),
        ["engine"] = () => Sounds.Engine(30),
        ["revved engine"] = () => Sounds.RevvedEngine(30),
        ["hiss"] = () => Sounds.Hiss(30),
        ["rattle"] = () => Sounds.Rattle(30),
        ["hammer"] = () => Sounds.Knocks(30, aSecond: 1.3),
        ["ratchet"] = () => Sounds.Knocks(30, aSecond: 14),
        ["music"] = () => Sounds.Music(30),
        ["chords"] = () => Sounds.Chords(30),
    };

    [Theory]
    [MemberData(nameof(SoundNames))]
    public async Task Sound_without_speech_gives_no_words(string sound)
    {
        var audio = Made[sound]();
        var heard = await fixture.Speech.TranscribeAsync(audio, null, TestContext.Current.CancellationToken);
        Assert.False(heard.SpeechFound);
        Assert.Empty(heard.Text);
        Assert.Empty(heard.Words);
        Assert.Equal(audio.Duration, heard.Duration);
    }

    /// <summary>Invented words would count as errors, and those before or after the speech would stand outside its time.</summary>
    [Theory]
    [MemberData(nameof(SoundNames))]
    public async Task Speech_in_the_middle_of_a_sound_is_still_heard_and_nothing_is_added(string sound)
    {
        var audio = Made[sound]().With(SpeechFixture.Recording(Clip), decibels: 15);
        var heard = await fixture.Speech.TranscribeAsync(audio, null, TestContext.Current.CancellationToken);
        var error = new WordErrorRate();
        error.Add(Said, heard.Text);
        output.WriteLine($"{error.Rate:P0}: {heard.Text}");
        Assert.True(heard.SpeechFound);
        Assert.InRange(error.Rate, 0, 0.15);
        // The clip stands in the middle of 30 s, so the voice is there from 11.65 to 18.2 s; over a sound its beginning is
        // found to about half a second.
        Assert.InRange(heard.Words[0].Start, 11.15, 13);
        Assert.InRange(heard.Words[^1].Start, 17, 18.3);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(200)]
    [InlineData(1_599)]
    [InlineData(3_999)]
    [InlineData(4_000)]
    [InlineData(16_000)]
    public async Task Empty_or_tiny_recording_gives_no_words(int samples)
    {
        var audio = new PcmAudio(Sounds.White(1).Samples[..samples]);
        var heard = await fixture.Speech.TranscribeAsync(audio, null, TestContext.Current.CancellationToken);
        Assert.False(heard.SpeechFound);
        Assert.Empty(heard.Text);
    }
}
