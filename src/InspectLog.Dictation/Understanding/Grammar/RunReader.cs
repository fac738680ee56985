using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Grammar;

/// <summary>Reads a run of numbers for the check that the words around it name.</summary>
internal sealed class RunReader(
    CheckSheet sheet, Topics topics, IReadOnlyList<Token> tokens, Check? openCheck)
{
    // How much a cheaper reading of the numbers counts against a better fitting name.
    private const double NameWeight = 0.15;

    // Two checks whose readings cost about the same cannot be told apart.
    private const double Undecided = 0.9;

    private readonly NumberGrammar _numbers = new(tokens);

    /// <summary>Whether a run is the number in "all six".</summary>
    public bool CountsAll(Frame frame, Item run, Item? before) =>
        before?.Role is Role.All or Role.Any or Role.Rest or Role.Both or Role.Neither or Role.Filler
        && frame.Set != PlaceSet.None && frame.Places.Count == 0
        && _numbers.At(run.First) is [{ Whole: true } number, ..] && number.Next == run.Next
        && (number.Value == sheet.Cylinders || before.Role != Role.Filler);

    /// <summary>The roles of the numbers of a run.</summary>
    /// <param name="frames">The frames so far.</param>
    /// <param name="frame">The frame the run stands in.</param>
    /// <param name="items">The items of the sentence.</param>
    /// <param name="at">The run among them.</param>
    /// <param name="context">What is known of places.</param>
    /// <param name="check">The check the values belong to; null where none is named.</param>
    public IReadOnlyList<NumberRole> Read(
        List<Frame> frames, Frame frame, IReadOnlyList<Item> items, int at, RunContext context, out Check? check)
    {
        var run = items[at];
        context = context with { Cylinders = sheet.Cylinders };
        var candidates = Candidates(frames, frame, items, at);
        if (candidates.Count == 0)
        {
            check = null;
            return [];
        }

        var best = candidates.Max(candidate => candidate.Score);
        var readings = candidates
            .Select(candidate => (candidate.Check, Reading: NumberRoles.Of(tokens, run.First, run.Next, candidate.Check, context), candidate.Score))
            .Select(read => (read.Check, read.Reading.Roles, Cost: read.Reading.Cost + (best - read.Score) * NameWeight))
            .OrderBy(read => read.Cost)
            .ThenBy(read => read.Check == openCheck ? 0 : 1)
            .ToList();
        check = readings[0].Check;
        return Joined(Doubted(readings[0], readings.Skip(1).FirstOrDefault()));
    }

    // Cylinders in a row are one place: "two and three".
    private static List<NumberRole> Joined(IReadOnlyList<NumberRole> roles)
    {
        var joined = new List<NumberRole>();
        foreach (var role in roles)
        {
            if (role is PlaceNumbers more && joined is [.., PlaceNumbers last])
            {
                joined[^1] = new PlaceNumbers(last.First, more.Next, [.. last.Cylinders, .. more.Cylinders], Doubts.Join(last.Doubt, more.Doubt));
            }
            else
            {
                joined.Add(role);
            }
        }

        return joined;
    }

    private IReadOnlyList<NumberRole> Doubted(
        (Check Check, IReadOnlyList<NumberRole> Roles, double Cost) best,
        (Check Check, IReadOnlyList<NumberRole> Roles, double Cost) second)
    {
        if (second.Check is null || best.Check == openCheck || second.Cost - best.Cost > Undecided
            || !second.Roles.Any(role => role is ValueNumber))
        {
            return best.Roles;
        }

        var doubt = $"this may be {best.Check.ShortTitle} or {second.Check.ShortTitle}";
        return [.. best.Roles.Select(role => role is ValueNumber value ? value with { Doubt = Doubts.Join(value.Doubt, doubt) } : role)];
    }

    private IReadOnlyList<(Check Check, int Score)> Candidates(List<Frame> frames, Frame frame, IReadOnlyList<Item> items, int at)
    {
        var complete = frame is { SubjectBefore: false, SubjectAfter: true } && frame.Predicates.Count > 0;
        var own = complete ? [] : frame.Bag.ToList();
        own.AddRange(Ahead(items, at, own.Count > 0));
        var carried = frames.LastOrDefault(earlier => (earlier != frame || complete) && earlier.Mentioned)?.Bag.ToList() ?? [];
        var named = topics.Rank(own);
        if (named.Count > 0)
        {
            return named.Count > 1 && carried.Count > 0 ? Narrowed(named, own, carried) : named;
        }

        if (topics.Rank(carried) is { Count: > 0 } before)
        {
            return before;
        }

        if (openCheck is not null)
        {
            return [(openCheck, 0)];
        }

        var byCondition = items.SelectMany(item => item.Conditions).Select(term => term.Check).Distinct().ToList();
        return byCondition.Count > 0
            ? [.. byCondition.Select(check => (check, 0))]
            : [.. sheet.Checks.Where(check => check.Measurand is not null).Select(check => (check, 0))];
    }

    // "Gap" alone fits two checks; after "plug one sooty" it is the plug gap.
    private IReadOnlyList<(Check Check, int Score)> Narrowed(
        IReadOnlyList<(Check Check, int Score)> named, List<string> own, List<string> carried)
    {
        var both = topics.Rank(own.Concat(carried)).ToDictionary(ranked => ranked.Check, ranked => ranked.Score);
        return [.. named.Select(ranked => (ranked.Check, both.GetValueOrDefault(ranked.Check)))];
    }

    private IEnumerable<string> Ahead(IReadOnlyList<Item> items, int at, bool mentioned)
    {
        for (var i = at + 1; i < items.Count; i++)
        {
            var item = items[i];
            if (item.Role is Role.Comma or Role.And or Role.But or Role.Verb or Role.Was && !item.Subject
                || item.Number || mentioned && item.Role == Role.Preposition)
            {
                yield break;
            }

            if (item.Subject)
            {
                for (var token = item.First; token < item.Next; token++)
                {
                    yield return tokens[token].Stem;
                }
            }
        }
    }
}
