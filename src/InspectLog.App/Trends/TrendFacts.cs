using InspectLog.Measuring;

namespace InspectLog.App.Trends;

/// <summary>A series with its trend along an axis.</summary>
/// <param name="Series">The readings.</param>
/// <param name="Axis">What they go by.</param>
/// <param name="Trend">The line through the readings of what is there now, and what it foretells.</param>
/// <param name="Outlook">What can be said of the future, weighed against the present.</param>
public sealed record TrendFacts(TrendSeries Series, TrendAxis Axis, Trend Trend, Outlook Outlook)
{
    /// <summary>A forecast farther ahead than so many times the time the readings reach back is none.</summary>
    private const double FarthestLook = 10;

    /// <summary>Below this the squares of readings, and their sums, are finite.</summary>
    private const double Largest = 1e150;

    /// <summary>Where the first and the last of the readings of what is there now stand.</summary>
    public (double First, double Last) Span { get; } =
        (Series.Current.Min(reading => Axis.At(reading.Inspection)), Series.Current.Max(reading => Axis.At(reading.Inspection)));

    /// <summary>Works out the trend of a series.</summary>
    /// <param name="series">The readings; at least one of what is there now.</param>
    /// <param name="axis">What they go by.</param>
    /// <param name="now">Where the present stands on the axis of dates; the odometer takes its last reading.</param>
    public static TrendFacts Of(TrendSeries series, TrendAxis axis, DateTimeOffset now)
    {
        var points = series.Current.Select(reading => new TrendPoint(axis.At(reading.Inspection), reading.Value)).ToList();
        var trend = points.TrueForAll(point => Math.Abs(point.X) < Largest && Math.Abs(point.Y) < Largest)
            ? Trend.Of(points, series.Measurand.Limits, CommonPart.Of(series.Current))
            : new Trend(null, null, null, "A reading is too large to draw a line through.");
        var facts = new TrendFacts(series, axis, trend, Outlook.NothingForetold);
        var present = axis.Odometer is null ? Math.Max(TrendAxis.At(now), facts.Span.Last) : facts.Span.Last;
        return facts with { Outlook = OutlookOf(facts, present) };
    }

    private static Outlook OutlookOf(TrendFacts facts, double present)
    {
        if (facts.Series.Measurand.Limits is { } limits && IsBeyond(facts.Series.Current[^1].Value, limits))
        {
            return Outlook.BeyondAlready;
        }

        if (facts.Trend.MeetsLimitAt is not { } meets)
        {
            return Outlook.NothingForetold;
        }

        var (first, last) = facts.Span;
        return meets <= present ? Outlook.AnyTimeNow
            : meets - last > FarthestLook * (last - first) ? Outlook.FarOff
            : meets - last > last - first ? Outlook.AheadAsAHint
            : Outlook.Ahead;
    }

    private static bool IsBeyond(double value, Limits limits) => value < limits.Lower || value > limits.Upper;
}

/// <summary>What a trend says of the future.</summary>
public enum Outlook
{
    /// <summary>Too few readings, no clear slope, or no limit on that side.</summary>
    NothingForetold,

    /// <summary>The last reading lies beyond a limit.</summary>
    BeyondAlready,

    /// <summary>The edge of the band has reached the limit: a reading there would be no surprise.</summary>
    AnyTimeNow,

    /// <summary>The limit comes in sight, no farther ahead than the readings reach back.</summary>
    Ahead,

    /// <summary>The limit comes in sight, but farther ahead than the readings reach back.</summary>
    AheadAsAHint,

    /// <summary>The limit is so far ahead that no time can be named.</summary>
    FarOff,
}
