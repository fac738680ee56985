using Whisper.net;

namespace InspectLog.Dictation.Hearing;

/// <summary>Finds the stretches of a recording in which somebody speaks (Silero, run by whisper.cpp).</summary>
internal sealed class VoiceActivity(string modelPath) : IDisposable
{
    /// <summary>Less is a click, and too little for native code that expects a whole analysis window.</summary>
    public const int ShortestRecording = PcmAudio.SampleRate / 4;

    private static readonly TimeSpan ShortestPause = TimeSpan.FromMilliseconds(500);
    private static readonly TimeSpan KeptAround = TimeSpan.FromMilliseconds(200);

    private readonly WhisperVadFactory _factory = WhisperVadFactory.FromPath(modelPath, new WhisperFactoryOptions { UseGpu = false });

    /// <summary>The stretches, in order, with a little kept around each; empty when there is no speech.</summary>
    public async Task<IReadOnlyList<SpeechSpan>> FindAsync(ReadOnlyMemory<float> samples, CancellationToken cancellationToken)
    {
        if (samples.Length < ShortestRecording)
            return [];

        await using var processor = _factory.CreateBuilder()
            .WithThreads(1)
            .WithUseGpu(false)
            .WithMinSilenceDuration(ShortestPause)
            .WithSpeechPadding(KeptAround)
            .Build();
        var found = await processor.DetectSpeechAsync(samples, cancellationToken);
        return [.. found.Select(segment => new SpeechSpan(At(segment.Start, samples.Length), At(segment.End, samples.Length)))];
    }

    public void Dispose() => _factory.Dispose();

    private static int At(TimeSpan time, int length) => Math.Clamp((int)(time.TotalSeconds * PcmAudio.SampleRate), 0, length);
}
