using System.CommandLine;
using InspectLog.Dictation.Hearing.Worker;
using InspectLog.Photos.Developing;
using InspectLog.Photos.Worker;

namespace InspectLog.App.Commands;

/// <summary>A photo worker: decodes photos for the web app in a process of its own. Started by the program, never by hand,
/// so the help does not list it.</summary>
internal sealed class PhotoWorkerVerb : Verb
{
    /// <summary>The verb.</summary>
    public const string Word = "photo-worker";

    public PhotoWorkerVerb(Surroundings surroundings)
        : base(Word, "Make copies of photos for a running app, over standard input and output.", surroundings) => Hidden = true;

    public override IReadOnlyList<string> Examples => [];

    public override TimeSpan? TimeToStop => null;

    /// <summary>What develops photos apart from this process.</summary>
    public static IPhotoDeveloper Open(TimeProvider time)
    {
        var program = SpeechWorkerCommand.OfThisProgram(Word);
        return new PhotoWorkers(
            new PhotoWorkerCommand(program.FileName, program.Arguments), PhotoBounds.Usual, PhotoWorkers.UsualCount, time);
    }

    /// <summary>Ends when the app closes its end, and only then.</summary>
    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        using var signals = new WorkerSignals();
        await PhotoWorkerServer.RunAsync();
        return ExitCodes.Done;
    }
}
