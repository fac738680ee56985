using System.Text;
using InspectLog.Dictation.Hearing;
using Whisper.net;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>The yardstick: Whisper.net with nothing set, a processor per recording.</summary>
internal sealed class BareWhisper(string modelPath) : IDisposable
{
    private readonly WhisperFactory _factory = WhisperFactory.FromPath(modelPath);

    public async Task<string> TranscribeAsync(PcmAudio audio)
    {
        await using var processor = _factory.CreateBuilder().Build();
        var text = new StringBuilder();
        await foreach (var segment in processor.ProcessAsync(audio.Samples))
            text.Append(segment.Text);
        return text.ToString();
    }

    public void Dispose() => _factory.Dispose();
}
