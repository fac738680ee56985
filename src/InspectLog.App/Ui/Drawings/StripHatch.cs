namespace InspectLog.App.Ui.Drawings;

/// <summary>Hatches a part of a spread with slanted lines. They are computed, not a pattern fill, so that they need no
/// shared definition in the page and come out on any printer.</summary>
internal static class StripHatch
{
    private const double Spacing = 5;
    private const double Step = 0.5;

    /// <summary>Lines at 45 degrees that lie within the shape.</summary>
    public static IEnumerable<StripLine> Lines(StripShape shape)
    {
        var (left, right) = (shape.Points[0].X, shape.Points[^1].X);
        for (var foot = left - StripDrawing.SpreadHeight; foot < right; foot += Spacing)
        {
            if (Longest(shape, foot, left, right) is { } line)
            {
                yield return line;
            }
        }
    }

    /// <summary>The first run of a line rising to the right from the axis at <paramref name="foot"/> that lies within
    /// the shape.</summary>
    private static StripLine? Longest(StripShape shape, double foot, double left, double right)
    {
        double? first = null;
        var last = 0.0;
        for (var rise = 0.0; rise <= StripDrawing.SpreadHeight; rise += Step)
        {
            var inside = foot + rise >= left && foot + rise <= right && rise <= HeightAt(shape, foot + rise);
            if (inside)
            {
                first ??= rise;
                last = rise;
            }
            else if (first is not null)
            {
                break;
            }
        }

        return first is { } start && last - start >= 2 ? new(On(foot, start), On(foot, last)) : null;
    }

    private static StripPoint On(double foot, double rise) => new(foot + rise, StripDrawing.Baseline - rise);

    private static double HeightAt(StripShape shape, double x)
    {
        var top = shape.Points;
        for (var i = 2; i < top.Count - 1; i++)
        {
            if (x <= top[i].X)
            {
                var share = top[i].X > top[i - 1].X ? (x - top[i - 1].X) / (top[i].X - top[i - 1].X) : 0;
                return StripDrawing.Baseline - (top[i - 1].Y + (share * (top[i].Y - top[i - 1].Y)));
            }
        }

        return 0;
    }
}
