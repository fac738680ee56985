using InspectLog.App.Bench;
using InspectLog.App.Listening;
using InspectLog.Inspecting;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Listening;

/// <summary>Obeys spoken commands once they and all that was said before them are read. The records are those of the
/// person who said so, and the utterance is kept beside them.</summary>
public sealed partial class SpokenControl(Garage garage, SheetLibrary sheets, BenchEvents events, ILogger<SpokenControl> log)
{
    /// <summary>Obeys every command of an inspection that is due. Called whenever a note has been read. Where nothing can
    /// be written the commands stay due; every page says why.</summary>
    public void Obey(string vehicleId, long inspection)
    {
        try
        {
            while (ObeyNext(vehicleId, inspection))
            {
                events.Publish(vehicleId, inspection, new BenchEvent.Changed());
            }
        }
        catch (JournalReadOnlyException problem)
        {
            LogNotObeyed(problem.Message);
        }
    }

    private bool ObeyNext(string vehicleId, long number)
    {
        if (BenchScene.Find(garage, sheets, vehicleId, number) is not { Inspection: { } inspection } || CommandOrder.Next(inspection) is not { } next)
        {
            return false;
        }

        var obeyed = false;
        garage.Append(vehicleId, next.History.By, state =>
        {
            // Looked at again inside the journal's lock: a closed inspection takes no more commands.
            var now = BenchScene.Of(state, sheets, number)!;
            IReadOnlyList<EntryBody> made = !now.Inspection.IsClosed && CommandOrder.Next(now.Inspection) is { } command
                ? Obeying.Bodies(now, garage.Workshop, command)
                : [];
            obeyed = made.Count > 0;
            return made;
        });
        return obeyed;
    }

    [LoggerMessage(LogLevel.Warning, "A spoken command could not be obeyed yet: {Problem}")]
    private partial void LogNotObeyed(string problem);
}
