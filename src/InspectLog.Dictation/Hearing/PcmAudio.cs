namespace InspectLog.Dictation.Hearing;

/// <summary>Mono audio at 16 kHz, the one form the speech models take.</summary>
/// <param name="Samples">Samples from -1 to 1.</param>
public sealed record PcmAudio(ReadOnlyMemory<float> Samples)
{
    /// <summary>Samples a second.</summary>
    public const int SampleRate = 16_000;

    /// <summary>Length.</summary>
    public TimeSpan Duration => TimeSpan.FromSeconds((double)Samples.Length / SampleRate);
}
