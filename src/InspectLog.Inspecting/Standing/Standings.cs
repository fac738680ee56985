using InspectLog.Checks;
using InspectLog.Checks.Judging;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Standing;

/// <summary>Reads from an inspection where its checks stand. Pure.</summary>
public static class Standings
{
    /// <summary>Where each check of the inspection's sheet stands, by its id.</summary>
    public static Dictionary<string, CheckProgress> OfAll(InspectionState inspection, CheckSheet sheet)
    {
        var open = ProposalGroups.OpenIn(inspection).CountBy(group => group[0].Finding.Check).ToDictionary();
        return sheet.Checks.ToDictionary(check => check.Id, check => Of(inspection, sheet, check, open.GetValueOrDefault(check.Id)));
    }

    /// <summary>Where a check of the inspection's sheet stands.</summary>
    public static CheckProgress Of(InspectionState inspection, CheckSheet sheet, Check check) =>
        Of(inspection, sheet, check, ProposalGroups.OpenIn(inspection).Count(group => group[0].Finding.Check == check.Id));

    private static CheckProgress Of(InspectionState inspection, CheckSheet sheet, Check check, int open)
    {
        var made = new Made(
            [.. inspection.Readings.Where(one => one.Body.Check == check.Id)],
            [.. inspection.Observations.Where(one => one.Body.Check == check.Id)],
            [.. inspection.Actions.Where(one => one.Body.Check == check.Id)]);
        var places = Places.Of(sheet, check).Select(cylinder => PlaceOf(made, check, cylinder)).ToList();
        var done = places.Count(place => place.IsDone);
        var outcome = places.Max(place => place.Outcome);

        if (inspection.LeftOut.ContainsKey(check.Id))
        {
            // What is bad at one place does not become less so by leaving out the others.
            var found = outcome < PlaceOutcome.Doubtful ? null : places.Find(place => place.Outcome == outcome);
            return new(CheckStanding.LeftOut, outcome, found is null ? "left out" : $"{found.Word}, rest left out", places, open);
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

    /// <summary>What an observation says by itself.</summary>
    public static PlaceOutcome OutcomeOf(Check check, Recorded<ObservationMade> seen) => OfObservations(check, [seen], []).Outcome;

    private static PlaceView PlaceOf(Made made, Check check, int? cylinder)
    {
        var readings = made.Readings.FindAll(r => r.Body.Cylinder == cylinder);
        var reading = readings.LastOrDefault();
        var seen = made.Observations.FindAll(o => AppliesTo(o.Body.Cylinder, cylinder));
        var done = made.Actions.FindAll(a => AppliesTo(a.Body.Cylinder, cylinder));
        var measured = OfReading(reading?.Body);
        var observed = OfObservations(check, seen, done);
        var (outcome, word) = observed.Outcome > measured.Outcome ? observed : measured;
        return new(cylinder, Places.NameOf(check, cylinder), reading, seen, done, outcome, word)
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
        { Conformity.Decision: var decision } => (decision.Outcome(), decision.Words()),
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
        return ObservationJudge.JudgePlaces(check with { Places = null }, 1, statements)[0].Judgement;
    }

    /// <summary>What was recorded for a check.</summary>
    private sealed record Made(
        List<Recorded<ReadingDecided>> Readings, List<Recorded<ObservationMade>> Observations, List<Recorded<ActionDone>> Actions);

    private static string ToSettle(int open) => $"{open} to settle";
}
