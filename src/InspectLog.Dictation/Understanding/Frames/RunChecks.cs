using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Finds the checks that the words around a run of numbers name.</summary>
internal sealed class RunChecks(CheckSheet sheet, Topics topics, NumberLookup numbers, Check? openCheck, Draft draft)
{
    // How many frames back a part may have been named that a value is about.
    private const int MostCarried = 3;

    private readonly Row _row = new(sheet, numbers, draft);
    private readonly NamesAhead _ahead = new(draft, numbers.Tokens);

    /// <summary>The checks that the words name, best first, each with how well they name it.</summary>
    /// <param name="nameless">Whether only the unit tells them.</param>
    public IReadOnlyList<(Check Check, int Score)> Named(out bool nameless)
    {
        nameless = false;
        var frame = draft.Frame;
        var complete = frame is { SubjectBefore: false, SubjectAfter: true, Says: true };
        var own = complete ? [] : frame.Bag.ToList();
        own.AddRange(_ahead.Words(topics.Rank(own).Any(ranked => ranked.Subject > 0)));
        var earlier = draft.Frames.Where(other => (other != frame || complete) && other.Mentioned).Reverse().Take(MostCarried)
            .Select(other => other.Bag.ToList()).ToList();
        var carried = earlier.FirstOrDefault() ?? [];
        var named = topics.Rank(own);
        var before = topics.Rank(carried);
        if (own.Count == 0 && before is [{ Subject: 0 }, _, ..] && earlier.Skip(1).FirstOrDefault() is { } wider)
        {
            // "Plug three. Gap looks big. One point two.": the gap of the plug.
            var both = topics.Rank(carried.Concat(wider)).ToDictionary(ranked => ranked.Check, ranked => ranked.Score);
            before = [.. before.OrderByDescending(ranked => both.GetValueOrDefault(ranked.Check)).Select(ranked => ranked with { Parts = both.GetValueOrDefault(ranked.Check) })];
        }

        if (own.Count == 0 && before.Count > 0 && !before.Any(Measured))
        {
            // "Lead four. Burnt near the boot. Twelve k.": the boot has no value, the lead has.
            named = before;
            before = earlier.Skip(1).Select(topics.Rank).FirstOrDefault(ranked => ranked.Any(Measured)) ?? before;
        }

        if (own.Count > 0 && named.Count == 0 && before.Any(Measured) && !before.Any(one => Measured(one) && topics.Touches(one.Check, own)) && sheet.Checks.Where(check => check.Measurand is not null && topics.Touches(check, own)).ToList() is { Count: > 0 } touched)
        {
            // "Circuit's one point four": not a whole name, but no other part either.
            return [.. touched.Select(check => (check, 0))];
        }

        if (own.Count > 0 && (named.Any(Measured) || !before.Any(Measured)))
        {
            return Narrowed(named, own, carried);
        }

        if (before.Count > 0)
        {
            // "Secondary nine k. Verdigris on towers three and six.": cylinders of the cap, or values of the coil.
            var told = named.Select(one => one.Check).Concat(Told());
            return [.. told.Except(before.Select(one => one.Check)).Select(check => (check, before[0].Score + Topics.PartWeight)), .. Scores(before)];
        }

        if (openCheck is not null)
        {
            return [(openCheck, 0)];
        }

        var byCondition = frame.Person ? [] : draft.Items.SelectMany(item => item.Conditions).Select(term => term.Check).Distinct().ToList();
        nameless = byCondition.Count == 0;
        return [.. (nameless ? ByUnit() : byCondition).Select(check => (check, 0))];
    }

    /// <summary>Whether the check itself was named a little before: the timing, not only the distributor.</summary>
    public bool Spoken(Check check) => draft.Frames.Reverse().Take(MostCarried).Any(frame => topics.Rank(frame.Bag).Any(ranked => ranked.Check == check && ranked.Subject > 0));

    // "Secondary nine k. Two and three are crossed.", "engine starts, misfires on three": a condition beside them tells of
    // cylinders.
    private IEnumerable<Check> Told()
    {
        var ahead = draft.Ahead() is { Role: Role.Verb or Role.Was or Role.Not } or { Condition: true } ? draft.RestOfClause().SelectMany(item => item.Conditions) : [];
        return draft.Frame.Predicates.OfType<ConditionSaid>().SelectMany(said => said.Terms).Concat(ahead)
            .Select(term => term.Check).Where(check => check.PerCylinder && check.Measurand is null).Distinct().Take(1);
    }

    // Where nothing names a check, a unit that was said may; without one the numbers can only be cylinders.
    private IEnumerable<Check> ByUnit()
    {
        var kinds = Enumerable.Range(draft.Item.First, draft.Item.Next - draft.Item.First)
            .SelectMany(at => numbers.Unit(at)?.Units ?? [])
            .Select(unit => unit.Kind)
            .ToHashSet();
        return kinds.Count > 0
            ? sheet.Checks.Where(check => check.Measurand is { } measurand && kinds.Contains(measurand.Kind))
            : sheet.Checks.Where(check => check.PerCylinder && check.Measurand is null).Take(1);
    }

    // "Gap" alone fits two checks; after "plug one sooty" it is the plug gap.
    private IReadOnlyList<(Check Check, int Score)> Narrowed(IReadOnlyList<Ranked> named, List<NamedWord> own, List<NamedWord> carried)
    {
        if (carried.Count == 0 || named.Count < 2 || named[0].Subject > 0)
        {
            return Scores(named);
        }

        var both = topics.Rank(own.Concat(carried)).ToDictionary(ranked => ranked.Check, ranked => ranked.Score);
        return [.. named.Select(ranked => (ranked.Check, both.GetValueOrDefault(ranked.Check)))];
    }

    private static bool Measured(Ranked ranked) => ranked.Check.Measurand is not null;

    private static IReadOnlyList<(Check Check, int Score)> Scores(IReadOnlyList<Ranked> ranked) =>
        [.. ranked.Select(one => (one.Check, one.Score))];

    /// <summary>"Gap on three": where the words fit a check for every cylinder as well as one that is not, it is the first.
    /// </summary>
    /// <param name="candidates">The checks named.</param>
    /// <param name="placeSaid">Whether a cylinder was named, or announced right before the numbers.</param>
    public IReadOnlyList<(Check Check, int Score)> Placed(IReadOnlyList<(Check Check, int Score)> candidates, bool placeSaid)
    {
        var frame = draft.Frame;
        if (candidates.Count < 2 || !(placeSaid || frame.Placed || _row.PlaceAhead() || frame.PluralName || _row.Counts() == sheet.Cylinders))
        {
            return candidates;
        }

        var tied = candidates.Where(candidate => candidate.Score == candidates[0].Score).ToList();
        if (tied.Exists(one => one.Check == openCheck && one.Check.PerCylinder))
        {
            return [.. candidates.Where(one => one.Check == openCheck || one.Score < candidates[0].Score)];
        }

        return tied.Exists(one => one.Check.PerCylinder) && !tied.Exists(one => one.Check == openCheck && !one.Check.PerCylinder)
            ? [.. candidates.Where(one => one.Check.PerCylinder || one.Score < candidates[0].Score)]
            : candidates;
    }
}
