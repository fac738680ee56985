namespace InspectLog.App.Ui.Drawings;

/// <summary>Cuts a line from point to point where it leaves the field of a drawing. Points put on the edge one by one would
/// bend it there.</summary>
internal static class FieldCut
{
    /// <summary>The points with those at which the line crosses the upper and the lower edge put in between.</summary>
    /// <param name="points">The line, from left to right.</param>
    /// <param name="field">Values from the lower to the upper edge.</param>
    public static IEnumerable<StripPoint> WithCuts(IReadOnlyList<StripPoint> points, Scale field)
    {
        for (var i = 0; i < points.Count; i++)
        {
            if (i > 0)
            {
                foreach (var cut in Cuts(points[i - 1], points[i], field))
                {
                    yield return cut;
                }
            }

            yield return points[i];
        }
    }

    /// <summary>The part of the line that lies in the field, edges included.</summary>
    public static IEnumerable<StripPoint> Within(IReadOnlyList<StripPoint> points, Scale field) =>
        WithCuts(points, field).Where(point => field.Holds(point.Y));

    private static IEnumerable<StripPoint> Cuts(StripPoint from, StripPoint to, Scale field)
    {
        var rise = to.Y - from.Y;
        return new[] { field.From, field.To }
            .Select(edge => (Share: (edge - from.Y) / rise, Edge: edge))
            .Where(cut => cut.Share is > 0 and < 1)
            .OrderBy(cut => cut.Share)
            .Select(cut => new StripPoint(from.X + (cut.Share * (to.X - from.X)), cut.Edge));
    }
}
