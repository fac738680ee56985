using MathNet.Numerics;

namespace InspectLog.Measuring;

/// <summary>Whether groups of repeated readings, such as the cylinders of an engine, differ by more than their own
/// scatter: one-way analysis of variance (JCGM 100:2008, H.5).</summary>
/// <param name="BetweenDegrees">Degrees of freedom between groups.</param>
/// <param name="BetweenMeanSquare">Mean square between groups.</param>
/// <param name="WithinDegrees">Degrees of freedom within groups.</param>
/// <param name="WithinMeanSquare">Mean square within groups; its root is the scatter of a single reading.</param>
public sealed record AnalysisOfVariance(
    int BetweenDegrees, double BetweenMeanSquare, int WithinDegrees, double WithinMeanSquare)
{
    /// <summary>The ratio of the two mean squares; infinite where readings within groups do not scatter at all.</summary>
    public double F => BetweenMeanSquare / WithinMeanSquare;

    /// <summary>Probability, 0 to 1, of such an F or a larger one where the groups do not differ.</summary>
    public double Probability =>
        WithinMeanSquare == 0
            ? BetweenMeanSquare == 0 ? 1 : 0
            : SpecialFunctions.BetaRegularized(
                WithinDegrees / 2.0, BetweenDegrees / 2.0, WithinDegrees / (WithinDegrees + (BetweenDegrees * F)));

    /// <summary>Compares groups.</summary>
    /// <exception cref="ArgumentException">There are fewer than two groups, one is empty, none has a repeat, or a value is
    /// not finite.</exception>
    public static AnalysisOfVariance Of(IReadOnlyList<IReadOnlyList<double>> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        // Counted from one of the values, the means of groups have room for all their digits.
        var origin = groups.FirstOrDefault(group => group.Count > 0)?[0] ?? 0;
        var samples = groups.Select(group => Sample.Of([.. group.Select(value => Difference.Of(value, origin))])).ToList();
        var total = samples.Sum(sample => sample.Count);
        if (samples.Count < 2 || total == samples.Count)
        {
            throw new ArgumentException("Comparing groups needs two of them or more, and repeats in at least one.");
        }

        var grand = samples.Sum(sample => sample.Count * sample.Mean) / total;
        var between = samples.Sum(sample => sample.Count * Square(sample.Mean - grand));
        var within = samples.Sum(sample => (sample.Count - 1) * Square(sample.StandardDeviation));
        return new(
            samples.Count - 1, between / (samples.Count - 1), total - samples.Count, within / (total - samples.Count));
    }

    private static double Square(double number) => number * number;
}
