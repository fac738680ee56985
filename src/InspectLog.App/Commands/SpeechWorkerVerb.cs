using System.CommandLine;
using InspectLog.Dictation.Hearing.Worker;

namespace InspectLog.App.Commands;

/// <summary>The speech worker: transcribes for the web app in a process of its own. Started by the program, never by
/// hand, so the help does not list it.</summary>
internal sealed class SpeechWorkerVerb : Verb
{
    /// <summary>The verb.</summary>
    public const string Word = "speech-worker";

    private readonly Option<string?> _model = SpeechModelChoice.Option();

    public SpeechWorkerVerb(Surroundings surroundings)
        : base(Word, "Transcribe for a running app, over standard input and output.", surroundings)
    {
        Hidden = true;
        Add(_model);
    }

    public override IReadOnlyList<string> Examples => [];

    public override TimeSpan? TimeToStop => null;

    /// <summary>How the web app starts its worker.</summary>
    public static SpeechWorkerCommand CommandFor(string? modelFile) => SpeechWorkerCommand.OfThisProgram(
        modelFile is null ? [Word] : [Word, "--model", Path.GetFullPath(modelFile)]);

    /// <summary>Ends when the app closes its end, and only then.</summary>
    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        using var signals = new WorkerSignals();
        await SpeechWorkerServer.RunWhisperAsync(SpeechModelChoice.Models(arguments.GetValue(_model)), CancellationToken.None);
        return ExitCodes.Done;
    }
}
