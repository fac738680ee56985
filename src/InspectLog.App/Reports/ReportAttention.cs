using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Reports;

/// <summary>What is to be seen to, the worst first, whichever section of the report tells it in full. Pure.</summary>
public static class ReportAttention
{
    /// <summary>What an inspection leaves to be looked at; empty where nothing is.</summary>
    public static IReadOnlyList<AttentionLine> Of(BenchScene scene, WorkshopState workshop, IReadOnlyList<ReportCheck> checks)
    {
        var inspection = scene.Inspection;
        return
        [
            .. checks.SelectMany(one => Places(one, PlaceOutcome.Bad)),
            .. Later(scene, PlaceOutcome.Bad),
            .. checks.SelectMany(one => Places(one, PlaceOutcome.Doubtful)),
            .. Later(scene, PlaceOutcome.Doubtful),
            .. Unconfirmed(scene, workshop).GroupBy(one => one).Select(said => new AttentionLine(
                said.Key.Word, PlaceOutcome.Doubtful, said.Count() == 1 ? said.Key.Text : $"{said.Key.Text} ({said.Count()} times)", said.Key.Check?.Id)),
            .. inspection.OpenLooseEnds.Select(end => new AttentionLine("Still undone", PlaceOutcome.Doubtful, end.What.Text) { IsUndone = true }),
            .. inspection.LooseEnds.Where(end => end.WaivedBecause is not null && end.Tied is null)
                .Select(end => new AttentionLine("Left as it is", PlaceOutcome.Doubtful, $"{end.What.Text}: {end.WaivedBecause}")),
            .. checks.Where(one => one.Reason is null && IsMissing(one, inspection)).Select(NotFinished),
            .. Unread(inspection),
        ];
    }

    /// <summary>What was heard or written of checks and is neither confirmed nor dropped. A note that is left out of the
    /// report is not quoted, and what says again what is recorded already is nothing to settle.</summary>
    public static IReadOnlyList<UnconfirmedFinding> Unconfirmed(BenchScene scene, WorkshopState workshop) =>
    [
        .. from note in scene.Inspection.WordedNotes
           from card in ProposalCards.Of(note, scene, workshop)
           where card.State == ProposalState.Open && !IsRecordedAlready(card, scene.Inspection)
           select new UnconfirmedFinding(
               card.Check,
               note is TypedNote ? "Written but not confirmed" : "Heard but not confirmed",
               note.History.IsLeftOutOfReport ? "a finding in a note that is left out of this report" : Words(card)),
    ];

    private static bool IsRecordedAlready(ProposalCard card, InspectionState inspection)
    {
        var said = card.First.Finding;
        return said switch
        {
            { Value: { } value } => card.Proposals.Count == 1 && LastReading(inspection, said) is DisplayedReading { Values: [var read] } && IsSame(value, read),
            { Goes: { } goes, Stops: { } stops } => LastReading(inspection, said) is Bracket bracket && IsSame(goes, bracket.Goes) && IsSame(stops, bracket.Stops),
            _ => false,
        };
    }

    private static Reading? LastReading(InspectionState inspection, ProposedFinding said) =>
        inspection.Readings.FindLast(one => one.Body.Check == said.Check && one.Body.Cylinder == said.Cylinder)?.Body.Reading;

    // What was typed and what was said of one value part in the last digits of a double, once units are converted.
    private static bool IsSame(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Abs(other);

    private static string Words(ProposalCard card)
    {
        var said = card.First.Finding.Words is { Length: > 0 } words ? $", said as “{words}”" : "";
        return $"{card.Title}: {card.Text}{said}{(card.Doubt is { } doubt ? $" ({doubt})" : "")}";
    }

    private static IEnumerable<AttentionLine> Places(ReportCheck one, PlaceOutcome outcome) => one.Progress.Places
        .Where(place => place.Outcome == outcome)
        .GroupBy(place => (Word: Word(place), Text: Short(one.Check, place)))
        .Select(group => new AttentionLine(
            group.Key.Word,
            outcome,
            $"{PlaceNames.Under(one.Check, [.. group])}: {group.Key.Text}{(one.Reason is { } reason ? $"; the check was left out: {reason}" : "")}",
            one.Check.Id));

    // Doubt is a word for what was heard; a value near its limit was heard well.
    private static string Word(PlaceView place) =>
        place.Outcome == PlaceOutcome.Bad ? "Failed" : place.IsConditional ? "Too close to the limit to be sure" : "Needs a look";

    private static string Short(Check check, PlaceView place) =>
        place.Reading is { } reading && RecordWords.OutcomeOf(reading.Body) == place.Outcome
            ? $"{RecordWords.Value(reading.Body, check)}, {place.Word}"
            : place.Word;

    private static IEnumerable<AttentionLine> Later(BenchScene scene, PlaceOutcome outcome)
    {
        foreach (var one in scene.Inspection.Addenda)
        {
            if (one is Recorded<ReadingDecided> { Body: var read } && RecordWords.OutcomeOf(read) == outcome && scene.Sheet.Find(read.Check) is { } measured)
            {
                yield return new("Read later", outcome, $"{RecordWords.Heading(scene.Sheet, read.Check, read.Cylinder)}: {RecordWords.Sentence(read, measured)}");
            }
            else if (one is Recorded<ObservationMade> { Body: var seen } sight && scene.Sheet.Find(seen.Check) is { } looked && Standings.OutcomeOf(looked, sight) == outcome)
            {
                yield return new("Confirmed later", outcome, $"{RecordWords.Heading(scene.Sheet, seen.Check, seen.Cylinder)}: {RecordWords.Seen(seen)}");
            }
        }
    }

    // What an open inspection has not begun is told once, with all that it waits for.
    private static bool IsMissing(ReportCheck one, InspectionState inspection) =>
        one.Missing.Count > 0 && (inspection.IsClosed || one.Missing.Count < one.Progress.Places.Count);

    private static AttentionLine NotFinished(ReportCheck one) =>
        new("Not finished", PlaceOutcome.None, $"{PlaceNames.Under(one.Check, one.Missing)}: nothing is recorded", one.Check.Id);

    private static IEnumerable<AttentionLine> Unread(InspectionState inspection)
    {
        var unread = inspection.VoiceNotes.Count(note => note.Transcript is null);
        return unread == 0 ? [] : [new("Not read", PlaceOutcome.None, $"{Phrases.Count(unread, "voice note")}, kept as {(unread == 1 ? "a recording" : "recordings")}")];
    }
}

/// <summary>Something heard or written that nobody confirmed or dropped.</summary>
/// <param name="Check">The check it is about; null when the sheet does not have it.</param>
/// <param name="Word">"Heard but not confirmed", "Written but not confirmed".</param>
/// <param name="Text">What it is.</param>
public sealed record UnconfirmedFinding(Check? Check, string Word, string Text);
