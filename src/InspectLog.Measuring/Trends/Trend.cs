namespace InspectLog.Measuring;

/// <summary>Readings over time with what they foretell.</summary>
/// <param name="Line">The line through them; null where none can be drawn.</param>
/// <param name="MeetsLimitAt">The x at which the edge of the prediction interval (95.45 %) meets the limit the line runs
/// towards: the earliest a reading there would be no surprise. It lies before the last reading where that has come
/// already. Null where nothing can be foretold.</param>
/// <param name="LineMeetsLimitAt">The x at which the line itself meets that limit; null with
/// <paramref name="MeetsLimitAt"/>.</param>
/// <param name="Reason">Why nothing can be foretold, as a sentence; null otherwise.</param>
public sealed record Trend(TrendLine? Line, double? MeetsLimitAt, double? LineMeetsLimitAt, string? Reason)
{
    private const int FewestForForecast = 4;

    /// <summary>Times closer together than this have squares of 0.</summary>
    private const double ClosestTimes = 1e-150;

    /// <summary>Fits a line and works out when it meets a limit.</summary>
    /// <param name="points">The readings, in any order.</param>
    /// <param name="limits">The limits; null for none.</param>
    /// <param name="common">Expanded uncertainty of what all readings have in common, base unit, 0 or more: the error of the
    /// one instrument, which moves the whole line and does not show in the scatter about it.</param>
    /// <exception cref="ArgumentException">A number is not finite or too large to work with.</exception>
    public static Trend Of(IReadOnlyList<TrendPoint> points, Limits? limits, double common = 0)
    {
        ArgumentNullException.ThrowIfNull(points);
        foreach (var point in points)
        {
            if (!double.IsFinite(point.X) || !double.IsFinite(point.Y))
            {
                throw new ArgumentException("A reading and its time must be finite numbers.");
            }
        }

        if (points.Count == 0)
        {
            return None(null, "There are no readings yet.");
        }

        if (points.Count > 1 && points.Max(point => point.X) - points.Min(point => point.X) < ClosestTimes)
        {
            return None(null, "All readings are from the same time, so they show no trend.");
        }

        var line = points.Count < 3 ? null : TrendLine.Through(points);
        return line is null || line.Count < FewestForForecast
            ? None(line, $"Not enough data: a forecast needs at least {FewestForForecast} readings, and there {(points.Count == 1 ? "is" : "are")} {points.Count}.")
            : Forecast(line, limits, common);
    }

    private static Trend Forecast(TrendLine line, Limits? limits, double common)
    {
        var t = Coverage.Factor(line.Count - 2);
        if (Math.Abs(line.Slope) <= t * line.SlopeStandardError)
        {
            return None(line, "No clear slope: the readings may well be steady.");
        }

        if (limits is null)
        {
            return None(line, "There is no limit to meet.");
        }

        var rising = line.Slope > 0;
        if ((rising ? limits.Upper : limits.Lower) is not { } limit)
        {
            return None(line, AwayFrom(line, limits));
        }

        // Falling towards a lower limit is rising towards an upper one, upside down.
        var slope = Math.Abs(line.Slope);
        var distance = rising ? limit - line.MeanY : line.MeanY - limit;
        var edge = line.MeanX + EdgeMeets(line, slope, distance, t, common);
        var middle = line.MeanX + (distance / slope);
        return double.IsFinite(edge) && double.IsFinite(middle)
            ? new Trend(line, edge, middle, null)
            : None(line, "The limit is too far away to say when.");
    }

    // The line runs from the only limit there is, or back to it from beyond.
    private static string AwayFrom(TrendLine line, Limits limits) => line.MeanY < limits.Lower || line.MeanY > limits.Upper
        ? "The readings lie beyond the limit and move back towards it."
        : "The readings move away from the limit.";

    // Where slope·d + √(t²s²(1 + 1/n + d²/Sxx) + common²) = distance, with d counted from the mean x. Squared, that is a
    // quadratic whose smaller root is the edge; it exists because the slope is larger than t times its standard error.
    private static double EdgeMeets(TrendLine line, double slope, double distance, double t, double common)
    {
        var ofSlope = t * t * line.SlopeStandardError * line.SlopeStandardError;
        var ofReading = (t * t * line.ResidualStandardDeviation * line.ResidualStandardDeviation * (1 + (1.0 / line.Count)))
            + (common * common);
        var lead = (slope * slope) - ofSlope;
        var root = Math.Sqrt((ofReading * lead) + (ofSlope * distance * distance));
        return ((slope * distance) - root) / lead;
    }

    private static Trend None(TrendLine? line, string reason) => new(line, null, null, reason);
}
