using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Journal;

/// <summary>Entries as they stand in the journal, for whoever opens it without knowing the sheets.</summary>
internal sealed class PlainWording : IEntryWording
{
    /// <inheritdoc/>
    public string Version => "plain 4";

    /// <inheritdoc/>
    public EntryText? Of(VehicleState vehicle, JournalEntry entry) =>
        TextOf(entry.Body) is { } text ? new(text, []) : null;

    private static string? TextOf(EntryBody? body) => body switch
    {
        VehicleAdded v => Join(v.Name, v.Description),
        VehicleDescribed v => Join(v.Name, v.Description),
        WearPartAdded p => p.Name,
        InspectionStarted s => $"{s.Sheet}: {s.Technician}",
        TranscriptMade { Text.Length: > 0 } t => t.Text,
        WordsCorrected c => c.Text,
        NoteWritten n => n.Text,
        PhotoKept { Caption: { Length: > 0 } caption } => caption,
        PhotoMarked m when Said(m) is { Length: > 0 } said => said,
        ReadingDecided r => At(r.Check, r.Cylinder, r.AsGiven),
        ObservationMade o => At(o.Check, o.Cylinder, o.Negated ? "not " + o.Condition : o.Condition),
        ActionDone a => At(a.Check, a.Cylinder, a.Action),
        CheckLeftOut c => At(c.Check, null, c.Reason),
        LooseEndOpened l => l.Text,
        LooseEndWaived l => l.Reason,
        EntryWithdrawn w => w.Reason,
        _ => null,
    };

    private static string Said(PhotoMarked marked) => string.Join(", ", marked.Marks.Select(mark => mark.Text).OfType<string>());

    private static string Join(string name, string description) =>
        description.Length == 0 ? name : $"{name}: {description}";

    private static string At(string check, int? cylinder, string text) =>
        cylinder is null ? $"{check}: {text}" : $"{check}, cylinder {cylinder}: {text}";
}
