using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Decides which numbers of a run are cylinders and which are values, for one check: of all the ways to read
/// the run, the one that costs least. So "lead four eight k" is lead 4 with 8 kΩ, and "supply twelve two" is
/// 12.2 V.</summary>
internal sealed class NumberRoles
{
    // Cost of ending with a cylinder where a value has to come: "plug gap on plug six, 1".
    private const double NoValue = 2;

    // Cost of naming a cylinder again in one list of them: "one to six, five, five, six" goes on with values.
    private const double NamedTwice = 3;

    private readonly RunSpan _span;
    private readonly RunSteps _steps;
    private readonly Check _check;
    private readonly RunContext _context;

    private NumberRoles(RunSpan span, Check check, RunContext context)
    {
        (_span, _check, _context) = (span, check, context);
        _steps = new(span, check, context);
    }

    /// <summary>The likeliest roles of the numbers of a run, and what that reading costs.</summary>
    public static (IReadOnlyList<NumberRole> Roles, double Cost) Of(
        NumberLookup numbers, int first, int next, Check check, RunContext context) =>
        new NumberRoles(new(numbers, first, next), check, context).Cheapest();

    // Cost of a second cylinder right after the first, where the part was named in the singular.
    private const double SecondOfOne = 1;

    private enum Before
    {
        Nothing,
        Place,
        Value,
        PlaceAndSeparator,
        ValueAndSeparator,
    }

    private sealed record Path(double Cost, NumberRole? Role, Path? Previous, Before Before, bool PlaceKnown);

    private const int States = 10;

    private (IReadOnlyList<NumberRole>, double) Cheapest()
    {
        var best = new Path?[_span.Next - _span.First + 1, States];
        best[0, State(Before.Nothing, _context.PlaceKnown)] = new(0, null, null, Before.Nothing, _context.PlaceKnown);
        for (var at = _span.First; at < _span.Next; at++)
        {
            var steps = _steps.From(at);
            for (var state = 0; state < States; state++)
            {
                if (best[at - _span.First, state] is { } path)
                {
                    Extend(best, path, at, steps);
                }
            }
        }

        return Trace(Enumerable.Range(0, States).Select(state => best[_span.Next - _span.First, state]).OfType<Path>()
            .MinBy(path => path.Cost + (_context.ValueDue && path.Before is not (Before.Value or Before.ValueAndSeparator) ? NoValue : 0))!);
    }

    private static (IReadOnlyList<NumberRole>, double) Trace(Path end)
    {
        var roles = new List<NumberRole>();
        for (var path = end; path is not null; path = path.Previous)
        {
            if (path.Role is not null)
            {
                roles.Add(path.Role);
            }
        }

        roles.Reverse();
        return (roles, end.Cost);
    }

    private static int State(Before before, bool placeKnown) => (int)before * 2 + (placeKnown ? 1 : 0);

    private void Extend(Path?[,] best, Path path, int at, List<RunStep> steps)
    {
        foreach (var step in steps)
        {
            var cost = path.Cost + step.Cost + Following(path, step, at);
            var before = After(path.Before, step);
            var known = path.PlaceKnown || step.Role is PlaceNumbers;
            ref var slot = ref best[step.Next - _span.First, State(before, known)];
            if (slot is null || cost < slot.Cost)
            {
                slot = new(cost, step.Role, path, before, known);
            }
        }
    }

    private static Before After(Before before, RunStep step) => step switch
    {
        { Role: PlaceNumbers } => Before.Place,
        { Role: ValueNumber } => Before.Value,
        { Cost: > 0 } => before,
        _ => before switch
        {
            Before.Place => Before.PlaceAndSeparator,
            Before.Value => Before.ValueAndSeparator,
            _ => before,
        },
    };

    // What a step costs on top of itself, given what came before it.
    private double Following(Path path, RunStep step, int at) => step.Role switch
    {
        PlaceNumbers when at == _span.First && _context.PlaceNounBefore => 0,
        PlaceNumbers when _context.Listing => 4,
        PlaceNumbers place => (IsNamed(path, place) ? NamedTwice : 0) + path.Before switch
        {
            Before.PlaceAndSeparator => 0.1,
            Before.Place => IsOfOne() ? SecondOfOne : 0.5,
            Before.Value => 0.8,
            Before.ValueAndSeparator => 0.5,
            _ => path.PlaceKnown ? 2 : 0.6,
        },
        ValueNumber => (path.Before == Before.Value ? 1 : 0)
            + (at == _span.First && _context.PlaceNounBefore && _check.PerCylinder ? 1.5 : 0)
            + (_check.PerCylinder && !path.PlaceKnown ? 1 : 0),
        _ => 0,
    };

    // "Lead three six": one lead, and its value.
    private bool IsOfOne() => _context.PlaceNounBefore && !_context.Marked && _span.First > 0
        && _span.Tokens[_span.First - 1] is { Kind: TokenKind.Word, Plural: false, Stem: not ("number" or "cylinder" or "on") };

    // Whether a place was named before: in the same list, or as one of several that take values one after the other.
    private bool IsNamed(Path path, PlaceNumbers place)
    {
        var listed = 0;
        var valued = false;
        for (var named = _check.Measurand is null ? null : path; named is not null; named = named.Previous)
        {
            valued |= named.Role is ValueNumber;
            if (named.Role is PlaceNumbers before)
            {
                listed += before.Cylinders.Count;
                if (before.Cylinders.Intersect(place.Cylinders).Any() && (!valued || listed > 1))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
