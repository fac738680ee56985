using System.Text.RegularExpressions;
using InspectLog.Dictation.Hearing;

namespace InspectLog.App.Tests.Web;

/// <summary>Hears what the test wrote down, so that tests of the web app need no model. The real model is tested in
/// its own room and in the browser tests.</summary>
public sealed partial class ScriptedSpeech(params string[] texts) : ISpeechToText
{
    private readonly Queue<string> _texts = new(texts);
    private readonly TaskCompletionSource _begun = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource _cancelled = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Set to make speech unavailable.</summary>
    public string? Problem { get; set; }

    /// <summary>Set to make recordings fail with this.</summary>
    public string? Failure { get; set; }

    /// <summary>Completes when the first transcription has begun.</summary>
    public Task Begun => _begun.Task;

    /// <summary>Completes when a transcription was cancelled.</summary>
    public Task Cancelled => _cancelled.Task;

    /// <summary>Completed to let a transcription go on; null lets all go on.</summary>
    public TaskCompletionSource? Gate { get; init; }

    public SpeechReadiness Readiness => new(Problem is null, "scripted", new string('0', 64), Problem);

    public async Task<Transcript> TranscribeAsync(
        PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken)
    {
        _begun.TrySetResult();
        if (Failure is { } failure)
        {
            throw new RecordingFailedException(failure);
        }

        if (Gate is { } gate)
        {
            try
            {
                await gate.Task.WaitAsync(cancellationToken);
            }
            catch (OperationCanceledException)
            {
                _cancelled.TrySetResult();
                throw;
            }
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
