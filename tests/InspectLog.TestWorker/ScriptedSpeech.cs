using System.Globalization;
using InspectLog.Dictation.Hearing;

namespace InspectLog.TestWorker;

/// <summary>Answers with the number of samples and the examples as its text, or misbehaves: <c>slow</c> takes a while, <c>stuck</c> never
/// ends and hears no cancel, <c>dies</c> ends the process in the middle, <c>dies-once FILE</c> only when that file is not
/// there yet, <c>fails</c> throws, <c>unavailable</c> and <c>not-ready FILE</c> (until the file is there) have no model.</summary>
internal sealed class ScriptedSpeech(string[] behaviours) : ISpeechToText
{
    public SpeechReadiness Readiness => behaviours is ["not-ready", var file] && !File.Exists(file)
        ? new(false, "scripted", null, "The library is missing.")
        : new(true, "scripted", "00", null);

    public async Task<Transcript> TranscribeAsync(
        PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken)
    {
        progress?.Report(0.25);
        switch (behaviours)
        {
            case ["slow"]:
                await Task.Delay(TimeSpan.FromSeconds(0.3), cancellationToken);
                break;
            case ["stuck"]:
                Thread.Sleep(Timeout.Infinite);
                break;
            case ["dies"]:
                Environment.FailFast("native crash");
                break;
            case ["dies-once", var file] when !File.Exists(file):
                await File.WriteAllTextAsync(file, "died", cancellationToken);
                Environment.FailFast("native crash");
                break;
            case ["fails"]:
                throw new InvalidOperationException("out of luck");
            case ["unavailable"]:
                throw new SpeechUnavailableException("The model is gone.");
        }

        progress?.Report(1);
        var text = audio.Samples.Length.ToString(CultureInfo.InvariantCulture) + (examples is null ? "" : $" {examples}");
        return new Transcript(text, [new HeardWord(text, 0.5, 1.25, 0.75, 0)], true, audio.Duration);
    }
}
