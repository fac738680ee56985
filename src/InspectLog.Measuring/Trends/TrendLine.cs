namespace InspectLog.Measuring;

/// <summary>A reading at a date or an odometer value.</summary>
/// <param name="X">When: days, kilometres or whatever the trend goes by.</param>
/// <param name="Y">What was read, base unit.</param>
public readonly record struct TrendPoint(double X, double Y);

/// <summary>A straight line through readings by ordinary least squares.</summary>
/// <param name="Count">How many points, 3 or more.</param>
/// <param name="Slope">Change of y for each unit of x.</param>
/// <param name="Intercept">y at x = 0.</param>
/// <param name="ResidualStandardDeviation">Scatter about the line, with <paramref name="Count"/> − 2 degrees of
/// freedom.</param>
/// <param name="SlopeStandardError">Standard error of the slope.</param>
/// <param name="InterceptStandardError">Standard error of the intercept.</param>
/// <param name="RSquared">Share of the variance of y the line explains, 0 to 1; 0 where y does not vary.</param>
/// <param name="MeanX">Mean of the points' x.</param>
/// <param name="MeanY">Mean of the points' y.</param>
/// <param name="SumOfSquaresX">Sum of squared deviations of x from its mean, above 0.</param>
public sealed record TrendLine(
    int Count,
    double Slope,
    double Intercept,
    double ResidualStandardDeviation,
    double SlopeStandardError,
    double InterceptStandardError,
    double RSquared,
    double MeanX,
    double MeanY,
    double SumOfSquaresX)
{
    /// <summary>The line's y at an x.</summary>
    public double At(double x) => MeanY + (Slope * (x - MeanX));

    /// <summary>Standard error of the line itself at an x.</summary>
    public double StandardErrorAt(double x) =>
        ResidualStandardDeviation * Math.Sqrt((1.0 / Count) + (Deviation(x) * Deviation(x)));

    /// <summary>Half the width of the interval a new reading at an x is expected in.</summary>
    /// <param name="x">Where.</param>
    /// <param name="coverage">Share of such readings expected within: above 0 and below 1.</param>
    /// <param name="common">Expanded uncertainty of what all readings have in common, of that coverage, base unit.</param>
    public double PredictionHalfWidth(double x, double coverage = Coverage.Probability, double common = 0) => double.Hypot(
        StudentDistribution.Factor(coverage, Count - 2)
            * ResidualStandardDeviation * Math.Sqrt(1 + (1.0 / Count) + (Deviation(x) * Deviation(x))),
        common);

    /// <summary>Covariance of slope and intercept, divided by both standard errors: their correlation.</summary>
    public double Correlation => -MeanX / Math.Sqrt((SumOfSquaresX / Count) + (MeanX * MeanX));

    /// <summary>Fits a line.</summary>
    /// <remarks>Sums are taken over deviations from the means, so that the reference data of NIST (StRD, Norris) come out
    /// to eleven digits or more.</remarks>
    /// <exception cref="ArgumentException">There are fewer than three points, a number is not finite, or all points have
    /// the same x.</exception>
    public static TrendLine Through(IReadOnlyList<TrendPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 3)
        {
            throw new ArgumentException("A line with its scatter needs three readings or more.");
        }

        var x = Sample.Of([.. points.Select(point => point.X)]);
        var y = Sample.Of([.. points.Select(point => point.Y)]);
        double[] dx = [.. points.Select(point => x.Deviation(point.X))];
        double[] dy = [.. points.Select(point => y.Deviation(point.Y))];
        var sxx = dx.Sum(Square);
        if (!(sxx > 0 && double.IsFinite(sxx)))
        {
            throw new ArgumentException("All readings are from the same time, so they show no trend.");
        }

        var slope = dx.Zip(dy, (one, other) => one * other).Sum() / sxx;
        var residual = dx.Zip(dy, (one, other) => Square(other - (slope * one))).Sum();
        var syy = dy.Sum(Square);
        var s = Math.Sqrt(residual / (points.Count - 2));
        return new TrendLine(
            points.Count,
            slope,
            y.Mean - (slope * x.Mean),
            s,
            s / Math.Sqrt(sxx),
            s * Math.Sqrt((1.0 / points.Count) + (x.Mean * x.Mean / sxx)),
            syy > 0 ? 1 - (residual / syy) : 0,
            x.Mean,
            y.Mean,
            sxx);
    }

    private static double Square(double number) => number * number;

    private double Deviation(double x) => (x - MeanX) / Math.Sqrt(SumOfSquaresX);
}
