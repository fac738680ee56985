using System.Text.RegularExpressions;
using InspectLog.Dictation.Hearing;

namespace InspectLog.App.Tests.Web;

/// <summary>Hears what the test wrote down, so that tests of the web app need no model. The real model is tested in
/// its own room and in the browser tests.</summary>
public sealed partial class ScriptedSpeech(params string[] texts) : ISpeechToText
{
    private readonly Queue<string> _texts = new(texts);

    /// <summary>Set to make speech unavailable.</summary>
    public string? Problem { get; set; }

    /// <summary>Completed to let a transcription go on; null lets all go on.</summary>
    public TaskCompletionSource? Gate { get; init; }

    public SpeechReadiness Readiness => new(Problem is null, "scripted", new string('0', 64), Problem);

    public async Task<Transcript> TranscribeAsync(
        PcmAudio audio, IProgress<double>? progress, CancellationToken cancellationToken)
    {
        if (Gate is { } gate)
        {
            await gate.Task.WaitAsync(cancellationToken);
        }

        var text = _texts.Count > 0 ? _texts.Dequeue() : "";
        progress?.Report(1);
        var words = Word().Matches(text)
            .Select(match => new HeardWord(match.Value, match.Index * 0.1, (match.Index + 1) * 0.1, 0.9, match.Index));
        return new Transcript(text, [.. words], text.Length > 0, audio.Duration);
    }

    [GeneratedRegex(@"\S+")]
    private static partial Regex Word();
}
