using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Words;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>The ways to take a number of a run for a value of the check.</summary>
internal sealed class ValueSteps(RunSpan span, Check check, RunContext context)
{
    /// <summary>The steps over a number that starts at a token.</summary>
    public IEnumerable<RunStep> Of(int at, NumberReading reading)
    {
        if (check.Measurand is null)
        {
            yield break;
        }

        var unit = UnitGrammar.TopDeadCentre(span.Tokens, at) > 0
            ? new UnitReading(reading.Next, [Units.Degree], 1, Angle: true)
            : span.Unit(reading.Next);
        if (unit is { Doubt: not null } && unit.Units[0].Kind != check.Measurand.Kind)
        {
            unit = null;
        }

        if (unit is not null && unit.Next <= span.Next && Value(at, reading, unit, unit.Next) is { } withUnit)
        {
            yield return withUnit;
            if (reading.Whole && Remainder(unit.Next) is { } more
                && Value(at, reading with { Value = reading.Value + more.Value, Whole = false }, unit, more.Next) is { } whole)
            {
                yield return whole;
            }

            if (reading.Whole && FigureAfter(unit) is { } figure
                && Value(at, reading with { Value = reading.Value + figure.Value / 10, Whole = false, Doubt = "the figures were said apart" }, unit, figure.Next) is { } apart)
            {
                yield return apart;
            }
        }

        if ((unit is null || unit.Angle && unit.Next > reading.Next) && Value(at, reading, null, reading.Next) is { } bare)
        {
            yield return bare;
        }
    }

    // "Five k five", "one ohm six": nothing follows that the figure could be of.
    private NumberReading? FigureAfter(UnitReading unit) =>
        unit.Next < span.Next && span.Tokens[unit.Next] is { Kind: TokenKind.Word } or { Kind: TokenKind.Digits, Lead: '\0', Glued: false } && (unit.Next + 1 >= span.Tokens.Count || span.Tokens[unit.Next + 1].Kind == TokenKind.Mark)
            && span.Numbers(unit.Next).Where(reading => reading is { Whole: true, Value: > 0 and < 10 } && reading.Next == unit.Next + 1) is var figures && figures.Any()
            ? figures.First() : null;

    // "One ohm and a half".
    private NumberReading? Remainder(int at) =>
        at + 1 < span.Next && span.Tokens[at].IsWord("and") && span.Numbers(at + 1).Where(part => !part.Whole && part.Value < 1 && part.Next <= span.Next
            && NumberWords.Denominator(span.Tokens[part.Next - 1].Stem) is not null && span.Unit(part.Next) is null) is var parts && parts.Any()
            ? parts.First() : null;

    private RunStep? Value(int at, NumberReading reading, UnitReading? unit, int next)
    {
        if (Sizes.Of(reading.Value, unit, check) is not { } size)
        {
            return null;
        }

        var bare = unit is null && reading.Whole ? 0.4 : 0;
        var torn = reading.Whole && span.IsFrontOfDecimal(at, reading) ? RunSteps.TornOff : 0;
        var role = new ValueNumber(at, next, size.Value, unit is not null, reading.Value, Doubts.Join(size.Doubt(check) ?? reading.Doubt ?? Twins.Doubt(reading.Value, unit, check), unit?.Doubt))
        {
            AngleSaid = unit is { Angle: true },
            RangeEnd = context.Between || span.IsRangeWord(next) || at > span.First && span.IsRangeWord(at - 1),
        };
        return new(next, role, reading.Cost + size.Cost + bare + torn);
    }
}
