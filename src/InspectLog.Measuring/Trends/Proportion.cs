namespace InspectLog.Measuring;

/// <summary>A straight line through the origin by least squares, as for resistance against length.</summary>
/// <param name="Slope">y for each unit of x.</param>
/// <param name="SlopeStandardError">Its standard error.</param>
/// <param name="ResidualStandardDeviation">Scatter about the line, with one degree of freedom less than points.</param>
/// <param name="RSquared">Share of the sum of squares of y (about 0, not about its mean) the line explains.</param>
public sealed record Proportion(
    double Slope, double SlopeStandardError, double ResidualStandardDeviation, double RSquared)
{
    /// <summary>Fits the line.</summary>
    /// <exception cref="ArgumentException">There are fewer than two points, a number is not finite, or every x is
    /// 0.</exception>
    public static Proportion Through(IReadOnlyList<TrendPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 2)
        {
            throw new ArgumentException("A proportion with its scatter needs two readings or more.");
        }

        var sxx = points.Sum(point => point.X * point.X);
        var slope = points.Sum(point => point.X * point.Y) / sxx;
        var residual = points.Sum(point => Square(point.Y - (slope * point.X)));
        var syy = points.Sum(point => point.Y * point.Y);
        if (!double.IsFinite(slope) || !double.IsFinite(residual))
        {
            throw new ArgumentException("These readings give no proportion: every x is 0, or a number is not finite.");
        }

        var s = Math.Sqrt(residual / (points.Count - 1));
        return new Proportion(slope, s / Math.Sqrt(sxx), s, syy > 0 ? 1 - (residual / syy) : 0);
    }

    private static double Square(double number) => number * number;
}
