using InspectLog.Checks;
using InspectLog.Checks.Judging;
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

    /// <summary>The readings before the one that counts, as before something was adjusted.</summary>
    public IReadOnlyList<Recorded<ReadingDecided>> EarlierReadings { get; init; } = [];
}

/// <summary>Where a check stands in an inspection.</summary>
/// <param name="Standing">How far it has come.</param>
/// <param name="Outcome">The worst of its places.</param>
/// <param name="Word">The same in a word or two for the list of checks: "4 of 6", "conditional pass".</param>
/// <param name="Places">Its places, in cylinder order.</param>
/// <param name="OpenProposals">Proposals for it that nobody has settled; those settled together count as one.</param>
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
        var open = ProposalGroups.OpenIn(inspection).Count(group => group[0].Finding.Check == check.Id);
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
        var readings = inspection.Readings.FindAll(r => r.Body.Check == check.Id && r.Body.Cylinder == cylinder);
        var reading = readings.LastOrDefault();
        var seen = inspection.Observations.FindAll(o => o.Body.Check == check.Id && AppliesTo(o.Body.Cylinder, cylinder));
        var done = inspection.Actions.FindAll(a => a.Body.Check == check.Id && AppliesTo(a.Body.Cylinder, cylinder));
        var measured = OfReading(reading?.Body);
        var observed = OfObservations(check, seen, done);
        var (outcome, word) = observed.Outcome > measured.Outcome ? observed : measured;
        return new(cylinder, NameOf(check, cylinder), reading, seen, done, outcome, word)
        {
            EarlierReadings = [.. readings.SkipLast(1)],
        };
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

    /// <summary>Judges a place by its observations. A condition the sheet no longer knows is shown, not judged.</summary>
    private static (PlaceOutcome Outcome, string Word) OfObservations(
        Check check, IReadOnlyList<Recorded<ObservationMade>> seen, IReadOnlyList<Recorded<ActionDone>> done)
    {
        var known = seen.Where(one => check.Conditions.Any(condition => condition.Id == one.Body.Condition)).ToList();
        if (known.Count == 0)
        {
            return seen.Count == 0 ? (PlaceOutcome.None, "not done") : (PlaceOutcome.Recorded, "recorded");
        }

        var judgement = Judge(check, known, done);
        var telling = known.FindLast(one => Judge(check, [one], []) == judgement) ?? known[^1];
        var word = telling.Body.Negated ? $"not {telling.Body.Condition}" : telling.Body.Condition;
        return (judgement switch
        {
            Judgement.Good => PlaceOutcome.Good,
            Judgement.Attention => PlaceOutcome.Doubtful,
            Judgement.Bad => PlaceOutcome.Bad,
            _ => PlaceOutcome.Recorded,
        }, word);
    }

    /// <summary>All statements are about one place already, so they are judged as those of a check done once.</summary>
    private static Judgement Judge(
        Check check, IReadOnlyList<Recorded<ObservationMade>> seen, IReadOnlyList<Recorded<ActionDone>> done)
    {
        var statements = seen
            .Select(one => (one.Sequence, Statement: (Statement)new Observed(null, one.Body.Condition, one.Body.Negated)))
            .Concat(done.Select(one => (one.Sequence, Statement: (Statement)new Done(null, one.Body.Action))))
            .OrderBy(one => one.Sequence)
            .Select(one => one.Statement)
            .ToList();
        return ObservationJudge.JudgePlaces(check with { PlaceNoun = null }, 1, statements)[0].Judgement;
    }

    private static string ToSettle(int open) => $"{open} to settle";
}
