using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Words;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>What is known around a run of numbers.</summary>
/// <param name="PlaceNounBefore">Whether a word that announces a cylinder stands right before the run.</param>
/// <param name="PlaceKnown">Whether a cylinder was already named.</param>
/// <param name="Cylinders">How many cylinders there are.</param>
/// <param name="Between">Whether "between" or "from" stands before the run.</param>
/// <param name="Listing">Whether the cylinders of a list still wait for their values.</param>
/// <param name="ValueDue">Whether a value has to be among the numbers, since a quantity was named and nothing follows.
/// </param>
internal readonly record struct RunContext(bool PlaceNounBefore, bool PlaceKnown, int Cylinders, bool Between, bool Listing, bool ValueDue);

/// <summary>Decides which numbers of a run are cylinders and which are values, for one check: of all the ways to read
/// the run, the one that costs least. So "lead four eight k" is lead 4 with 8 kΩ, and "supply twelve two" is
/// 12.2 V.</summary>
internal sealed class NumberRoles
{
    private const double Skipped = 4;

    // Cost of passing over the front of a decimal, or taking it for a value of its own: more than an unlikely value, or
    // "25.7 volts" would be 0.7 V.
    private const double TornOff = Sizes.Implausible + 2;

    // Cost of ending with a cylinder where a value has to come: "plug gap on plug six, 1".
    private const double NoValue = 2;

    // What a series of joined numbers takes off that cost.
    private const double SeriesHelp = 1.5;

    // Cost of taking "five point nine" for cylinder 5 and 0.9.
    private const double PointSplit = 2;

    private readonly IReadOnlyList<Token> _tokens;
    private readonly NumberLookup _numbers;
    private readonly Check _check;
    private readonly RunContext _context;
    private readonly int _first;
    private readonly int _next;

    private NumberRoles(NumberLookup numbers, int first, int next, Check check, RunContext context)
    {
        (_numbers, _tokens, _first, _next, _check, _context) = (numbers, numbers.Tokens, first, next, check, context);
    }

    /// <summary>The likeliest roles of the numbers of a run, and what that reading costs.</summary>
    public static (IReadOnlyList<NumberRole> Roles, double Cost) Of(
        NumberLookup numbers, int first, int next, Check check, RunContext context) =>
        new NumberRoles(numbers, first, next, check, context).Cheapest();

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
        var best = new Path?[_next - _first + 1, States];
        best[0, State(Before.Nothing, _context.PlaceKnown)] = new(0, null, null, Before.Nothing, _context.PlaceKnown);
        for (var at = _first; at < _next; at++)
        {
            var steps = Steps(at);
            for (var state = 0; state < States; state++)
            {
                if (best[at - _first, state] is { } path)
                {
                    Extend(best, path, at, steps);
                }
            }
        }

