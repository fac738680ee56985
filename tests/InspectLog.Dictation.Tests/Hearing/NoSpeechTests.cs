using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

[Collection(SpeechFixture.OneAtATime)]
public sealed class NoSpeechTests(SpeechFixture fixture)
{
    public static TheoryData<string> SoundNames => [.. Made.Keys];

    private static Dictionary<string, Func<PcmAudio>> Made { get; } = new(StringComparer.Ordinal)
    {
        ["silence"] = () => Sounds.Silence(30),
        ["white noise"] = () => Sounds.White(30),
        ["hum"] = () => Sounds.Hum(30),
        ["engine"] = () => Sounds.Engine(30),
        ["hammer"] = () => Sounds.Knocks(30, aSecond: 1.3),
        ["ratchet"] = () => Sounds.Knocks(30, aSecond: 14),
        ["music"] = () => Sounds.Music(30),
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
