namespace InspectLog.App.Trends;

/// <summary>Which readings of a series are drawn where there are more than there is room for: the first and the last, and of
/// each stretch between them the lowest and the highest, so that nothing that stands out goes unseen. Pure.</summary>
public static class DrawnReadings
{
    /// <summary>Those that are drawn, in their order.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="most">How many at most; four or more.</param>
    public static IReadOnlyList<TrendReading> Of(IReadOnlyList<TrendReading> readings, int most)
    {
        if (readings.Count <= most)
        {
            return readings;
        }

        var stretches = (most - 2) / 2;
        var between = readings.Count - 2;
        return
        [
            readings[0],
            .. Enumerable.Range(0, stretches).SelectMany(stretch => Ends(
                readings, 1 + (stretch * between / stretches), 1 + ((stretch + 1) * between / stretches))),
            readings[^1],
        ];
    }

    private static IEnumerable<TrendReading> Ends(IReadOnlyList<TrendReading> readings, int from, int to)
    {
        var places = Enumerable.Range(from, to - from).ToList();
        return new[] { places.MinBy(at => readings[at].Value), places.MaxBy(at => readings[at].Value) }
            .Distinct().Order().Select(at => readings[at]);
    }
}
