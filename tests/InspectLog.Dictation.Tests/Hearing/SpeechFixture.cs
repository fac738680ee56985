using InspectLog.Dictation.Hearing;

[assembly: AssemblyFixture(typeof(InspectLog.Dictation.Tests.Hearing.SpeechFixture))]

namespace InspectLog.Dictation.Tests.Hearing;

/// <summary>The shipped model, loaded once for all tests.</summary>
public sealed class SpeechFixture : IAsyncDisposable
{
    /// <summary>Collection of the tests that run the model: side by side they only take the processor from each other.</summary>
    public const string OneAtATime = "speech";

    public WhisperSpeech Speech { get; } = new(SpeechModels.Shipped());

    public static PcmAudio Recording(string name)
    {
        var file = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Recordings", name));
        return Assert.IsType<WavResult.Ok>(WavFile.Read(file)).Audio;
    }

    public ValueTask DisposeAsync() => Speech.DisposeAsync();
}
