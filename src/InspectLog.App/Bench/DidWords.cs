using InspectLog.App.Bench.Photos;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>What a press did, in a short sentence for the line that says so. Pure.</summary>
public static class DidWords
{
    /// <summary>What was recorded, and that it is marked as later where the inspection is closed.</summary>
    /// <param name="recorded">The entries, in order; none where all was recorded before.</param>
    /// <param name="scene">The inspection after them.</param>
    public static string Recorded(IReadOnlyList<EntryBody> recorded, BenchScene scene)
    {
        // A record comes with the loose ends that follow from it; what was pressed is said first.
        var ends = recorded.Where(body => body is LooseEndOpened or LooseEndTied).ToList();
        var anew = recorded.Skip(1).OfType<ReadingDecided>().Where(reading => reading.Amends is not null).ToList<EntryBody>();
        var first = recorded.Except(ends).Except(anew).ToList();
        return recorded.Count == 0 ? "It was recorded already."
            : AreSaidAlready(recorded, scene) ? ""
            : string.Join(" ", new[] { first, ends }.Where(some => some.Count > 0).Select(some => Sentence(some, scene))
                .Concat(anew.OfType<ReadingDecided>().Select(reading => Anew(reading, scene)))) + Later(recorded, scene);
    }

    /// <summary>Why nothing was recorded; empty where it stands beside the one field that is wrong, which has the focus.</summary>
    public static string Refused(RefusedForm? form, NumberQuestion? question) =>
        IsSaidAtTheField(form) ? ""
        : question is { Asked.Question: var asked } ? $"Not recorded yet. {asked}"
        : $"Not recorded. {form?.Errors.Values.FirstOrDefault()}".TrimEnd();

    private static bool IsSaidAtTheField(RefusedForm? form) => form is { Errors.Count: 1 }
        && (form.Name switch { "reading" => ReadingFields.SaidAtTheField, "bracket" => GaugeFields.SaidAtTheField, _ => [] }).Contains(form.Errors.Keys.Single());

    // What the photos kept last were filed under stands above the line, with the way to change it.
    private static bool AreSaidAlready(IReadOnlyList<EntryBody> recorded, BenchScene scene) =>
        !scene.Inspection.IsClosed
        && KeptPhotos.Of(scene) is { } kept
        && recorded.All(body => body is PhotoKept photo && (photo.Amends is not { } first || kept.Photos.Any(one => one.Sequence == first)));

    // What stands in the report is a choice of today, and carries no mark.
    private static string Later(IReadOnlyList<EntryBody> recorded, BenchScene scene) =>
        scene.Inspection.IsClosed && !recorded.All(body => body is ReportChoice) ? " It is marked as done after closing." : "";

    private static string Sentence(IReadOnlyList<EntryBody> some, BenchScene scene) =>
        some.Count == 1 ? $"{Of(some[0], scene)}."
        : some is [NoteWritten { Amends: null }, FindingsProposed { Findings.Count: var found }] ? $"Note kept{ToSettle(found)}."
        : some is [WordsCorrected or NoteWritten, FindingsProposed { Findings.Count: var anew }] ? $"{Of(some[0], scene)}{ToSettle(anew)}."
        : some.All(IsFinding) ? $"{some.Count} findings confirmed."
        : some.All(body => body is FindingDropped) ? $"{some.Count} findings dropped."
        : some.All(body => body is FindingReopened) ? $"{some.Count} findings wait to be settled again."
        : some.All(body => body is PhotoKept) ? $"{some.Count} photos kept."
        : some.All(body => body is ObservationMade or ActionDone) ? $"Recorded at {some.Count} places: {What(some[0])}."
        : $"{Of(some[0], scene)}, and {some.Count - 1} more.";

    // What was recorded decides another reading as well: the battery the supply.
    private static string Anew(ReadingDecided reading, BenchScene scene) =>
        $"Decided anew: {Heading(scene, reading.Check, reading.Cylinder)}{(reading.Conformity is { Decision: var decision } ? $", {decision.Words()}" : "")}.";

    private static string ToSettle(int found) => found switch
    {
        0 => "",
        1 => ", with 1 finding to settle",
        _ => $", with {found} findings to settle",
    };

    private static bool IsFinding(EntryBody body) => body is ReadingDecided { From.Count: > 0 }
        or ObservationMade { From: not null } or ActionDone { From: not null };

    private static string Of(EntryBody body, BenchScene scene) => body switch
    {
        ReadingDecided reading => $"{Verb(body)}: {Heading(scene, reading.Check, reading.Cylinder)}",
        ObservationMade seen => $"{Verb(body)}: {Heading(scene, seen.Check, seen.Cylinder)}, {What(seen)}",
        ActionDone done => $"{Verb(body)}: {Heading(scene, done.Check, done.Cylinder)}, {What(done)}",
        CheckLeftOut left => $"Left out: {scene.Sheet.Find(left.Check)?.ShortTitle}",
        LooseEndOpened end => $"Loose end kept in mind: {end.Text}",
        LooseEndTied tied => $"Done: {Tie(scene, tied.LooseEnd)}",
        LooseEndWaived waived => $"It stays as it is: {End(scene, waived.LooseEnd)}",
        FindingDropped => "Dropped",
        FindingReopened => "It waits to be settled again",
        EntryWithdrawn { Entry: var tie } when scene.Inspection.LooseEnds.Find(end => end.WithdrawnTies.Any(one => one.Tie == tie)) is { } end =>
            $"Open again: {end.What.Text}, since {Times.Clock(end.Opened)}",
        EntryWithdrawn => "Withdrawn",
        WordsCorrected => "Words put right",
        EntryRestored => "It counts again",
        ReportChoice choice => choice.Shown ? "It stands in the report again" : "Left out of the report",
        NoteWritten { Amends: not null } => "Note put right",
        NoteWritten => "Note kept",
        PhotoMarked { Marks.Count: 0 } => "The photo has no marks now",
        PhotoMarked => "Photo marked",
        PhotoKept { Amends: not null } => "Photo put right",
        PhotoKept { Check: { } check } photo => $"Photo kept: {Heading(scene, check, photo.Cylinder)}",
        PhotoKept => "Photo kept",
        TranscriptCancelled => "The voice note is kept and not read",
        TranscriptAsked => "The voice note will be read",
        _ => "Recorded",
    };

    private static string Verb(EntryBody body) =>
        body is AmendableBody { Amends: not null } ? "Put right" : IsFinding(body) ? "Confirmed" : body is ReadingDecided ? "Reading kept" : "Recorded";

    private static string What(EntryBody body) =>
        body is ObservationMade seen ? RecordWords.Seen(seen) : body is ActionDone done ? done.Action : "";

    private static string Heading(BenchScene scene, string check, int? cylinder) =>
        RecordWords.Heading(scene.Sheet, check, cylinder);

    // What was done, not what it was done about: "ignition switched on" would say the contrary.
    private static string? Tie(BenchScene scene, long sequence) =>
        scene.Inspection.LooseEnds.Find(one => one.Sequence == sequence)?.What.Tie is { Length: > 0 } tie ? char.ToLowerInvariant(tie[0]) + tie[1..] : End(scene, sequence);

    private static string? End(BenchScene scene, long sequence) =>
        scene.Inspection.LooseEnds.Find(one => one.Sequence == sequence)?.What.Text;
}