        return Trace(Enumerable.Range(0, States).Select(state => best[_next - _first, state]).OfType<Path>()
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

    private void Extend(Path?[,] best, Path path, int at, List<Step> steps)
    {
        foreach (var step in steps)
        {
            var cost = path.Cost + step.Cost + Following(path, step, at);
            var before = After(path.Before, step);
            var known = path.PlaceKnown || step.Role is PlaceNumbers;
            ref var slot = ref best[step.Next - _first, State(before, known)];
            if (slot is null || cost < slot.Cost)
            {
                slot = new(cost, step.Role, path, before, known);
            }
        }
    }

    private static Before After(Before before, Step step) => step switch
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

    private readonly record struct Step(int Next, NumberRole? Role, double Cost);

    // What a step costs on top of itself, given what came before it.
    private double Following(Path path, Step step, int at) => step.Role switch
    {
        PlaceNumbers when at == _first && _context.PlaceNounBefore => 0,
        PlaceNumbers when _context.Listing => 4,
        PlaceNumbers => path.Before switch
        {
            Before.PlaceAndSeparator => 0.1,
            Before.Place => 0.5,
            Before.Value => 0.8,
            Before.ValueAndSeparator => 0.5,
            _ => path.PlaceKnown ? 2 : 0.6,
        },
        ValueNumber => (path.Before == Before.Value ? 1 : 0)
            + (at == _first && _context.PlaceNounBefore && _check.PerCylinder ? 1.5 : 0)
            + (_check.PerCylinder && !path.PlaceKnown ? 1 : 0),
        _ => 0,
    };

    private List<Step> Steps(int at)
    {
        var steps = new List<Step> { new(at + 1, null, IsSeparator(at) ? 0 : BeginsDecimal(at) ? TornOff : Skipped) };
        foreach (var reading in _numbers.Numbers(at).Where(reading => reading.Next <= _next))
        {
            steps.AddRange(Places(at, reading));
            steps.AddRange(Values(at, reading));
        }

        return steps;
    }

    // "Seventy-one point five", "25.7"; not "point five".
    private bool BeginsDecimal(int at) => _numbers.Numbers(at).Any(whole => whole.Whole && IsFrontOfDecimal(at, whole));

    private bool IsFrontOfDecimal(int at, NumberReading whole) => _numbers.Numbers(at).Any(reading => IsDecimal(reading, longerThan: whole.Next));

    private static bool IsDecimal(NumberReading reading, int longerThan) => !reading.Whole && reading.Next > longerThan && reading.Cost < 0.3;

    private bool IsSeparator(int at) => _tokens[at].Kind == TokenKind.Mark
        || _tokens[at].Stem is "and" or "or" or "then" || _tokens[at].Stem is "to" && _check.Measurand is not null;

    private bool IsCylinder(NumberReading reading) =>
        reading.Whole && reading.Value >= 1 && reading.Value <= _context.Cylinders;

    private IEnumerable<Step> Places(int at, NumberReading reading)
    {
        if (!IsCylinder(reading))
        {
            yield break;
        }

        var pointed = reading.Doubt is null && IsFrontOfDecimal(at, reading);
        var cost = reading.Cost + (_check.PerCylinder ? 0 : 5) + (pointed ? PointSplit : 0) - (InSeries(at) ? SeriesHelp : 0);
        var doubt = pointed ? JoinedDoubt(at) : reading.Doubt;
        var cylinder = (int)reading.Value;
        yield return new(reading.Next, new PlaceNumbers(at, reading.Next, [cylinder], doubt), cost);
        if (!IsRangeWord(reading.Next))
        {
            yield break;
        }

        foreach (var end in _numbers.Numbers(reading.Next + 1).Where(end => end.Next <= _next))
        {
            if (IsCylinder(end) && end.Value > reading.Value)
            {
                var split = end.Doubt ?? doubt;
                var range = Enumerable.Range(cylinder, (int)end.Value - cylinder + 1).ToList();
                yield return new(end.Next, new PlaceNumbers(at, end.Next, range, split), cost + end.Cost);
            }
        }
    }

    // "Plug 1.8, plug 2.9": the whole numbers count the plugs.
    private bool InSeries(int at) => at == _first && _context.PlaceNounBefore && at > 0 && IsJoined(at)
        && Enumerable.Range(1, _tokens.Count - 1).Any(other => _tokens[other - 1].Stem == _tokens[at - 1].Stem && IsJoined(other)
            && Math.Abs(_tokens[other].Text[0] - _tokens[at].Text[0]) == 1);

    private bool IsJoined(int at) => at + 1 < _tokens.Count && _tokens[at] is { Kind: TokenKind.Digits, Lead: '\0', Text.Length: 1 }
        && _tokens[at + 1] is { Kind: TokenKind.Digits, Glued: true, Lead: '.' };

    // "Plug one point eight" is plug 1 with 0.8 only where 1.8 could not be meant.
    private string? JoinedDoubt(int at)
    {
        if (_check.Measurand is null)
        {
            return null;
        }

        var joined = false;
        foreach (var reading in _numbers.Numbers(at))
        {
            joined |= !reading.Whole && reading.Next <= _next
                && Sizes.Of(reading.Value, _numbers.Unit(reading.Next), _check) is { Cost: < Sizes.Implausible };
        }

        return joined ? "the cylinder and the value may be one number" : null;
    }

    private bool IsRangeWord(int at) => at < _next
        && (_tokens[at].IsMark('-') || _tokens[at].Stem is "to" or "through" or "thru" or "till" or "until");

    private IEnumerable<Step> Values(int at, NumberReading reading)
    {
        if (_check.Measurand is null)
        {
            yield break;
        }

        var unit = UnitGrammar.TopDeadCentre(_tokens, at) > 0
            ? new UnitReading(reading.Next, [Units.Degree], 1, Angle: true)
            : _numbers.Unit(reading.Next);
        if (unit is { Doubt: not null } && unit.Units[0].Kind != _check.Measurand.Kind)
        {
            unit = null;
        }

        if (unit is not null && unit.Next <= _next && Value(at, reading, unit, unit.Next) is { } withUnit)
        {
            yield return withUnit;
            if (reading.Whole && Remainder(unit.Next) is { } more
                && Value(at, reading with { Value = reading.Value + more.Value, Whole = false }, unit, more.Next) is { } whole)
            {
                yield return whole;
            }
        }

        if ((unit is null || unit.Angle && unit.Next > reading.Next) && Value(at, reading, null, reading.Next) is { } bare)
        {
            yield return bare;
        }
    }

    // "One ohm and a half".
    private NumberReading? Remainder(int at) =>
        at + 1 < _next && _tokens[at].IsWord("and") && _numbers.Numbers(at + 1).Where(part => !part.Whole && part.Value < 1 && part.Next <= _next
            && NumberWords.Denominator(_tokens[part.Next - 1].Stem) is not null && _numbers.Unit(part.Next) is null) is var parts && parts.Any()
            ? parts.First() : null;

    private Step? Value(int at, NumberReading reading, UnitReading? unit, int next)
    {
        if (Sizes.Of(reading.Value, unit, _check) is not { } size)
        {
            return null;
        }

        var bare = unit is null && reading.Whole ? 0.4 : 0;
        var torn = reading.Whole && IsFrontOfDecimal(at, reading) ? TornOff : 0;
        var role = new ValueNumber(at, next, size.Value, unit is not null, reading.Value, Doubts.Join(size.Doubt(_check) ?? reading.Doubt ?? Twins.Doubt(reading.Value, unit, _check), unit?.Doubt))
        {
            AngleSaid = unit is { Angle: true },
            RangeEnd = _context.Between || IsRangeWord(next) || at > _first && IsRangeWord(at - 1),
        };
        return new(next, role, reading.Cost + size.Cost + bare + torn);
    }
}
