namespace InspectLog.App.Ui.Drawings;

/// <summary>Outlines the bell or box of a reading, cut at the limits.</summary>
internal static class StripSpread
{
    /// <summary>A spread narrower than this is no more than its drop line.</summary>
    private const double LeastWidth = 2;

    private const double Step = 1.5;

    /// <summary>The parts of the spread from left to right; empty before a reading, without uncertainty, or where the
    /// reading lies beyond the scale.</summary>
    public static IReadOnlyList<StripShape> Shapes(StripFacts facts, Scale axis)
    {
        if (facts.Reading is not { } reading)
        {
            return [];
        }

        var from = Math.Max(reading.From, axis.From);
        var to = Math.Min(reading.To, axis.To);
        if (to <= from || axis.At(to) - axis.At(from) < LeastWidth)
        {
            return [];
        }

        return [.. Cuts(facts, from, to).Select(part => Part(facts, reading, axis, part.From, part.To))];
    }

    private static IEnumerable<(double From, double To)> Cuts(StripFacts facts, double from, double to)
    {
        var start = from;
        foreach (var limit in new[] { facts.Lower, facts.Upper }.OfType<double>().Where(limit => limit > from && limit < to))
        {
            yield return (start, limit);
            start = limit;
        }

        yield return (start, to);
    }

    private static StripShape Part(StripFacts facts, StripReading reading, Scale axis, double from, double to)
    {
        var (left, right) = (axis.At(from), axis.At(to));
        var steps = Math.Max(1, (int)Math.Ceiling((right - left) / Step));
        var top = Enumerable.Range(0, steps + 1).Select(i =>
        {
            var share = (double)i / steps;
            return new StripPoint(left + (share * (right - left)), Top(reading, from + (share * (to - from))));
        });
        return new StripShape(
            !facts.Allows((from + to) / 2),
            [new(left, StripDrawing.Baseline), .. top, new(right, StripDrawing.Baseline)]);
    }

    private static double Top(StripReading reading, double value)
    {
        var height = reading is StripReading.Bell bell ? bell.HeightAt(value) : 0.62;
        return StripDrawing.Baseline - (height * StripDrawing.SpreadHeight);
    }
}
