using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>How far a check has come. The words on screen are not done, captured, decided, left out.</summary>
public enum CheckStanding
{
    NotDone,
    Captured,
    Decided,
    LeftOut,
}

/// <summary>What a place of a check says, the worse of its reading and its observations.</summary>
public enum PlaceOutcome
{
    /// <summary>Nothing recorded.</summary>
    None,

    /// <summary>Recorded, but there are no limits or judgement to say good or bad.</summary>
    Recorded,
    Good,
    Doubtful,
    Bad,
}

/// <summary>One place of a check: a cylinder, a lead, or the check itself where it is done once.</summary>
/// <param name="Cylinder">Cylinder number; null for a check done once.</param>
/// <param name="Name">"Lead 4"; the check's short title where it is done once.</param>
/// <param name="Reading">The reading that counts: the last one.</param>
/// <param name="Observations">What was seen.</param>
/// <param name="Actions">What was done.</param>
/// <param name="Outcome">What they say together.</param>
/// <param name="Word">The same in a word or two: "pass", "chafed", "not done".</param>
public sealed record PlaceView(
    int? Cylinder,
    string Name,
    Recorded<ReadingDecided>? Reading,
    IReadOnlyList<Recorded<ObservationMade>> Observations,
    IReadOnlyList<Recorded<ActionDone>> Actions,
    PlaceOutcome Outcome,
    string Word)
{
    public bool IsDone => Outcome != PlaceOutcome.None;
}

/// <summary>Where a check stands in an inspection.</summary>
/// <param name="Standing">How far it has come.</param>
/// <param name="Outcome">The worst of its places.</param>
/// <param name="Word">The same in a word or two for the list of checks: "4 of 6", "conditional pass".</param>
/// <param name="Places">Its places, in cylinder order.</param>
/// <param name="OpenProposals">Proposals for it that nobody has settled.</param>
public sealed record CheckProgress(
    CheckStanding Standing,
    PlaceOutcome Outcome,
    string Word,
    IReadOnlyList<PlaceView> Places,
    int OpenProposals);

/// <summary>Reads from an inspection where its checks stand. Pure.</summary>
public static class Standings
{
    public static CheckProgress Of(InspectionState inspection, CheckSheet sheet, Check check)
    {
        var places = PlacesOf(sheet, check).Select(cylinder => PlaceOf(inspection, check, cylinder)).ToList();
        var done = places.Count(place => place.IsDone);
        var open = inspection.VoiceNotes.SelectMany(note => note.Proposals ?? [])
            .Count(proposal => proposal.State == ProposalState.Open && proposal.Finding.Check == check.Id);
        var outcome = places.Max(place => place.Outcome);

        if (inspection.LeftOut.ContainsKey(check.Id))
        {
            return new(CheckStanding.LeftOut, outcome, "left out", places, open);
        }

        if (done == 0)
        {
            return new(CheckStanding.NotDone, outcome, open == 0 ? "not done" : ToSettle(open), places, open);
        }

        if (done < places.Count)
        {
            return new(CheckStanding.Captured, outcome, $"{done} of {places.Count}", places, open);
        }

        var worst = places.Find(place => place.Outcome == outcome)!;
        return new(CheckStanding.Decided, outcome, open == 0 ? worst.Word : ToSettle(open), places, open);
    }

    /// <summary>The places of a check: each cylinder, or the one place of a check done once.</summary>
    public static IEnumerable<int?> PlacesOf(CheckSheet sheet, Check check) =>
        check.PerCylinder ? Enumerable.Range(1, sheet.Cylinders).Select(cylinder => (int?)cylinder) : [null];

    /// <summary>Name of a place: "Lead 4", or the check's short title where it is done once.</summary>
    public static string NameOf(Check check, int? cylinder) =>
        cylinder is { } number && check.PlaceNoun is { Length: > 0 } noun
            ? $"{char.ToUpperInvariant(noun[0])}{noun[1..]} {number}"
            : check.ShortTitle;

    private static PlaceView PlaceOf(InspectionState inspection, Check check, int? cylinder)
    {
        var reading = inspection.Readings.FindLast(r => r.Body.Check == check.Id && r.Body.Cylinder == cylinder);
        var seen = inspection.Observations.FindAll(o => o.Body.Check == check.Id && AppliesTo(o.Body.Cylinder, cylinder));
        var done = inspection.Actions.FindAll(a => a.Body.Check == check.Id && AppliesTo(a.Body.Cylinder, cylinder));
        var (outcome, word) = Worst([OfReading(reading?.Body), .. seen.Select(o => OfObservation(check, o.Body))]);
        return new(cylinder, NameOf(check, cylinder), reading, seen, done, outcome, word);
    }

    /// <summary>A record without a cylinder speaks of the part as a whole, so of each of its places.</summary>
    private static bool AppliesTo(int? recorded, int? place) => recorded is null || recorded == place;

    private static (PlaceOutcome Outcome, string Word) OfReading(ReadingDecided? reading) => reading switch
    {
        null => (PlaceOutcome.None, "not done"),
        { Conformity: null } => (PlaceOutcome.Recorded, "recorded"),
        { Conformity.Decision: Decision.Pass } => (PlaceOutcome.Good, "pass"),
        { Conformity.Decision: Decision.ConditionalPass } => (PlaceOutcome.Doubtful, "conditional pass"),
        { Conformity.Decision: Decision.ConditionalFail } => (PlaceOutcome.Doubtful, "conditional fail"),
        _ => (PlaceOutcome.Bad, "fail"),
    };

    private static (PlaceOutcome Outcome, string Word) OfObservation(Check check, ObservationMade seen)
    {
        var word = seen.Negated ? $"not {seen.Condition}" : seen.Condition;
        var meaning = check.Conditions.FirstOrDefault(condition => condition.Id == seen.Condition)?.Meaning;
        var outcome = (meaning, seen.Negated) switch
        {
            (ConditionMeaning.Good, false) => PlaceOutcome.Good,
            (ConditionMeaning.Good, true) => PlaceOutcome.Bad,
            (ConditionMeaning.Attention, false) => PlaceOutcome.Doubtful,
            (ConditionMeaning.Bad, false) => PlaceOutcome.Bad,
            _ => PlaceOutcome.Recorded,
        };
        return (outcome, word);
    }

    private static (PlaceOutcome Outcome, string Word) Worst(IEnumerable<(PlaceOutcome Outcome, string Word)> all) =>
        all.MaxBy(one => one.Outcome);

    private static string ToSettle(int open) => $"{open} to settle";
}
