using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Vehicles;

/// <summary>Where an entry is shown: a page, and the part of it that is the entry.</summary>
/// <param name="Page">Address of the page.</param>
/// <param name="Anchor">Id of the part.</param>
/// <param name="IsJournal">Whether it is only to be read in the journal.</param>
public sealed record EntryAddress(string Page, string Anchor, bool IsJournal)
{
    /// <summary>The address that leads to the part.</summary>
    public string Link => $"{Page}#{Anchor}";

    /// <summary>The address that leads to the part and has it marked as what was searched for.</summary>
    public string AsFound => $"{Page}{(Page.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{FoundPart.Parameter}={Anchor}#{Anchor}";

    /// <summary>Where an entry of a vehicle's journal is shown: on the bench of its inspection, with its check open, what
    /// counts there; in the journal everything else. Pure.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="sheets">The sheets; the bench of an inspection whose sheet is missing shows nothing.</param>
    /// <param name="entry">The entry.</param>
    public static EntryAddress Of(VehicleState vehicle, SheetLibrary sheets, JournalEntry entry) =>
        InspectionOf(vehicle, entry) is { } inspection && sheets.Of(inspection) is not null && OnBench(vehicle, inspection, entry) is { } place
            ? place
            : InJournal(vehicle, entry);

    private static InspectionState? InspectionOf(VehicleState vehicle, JournalEntry entry) => entry.Body switch
    {
        InspectionStarted => vehicle.Inspection(entry.Sequence),
        TranscriptMade made => vehicle.InspectionWith(made.Recording),
        WordsCorrected words => vehicle.InspectionWith(words.Recording),
        CheckLeftOut left => vehicle.Inspection(left.Inspection),
        LooseEndOpened end => vehicle.Inspection(end.Inspection),
        _ => vehicle.InspectionWith(EntryMarks.FirstOf(entry)),
    };

    private static EntryAddress InJournal(VehicleState vehicle, JournalEntry entry) =>
        new(Links.Journal(vehicle.Id, entry.Sequence + Links.EntriesAfter), $"entry-{Number(entry.Sequence)}", IsJournal: true);

    private static EntryAddress? OnBench(VehicleState vehicle, InspectionState inspection, JournalEntry entry)
    {
        EntryAddress At(string anchor, string? check = null, int? cylinder = null) => new(
            check is null ? Links.Inspection(vehicle.Id, inspection.Number) : Links.Check(vehicle.Id, inspection.Number, check, cylinder),
            anchor,
            IsJournal: false);

        return entry.Body switch
        {
            InspectionStarted when entry.Sequence == inspection.Number => At(FoundPart.Inspection),
            TranscriptMade made when inspection.Find(made.Recording) is VoiceNote note => At(Item(note.Sequence), note.OpenCheck),
            WordsCorrected words when inspection.Find(words.Recording) is VoiceNote note => At(Item(note.Sequence), note.OpenCheck),
            CheckLeftOut left when left.Inspection == inspection.Number && inspection.LeftOut.GetValueOrDefault(left.Check) == left.Reason =>
                At(FoundPart.LeftOut, left.Check),
            LooseEndOpened when !inspection.IsClosed && inspection.OpenLooseEnds.FirstOrDefault(one => one.Sequence == entry.Sequence) is { } end =>
                At($"end-{Number(end.Sequence)}", end.What.Check, end.What.Cylinder),
            PhotoMarked marked when inspection.MarksOf(marked.Photo)?.Sequence == EntryMarks.FirstOf(entry) && Counting(inspection, entry) is not null =>
                new(Links.Photo(vehicle.Id, inspection.Number, marked.Photo), "marks", IsJournal: false),
            PhotoMarked => null,
            RecordingKept or AmendableBody when Counting(inspection, entry) is { } kept && AnchorOf(inspection, kept) is { } anchor =>
                CheckOf(kept.Says) is var (check, cylinder) ? At(anchor, check, cylinder) : null,
            _ => null,
        };
    }

    /// <summary>What an entry records, if it counts as this very entry has it and belongs to what was done before closing.
    /// </summary>
    private static IKept? Counting(InspectionState inspection, JournalEntry entry) =>
        inspection.Find(EntryMarks.FirstOf(entry)) is { History: { Withdrawn: null, IsLater: false } history } kept
            && (history.LastChange?.ChangedBy ?? kept.Sequence) == entry.Sequence
            ? kept
            : null;

    private static string? AnchorOf(InspectionState inspection, IKept kept) =>
        InspectionState.SourcesOf(kept.Says) is not [var finding, ..] ? Item(kept.Sequence)
        : inspection.FindNote(finding.Recording) switch
        {
            VoiceNote note when ProposalGroups.Of(note).FirstOrDefault(group => group.Any(one => one.Reference == finding)) is { } group =>
                $"finding-{Number(note.Sequence)}-{Number(group[0].Reference.Index)}",
            { } note => Item(note.Sequence),
            null => null,
        };

    private static (string? Check, int? Cylinder) CheckOf(EntryBody body) => body switch
    {
        ReadingDecided reading => (reading.Check, reading.Cylinder),
        ObservationMade seen => (seen.Check, seen.Cylinder),
        ActionDone done => (done.Check, done.Cylinder),
        PhotoKept photo => (photo.Check, photo.Cylinder),
        NoteWritten note => (note.Check, null),
        RecordingKept recording => (recording.OpenCheck, null),
        _ => (null, null),
    };

    private static string Item(long sequence) => $"item-{Number(sequence)}";

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
