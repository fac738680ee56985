using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Recording;

/// <summary>What a photo is the evidence of. Pure.</summary>
public static class PhotoEvidence
{
    /// <summary>The record a photo shows, withdrawn or not; of one taken after something was said, the record that was
    /// confirmed from it at the photo's place. Null where it shows none, or nothing of what was said is confirmed yet.
    /// </summary>
    public static IKept? Record(InspectionState inspection, PhotoKept photo) =>
        photo.Shows is not { } shows ? null : inspection.Find(shows) switch
        {
            WordedNote note => (note.Proposals ?? [])
                .SelectMany(proposal => inspection.RecordsOf(proposal.Reference))
                .LastOrDefault(record => PlaceOf(record.Says) == (photo.Check, photo.Cylinder)),
            { } record when PlaceOf(record.Says) is not null => record,
            _ => null,
        };

    /// <summary>What was said when a photo was taken, as long as nothing of it is confirmed; null otherwise, and where it
    /// said no finding.</summary>
    public static WordedNote? Note(InspectionState inspection, PhotoKept photo) =>
        Record(inspection, photo) is null && photo.Shows is { } shows
        && inspection.Find(shows) is WordedNote { Proposals.Count: > 0 } note
            ? note
            : null;

    /// <summary>What a photo shows, in words: "Lead condition, lead 2: burnt"; null where it shows nothing in
    /// particular.</summary>
    public static string? Words(BenchScene scene, PhotoKept photo) =>
        Record(scene.Inspection, photo) is { } record ? Words(scene, record)
        : Note(scene.Inspection, photo) is { Words: { } said } note
            ? $"“{said.Trim()}”{(note.Proposals!.Exists(one => one.State == ProposalState.Open) ? ", not confirmed yet" : ", not confirmed")}"
        : null;

    /// <summary>A record in words: "Lead condition, lead 2: burnt".</summary>
    public static string Words(BenchScene scene, IKept record)
    {
        var text = record.Says switch
        {
            ReadingDecided reading when scene.Sheet.Find(reading.Check) is { } check =>
                $"{RecordWords.Heading(scene.Sheet, reading.Check, reading.Cylinder)}: {RecordWords.Value(reading, check)}",
            ReadingDecided reading => $"{reading.Check}: {reading.AsGiven}",
            ObservationMade seen => $"{RecordWords.Heading(scene.Sheet, seen.Check, seen.Cylinder)}: {RecordWords.Seen(seen)}",
            ActionDone done => $"{RecordWords.Heading(scene.Sheet, done.Check, done.Cylinder)}: {done.Action}",
            _ => "",
        };
        return record.History.Withdrawn is null ? text : $"{text}, withdrawn";
    }

    /// <summary>The check and place of a record; null for what is none.</summary>
    public static (string? Check, int? Cylinder)? PlaceOf(EntryBody record) => record switch
    {
        ReadingDecided reading => (reading.Check, reading.Cylinder),
        ObservationMade seen => (seen.Check, seen.Cylinder),
        ActionDone done => (done.Check, done.Cylinder),
        _ => null,
    };

    /// <summary>Where a photo belongs by what it shows: where the record is, or where it was said to be.</summary>
    internal static (string? Check, int? Cylinder)? PlaceOf(InspectionState inspection, PhotoKept photo) =>
        Record(inspection, photo) is { } record ? PlaceOf(record.Says)
        : Note(inspection, photo) is not null ? (photo.Check, photo.Cylinder)
        : null;
}
