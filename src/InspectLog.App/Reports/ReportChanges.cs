using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>What was put right and withdrawn, in words. What happened after closing is told where it stands; what
/// happened before is for the history on the screen alone. Pure.</summary>
public static class ReportChanges
{
    /// <summary>"Put right on 12 March 2026 by Tess Okafor: was 8.40 kΩ.", for each time it was; "Withdrawn on 12 March 2026
    /// by Tess Okafor (misread), which Tess Okafor undid on 13 March 2026.", for each time that was undone; oldest first.
    /// </summary>
    /// <param name="kept">What was put right.</param>
    /// <param name="sheet">The inspection's sheet.</param>
    /// <param name="later">Whether those after closing are told, or those before.</param>
    public static IEnumerable<string> PutRight(IKept kept, CheckSheet sheet, bool later)
    {
        var changes = KeptWords.Versions(kept)
            .Where(one => one.Past.IsLater == later)
            .Select(one => (one.Past.At, Text: $"Put right on {Times.Date(one.Past.At)} by {one.Past.By}: was {Was(one.Past.Says, one.Next, sheet)}."));
        var undone = kept.History.Restored
            .Where(one => one.IsLater == later)
            .Select(one => (one.At, Text: $"Withdrawn on {Times.Date(one.Withdrawn.At)} by {one.Withdrawn.By} ({one.Withdrawn.Reason.TrimEnd('.')}), which {one.By} undid on {Times.Date(one.At)}."));
        return changes.Concat(undone).OrderBy(one => one.At).Select(one => one.Text);
    }

    /// <summary>What became of the marks over a photo after closing: made, changed, withdrawn and restored.</summary>
    public static IEnumerable<string> OfMarks(Recorded<PhotoMarked> marks, CheckSheet sheet) =>
    [
        .. marks.History.IsLater ? [$"Marked on {Times.Date(marks.Time)} by {marks.History.By}."] : Array.Empty<string>(),
        .. PutRight(marks, sheet, later: true),
        .. marks.History.Withdrawn is { IsLater: true } ? [Withdrawn(marks, sheet)] : Array.Empty<string>(),
    ];

    /// <summary>What was withdrawn of a check after closing: "Withdrawn on 12 March 2026 by Tess Okafor: lead 4, 8.40 kΩ
    /// (misread)."</summary>
    public static IReadOnlyList<string> WithdrawnLater(InspectionState inspection, CheckSheet sheet, string check) =>
    [
        .. inspection.Everything
            .Where(kept => kept is { History: { IsLater: false, Withdrawn.IsLater: true } } && About(kept.Says).Check == check)
            .Select(kept => Withdrawn(kept, sheet)),
    ];

    /// <summary>The same of what belongs to no check, and of what was added later.</summary>
    public static IReadOnlyList<string> WithdrawnOtherwise(InspectionState inspection, CheckSheet sheet) =>
    [
        .. inspection.Everything
            .Where(kept => kept.History.Withdrawn is { IsLater: true }
                && (kept.History.IsLater || sheet.Find(About(kept.Says).Check ?? "") is null))
            .Select(kept => Withdrawn(kept, sheet)),
    ];

    /// <summary>All that was put right or withdrawn before closing, oldest first. What is left out of the report is left
    /// out of this as well.</summary>
    public static IReadOnlyList<string> BeforeClosing(InspectionState inspection, CheckSheet sheet) =>
    [
        .. inspection.Everything.Concat(inspection.PhotoMarks)
            .Where(kept => !kept.History.IsLeftOutOfReport && !(kept.Says is PhotoMarked marked && inspection.Find(marked.Photo)?.History.IsLeftOutOfReport == true))
            .OrderBy(kept => kept.Sequence)
            .SelectMany(kept => PutRight(kept, sheet, later: false).Select(text => $"{Heading(kept.Says, sheet)}: {Phrases.Lower(text)}")
                .Concat(kept.History.Withdrawn is { IsLater: false } ? [Withdrawn(kept, sheet)] : [])),
    ];

    /// <summary>What is left out of the report is named without its words, and so is what was misheard.</summary>
    private static string Withdrawn(IKept kept, CheckSheet sheet)
    {
        var (says, withdrawn) = (kept.Says, kept.History.Withdrawn!);
        var what = kept.History.IsLeftOutOfReport || says is RecordingKept ? Sort(says) : $"{Heading(says, sheet)}, {Words(says, sheet)}";
        return $"Withdrawn on {Times.Date(withdrawn.At)} by {withdrawn.By}: {Phrases.Lower(what)} ({withdrawn.Reason.TrimEnd('.')}).";
    }

    private static string Was(EntryBody before, EntryBody after, CheckSheet sheet) =>
        About(before) == About(after) ? Words(before, sheet) + KeptWords.Before(before, after) : $"{Phrases.Lower(Heading(before, sheet))}, {Words(before, sheet)}";

    private static (string? Check, int? Cylinder) About(EntryBody body) => body switch
    {
        ReadingDecided reading => (reading.Check, reading.Cylinder),
        ObservationMade seen => (seen.Check, seen.Cylinder),
        ActionDone done => (done.Check, done.Cylinder),
        PhotoKept photo => (photo.Check, photo.Cylinder),
        NoteWritten note => (note.Check, null),
        _ => (null, null),
    };

    private static string Heading(EntryBody body, CheckSheet sheet) => About(body) switch
    {
        _ when body is NoteWritten => Sort(body),
        ({ } check, var cylinder) => RecordWords.Heading(sheet, check, cylinder),
        _ => Sort(body),
    };

    private static string Sort(EntryBody body) => body is PhotoKept ? "Photo" : body is PhotoMarked ? "Marks in a photo" : body is NoteWritten ? "Note" : body is RecordingKept ? "Voice note" : "Record";

    private static string Words(EntryBody body, CheckSheet sheet) => body switch
    {
        ReadingDecided reading when sheet.Find(reading.Check) is { } check => RecordWords.Value(reading, check),
        ReadingDecided reading => reading.AsGiven,
        ObservationMade seen => RecordWords.Seen(seen),
        ActionDone done => done.Action,
        NoteWritten note => $"“{note.Text}”",
        TranscriptMade heard => $"heard as “{heard.Text}”",
        WordsCorrected words => $"“{words.Text}”",
        PhotoMarked marked => MarkWords.Of(marked),
        PhotoKept { Caption: { Length: > 0 } caption } => $"photo “{caption}”",
        _ => "photo",
    };
}
