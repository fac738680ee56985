using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>A run of numbers, read.</summary>
/// <param name="Check">The check its values belong to; null where no check fits.</param>
/// <param name="Roles">What its numbers stand for.</param>
/// <param name="Nameless">Whether only the unit tells the check.</param>
internal readonly record struct Run(Check? Check, IReadOnlyList<NumberRole> Roles, bool Nameless);

/// <summary>Reads a run of numbers for the check that the words around it name.</summary>
internal sealed class RunReader(
    CheckSheet sheet, Topics topics, NumberLookup numbers, Check? openCheck, Draft draft)
{
    // How much a better fitting name counts against a cheaper reading of the numbers.
    private const double NameWeight = 0.15;

    // More checks than these are never named by the same few words.
    private const int MostCandidates = 5;

    // How many frames back a part may have been named that a value is about.
    private const int MostCarried = 3;

    // Two checks whose readings cost about the same cannot be told apart.
    private const double Undecided = 1.1;

    private readonly IReadOnlyList<Token> _tokens = numbers.Tokens;
    private readonly Row _row = new(sheet, numbers, draft);

    private readonly record struct Reading(Check Check, int Score, IReadOnlyList<NumberRole> Roles, double Cost);

    /// <summary>Whether the run is the number in "all six".</summary>
    public bool CountsAll()
    {
        var run = draft.Item;
        return draft.Before?.Role is Role.All or Role.Any or Role.Rest or Role.Both or Role.Neither or Role.Filler
            && draft.Frame.Set != PlaceSet.None && draft.Frame.Places.Count == 0
            && numbers.Numbers(run.First) is [{ Whole: true } number, ..] && number.Next == run.Next
            && (number.Value == sheet.Cylinders || draft.Before.Role is Role.All or Role.Rest && number.Value > 1);
    }

    /// <summary>What the numbers of the current item stand for.</summary>
    public Run Read()
    {
        var run = draft.Item;
        var context = Context();
        var named = Candidates(out var nameless);
        var candidates = Placed(named, context);
        var dropped = candidates.Count < named.Count ? named.First(one => !candidates.Contains(one)).Check : null;
        var best = candidates.Count == 0 ? 0 : candidates.Max(candidate => candidate.Score);
        var quantity = best >= Topics.SubjectWeight && candidates.Where(candidate => candidate.Score == best).All(candidate => candidate.Check.Measurand is not null);
        context = context with { Listing = context.Listing || _row.Lists(best), ValueDue = quantity && !draft.Frame.Says && draft.Ahead(item => item.Role is not (Role.Filler or Role.Comma)) is null };
        var readings = candidates.Take(MostCandidates)
            .Select(candidate => (candidate, Read: NumberRoles.Of(numbers, run.First, run.Next, candidate.Check, context)))
            .Select(read => new Reading(
                read.candidate.Check, read.candidate.Score, read.Read.Roles, read.Read.Cost + (best - read.candidate.Score) * NameWeight))
            .OrderBy(reading => reading.Cost)
            .ThenBy(reading => reading.Check == openCheck ? 0 : 1)
            .ToList();
        return readings.Count == 0
            ? new(null, [], nameless)
            : new(readings[0].Check, Joined(Sized(readings[0], Doubted(readings, dropped))), nameless);
    }

    // "The distributor" and "the strobe" tell of an angle only where degrees are said: they have a price and an age too.
    private IReadOnlyList<NumberRole> Sized(Reading best, IReadOnlyList<NumberRole> roles) =>
        best.Check.Measurand?.Kind == QuantityKind.Angle && best.Check != openCheck && best.Score < Topics.SubjectWeight
            ? [.. roles.Where(role => role is not ValueNumber { UnitSaid: false })]
            : roles;

    private RunContext Context()
    {
        var frame = draft.Frame;
        var on = draft.Before is { Role: Role.Preposition } preposition && _tokens[preposition.First].Stem == "on";
        var corrected = draft.Repairing && frame is { Placed: true, Says: false };
        var known = frame.Placed && !(frame is { Says: true, SubjectBefore: true } && draft.Separated)
            || !frame.HasSubject && draft.Frames.Count > 1 && draft.Frames[^2] is { Placed: true } last && last.Sentence == draft.Sentence;
        var listing = frame.Says && frame.Predicates.TrueForAll(predicate => predicate is ValueSaid)
            && frame.Places.Sum(place => place.Cylinders.Count) > frame.Predicates.Count;
        var marked = draft.PlaceMarked && !(draft.Between && frame.Set == PlaceSet.All);
        return new(marked || on || draft.Excepting || corrected, known && !corrected, sheet.Cylinders, draft.Between, listing, ValueDue: false);
    }

    // "Gap on three": where the words fit a check for every cylinder as well as one that is not, it is the first.
    private IReadOnlyList<(Check Check, int Score)> Placed(IReadOnlyList<(Check Check, int Score)> candidates, RunContext context)
    {
        var frame = draft.Frame;
        if (candidates.Count < 2 || !(context.PlaceNounBefore || context.PlaceKnown || frame.Placed || _row.PlaceAhead() || frame.PluralName || _row.Counts() == sheet.Cylinders))
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

    // Where a second check explains the numbers about as well, a person has to choose.
    private IReadOnlyList<NumberRole> Doubted(List<Reading> readings, Check? dropped)
    {
        var best = readings[0];
        var rival = readings.Count < 2 || readings[1].Cost - best.Cost > Undecided
            || best.Score - readings[1].Score > 2 * Topics.PartWeight
            || !readings[1].Roles.Any(role => role is ValueNumber) ? dropped : readings[1].Check;
        if (rival is null || best.Check == openCheck)
        {
            return best.Roles;
        }

        var doubt = $"this may be {best.Check.ShortTitle} or {rival.ShortTitle}";
        return [.. best.Roles.Select(role => role is ValueNumber value ? value with { Doubt = Doubts.Join(value.Doubt, doubt) } : role)];
    }

    // Cylinders in a row are one place: "two and three".
    private static List<NumberRole> Joined(IReadOnlyList<NumberRole> roles)
    {
        var joined = new List<NumberRole>();
        foreach (var role in roles)
        {
            if (role is PlaceNumbers more && joined is [.., PlaceNumbers last])
            {
                joined[^1] = new PlaceNumbers(
                    last.First, more.Next, [.. last.Cylinders, .. more.Cylinders], Doubts.Join(last.Doubt, more.Doubt));
            }
            else
            {
                joined.Add(role);
            }
        }

        return joined;
    }

    private IReadOnlyList<(Check Check, int Score)> Candidates(out bool nameless)
    {
        nameless = false;
        var frame = draft.Frame;
        var complete = frame is { SubjectBefore: false, SubjectAfter: true, Says: true };
        var own = complete ? [] : frame.Bag.ToList();
        own.AddRange(NamedAhead(topics.Rank(own).Any(ranked => ranked.Subject > 0)));
        var earlier = draft.Frames.Where(other => (other != frame || complete) && other.Mentioned).Reverse().Take(MostCarried)
            .Select(other => other.Bag.ToList()).ToList();
        var carried = earlier.FirstOrDefault() ?? [];
        var named = topics.Rank(own);
        var before = topics.Rank(carried);
        if (own.Count == 0 && before.Count > 0 && !before.Any(Measured))
        {
            // "Lead four. Burnt near the boot. Twelve k.": the boot has no value, the lead has.
            before = earlier.Skip(1).Select(topics.Rank).FirstOrDefault(ranked => ranked.Any(Measured)) ?? before;
        }

        if (own.Count > 0 && (named.Any(Measured) || !before.Any(Measured)))
        {
            return Narrowed(named, own, carried);
        }

        if (before.Count > 0)
        {
            return Scores(before);
        }

        if (openCheck is not null)
        {
            return [(openCheck, 0)];
        }

        var byCondition = frame.Person ? [] : draft.Items.SelectMany(item => item.Conditions).Select(term => term.Check).Distinct().ToList();
        nameless = byCondition.Count == 0;
        return [.. (nameless ? ByUnit() : byCondition).Select(check => (check, 0))];
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

    // The names that follow the numbers before something else is said: "twelve volts at the ballast feed", "five k,
    // secondary".
    private IEnumerable<NamedWord> NamedAhead(bool mentioned)
    {
        for (var i = draft.At + 1; i < draft.Items.Count; i++)
        {
            var item = draft.Items[i];
            if (item.Role == Role.Comma && !mentioned && OnlyNames(i + 1))
            {
                mentioned = true;
                continue;
            }

            var place = item.Number && draft.Items[i - 1] is { Role: Role.PlaceMark or Role.Preposition } or { Subject: true };
            if (item.Role is Role.Comma or Role.But || item.Role == Role.And && !JoinsNames(i) || item.Role is Role.Verb or Role.Was && !item.Subject
                || item.Number && !place || mentioned && item.Role == Role.Preposition)
            {
                yield break;
            }

            foreach (var word in item.Subject ? Subjects.NamedWords(_tokens, item) : [])
            {
                yield return word;
            }
        }
    }

    // "The ballast plus coil", "the cap and rotor".
    private bool JoinsNames(int and) =>
        draft.Items[and - 1].Subject && draft.Items.Skip(and + 1).FirstOrDefault(item => item.Role != Role.Filler) is { Subject: true };

    // Whether nothing but a name follows, so that it belongs to what stands before the comma.
    private bool OnlyNames(int from)
    {
        var rest = draft.Items.Skip(from).TakeWhile(item => item.Role is not (Role.Comma or Role.But))
            .Where(item => item.Role != Role.Filler).ToList();
        return rest.Any(item => item.Subject) && rest.All(item => item.Subject && !item.Condition
            || item.Number && item.Next == item.First + 1 && item == rest[^1]
            || item.Role is Role.Preposition or Role.PlaceMark);
    }
}
