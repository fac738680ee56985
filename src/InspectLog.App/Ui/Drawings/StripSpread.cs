namespace InspectLog.App.Ui.Drawings;

/// <summary>Outlines what is known of a reading, cut at the limits.</summary>
internal static class StripSpread
{
    /// <summary>A spread narrower than this is no more than its drop line.</summary>
    private const double LeastWidth = 2;

    // Pixels that nobody sees.
    private const double Flat = 0.02;

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

    // As many points as the shape bends at, so that the page stays light.
    private static StripShape Part(StripFacts facts, StripReading reading, Scale axis, double from, double to)
    {
        IEnumerable<double> places = [from, .. reading.Places.Where(place => place > from && place < to), to];
        var top = Bends([.. places.Select(place => new StripPoint(axis.At(place), Top(reading, place)))]);
        return new StripShape(
            !facts.Allows((from / 2) + (to / 2)),
            [new(axis.At(from), StripDrawing.Baseline), .. top, new(axis.At(to), StripDrawing.Baseline)]);
    }

    // A flat top needs no points but its ends.
    private static IEnumerable<StripPoint> Bends(IReadOnlyList<StripPoint> points) => points.Where((point, i) =>
        i == 0 || i == points.Count - 1
        || Math.Abs(points[i - 1].Y - point.Y) > Flat || Math.Abs(points[i + 1].Y - point.Y) > Flat);

    private static double Top(StripReading reading, double value) =>
        StripDrawing.Baseline - (reading.HeightAt(value) * StripDrawing.SpreadHeight);
}
