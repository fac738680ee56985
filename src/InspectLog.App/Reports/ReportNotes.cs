using InspectLog.Checks;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>The notes of an inspection, as its report shows them. Pure.</summary>
public static class ReportNotes
{
    /// <summary>All notes whose words are told: among the notes, or where something of them was confirmed as its source. Typed notes, and voice notes that gave no finding or of which a finding was dropped, so that nothing said
    /// is missing. Those left out are among them.</summary>
    public static IReadOnlyList<ReportNote> Of(InspectionState inspection, CheckSheet sheet) =>
    [
        .. inspection.WordedNotes.Where(NotesInWords.KeepsItsWords).Select(note => new ReportNote(
            note.Sequence,
            note.Time,
            note.Words!,
            note.History.IsLeftOutOfReport,
            [.. ReportChanges.PutRight(note, sheet, later: true)])
        {
            Check = CheckOf(NotesInWords.StandsUnder(inspection, note)?.Says) is { } check && sheet.Find(check) is not null ? check : null,
        }),
    ];

    /// <summary>How many notes and photos are left out, never what they say: "2 notes are left out of this report."; null
    /// where none is.</summary>
    public static string? LeftOut(InspectionState inspection)
    {
        var left = AllLeftOut(inspection).ToList();
        var photos = left.OfType<PhotoCapture>().Count();
        var notes = left.Count - photos;
        string[] parts = [.. Counted(notes, "note"), .. Counted(photos, "photo")];
        return parts.Length == 0 ? null : $"{Phrases.Joined(parts)} {(left.Count == 1 ? "is" : "are")} left out of this report.";
    }

    /// <summary>Notes and photos that are left out and would stand in the report otherwise, added later ones last.</summary>
    public static IEnumerable<Capture> AllLeftOut(InspectionState inspection) => inspection.Captures
        .Concat(inspection.Addenda.OfType<Capture>())
        .Where(one => one.History.IsLeftOutOfReport && (one is PhotoCapture || (one is WordedNote note && NotesInWords.KeepsItsWords(note))));

    private static string? CheckOf(EntryBody? record) => record switch
    {
        ReadingDecided reading => reading.Check,
        ObservationMade seen => seen.Check,
        ActionDone done => done.Check,
        _ => null,
    };

    private static string[] Counted(int count, string one) => count == 0 ? [] : [Phrases.Count(count, one)];
}
