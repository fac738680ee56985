using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>The ways to take a number of a run for a cylinder, or for the first of a row of them.</summary>
internal sealed class CylinderSteps(RunSpan span, Check check, RunContext context)
{
    // What a series of joined numbers takes off the cost of a split.
    private const double SeriesHelp = 1.5;

    // Cost of taking "five point nine" for cylinder 5 and 0.9.
    private const double PointSplit = 2;

    /// <summary>The steps over a number that starts at a token.</summary>
    public IEnumerable<RunStep> Of(int at, NumberReading reading)
    {
        if (!IsCylinder(reading))
        {
            yield break;
        }

        var pointed = reading.Doubt is null && span.IsFrontOfDecimal(at, reading);
        var cost = reading.Cost + (check.PerCylinder || context.Marked && at == span.First ? 0 : 5) + (pointed ? PointSplit : 0) - (InSeries(at) ? SeriesHelp : 0);
        var doubt = pointed ? JoinedDoubt(at) : reading.Doubt;
        var cylinder = (int)reading.Value;
        yield return new(reading.Next, new PlaceNumbers(at, reading.Next, [cylinder], doubt), cost);
        if (!span.IsRangeWord(reading.Next))
        {
            yield break;
        }

        foreach (var end in span.Numbers(reading.Next + 1).Where(end => end.Next <= span.Next))
        {
            if (IsCylinder(end) && end.Value > reading.Value)
            {
                var split = end.Doubt ?? doubt;
                var range = Enumerable.Range(cylinder, (int)end.Value - cylinder + 1).ToList();
                yield return new(end.Next, new PlaceNumbers(at, end.Next, range, split), cost + end.Cost);
            }
        }
    }

    private bool IsCylinder(NumberReading reading) =>
        reading.Whole && reading.Value >= 1 && reading.Value <= context.Cylinders;

    // "Plug 1.8, plug 2.9": the whole numbers count the plugs.
    private bool InSeries(int at) => at == span.First && context.PlaceNounBefore && at > 0 && IsJoined(at)
        && Enumerable.Range(1, span.Tokens.Count - 1).Any(other => span.Tokens[other - 1].Stem == span.Tokens[at - 1].Stem && IsJoined(other)
            && Math.Abs(span.Tokens[other].Text[0] - span.Tokens[at].Text[0]) == 1);

    private bool IsJoined(int at) => at + 1 < span.Tokens.Count && span.Tokens[at] is { Kind: TokenKind.Digits, Lead: '\0', Text.Length: 1 }
        && span.Tokens[at + 1] is { Kind: TokenKind.Digits, Glued: true, Lead: '.' };

    // "Plug one point eight" is plug 1 with 0.8 only where 1.8 could not be meant.
    private string? JoinedDoubt(int at)
    {
        if (check.Measurand is null)
        {
            return null;
        }

        var joined = false;
        foreach (var reading in span.Numbers(at))
        {
            joined |= !reading.Whole && reading.Next <= span.Next
                && Sizes.Of(reading.Value, span.Unit(reading.Next), check) is { Cost: < Sizes.Implausible };
        }

        return joined ? "the cylinder and the value may be one number" : null;
    }
}
