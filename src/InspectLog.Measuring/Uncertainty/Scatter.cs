using MathNet.Numerics.Distributions;

namespace InspectLog.Measuring;

/// <summary>The scatter of single readings.</summary>
/// <param name="StandardDeviation">Standard deviation of one reading, base unit.</param>
/// <param name="DegreesOfFreedom">What it was found from; infinity where it is taken as known.</param>
internal readonly record struct Scatter(double StandardDeviation, double DegreesOfFreedom)
{
    // How seldom a sample that scatters as before shows as much more scatter as would part the two.
    private const double Seldom = 0.01;

    /// <summary>The scatter of a sample's readings, together with what is known of it from before. A sample that scatters
    /// far more than that speaks for itself.</summary>
    /// <exception cref="ArgumentException">The known scatter is out of range.</exception>
    internal static Scatter Of(in Sample sample, KnownScatter? known)
    {
        var own = new Scatter(sample.StandardDeviation, sample.Count - 1);
        if (known is null)
        {
            return own;
        }

        Refuse.BadScatter(known);
        var before = new Scatter(known.StandardDeviation, known.DegreesOfFreedom ?? double.PositiveInfinity);
        return sample.Count == 1 ? before
            : own.IsLargerThan(before) ? own
            : own.PooledWith(before);
    }

    private Scatter PooledWith(Scatter before)
    {
        if (double.IsPositiveInfinity(before.DegreesOfFreedom))
        {
            return before;
        }

        var squares = (DegreesOfFreedom * StandardDeviation * StandardDeviation)
            + (before.DegreesOfFreedom * before.StandardDeviation * before.StandardDeviation);
        var degrees = DegreesOfFreedom + before.DegreesOfFreedom;
        return new(Math.Sqrt(squares / degrees), degrees);
    }

    // The F test of two variances (e-Handbook of Statistical Methods, 1.3.5.9, from memory).
    private bool IsLargerThan(Scatter before)
    {
        var ratio = StandardDeviation / before.StandardDeviation;
        if (!double.IsFinite(ratio))
        {
            return StandardDeviation > 0;
        }

        var share = double.IsPositiveInfinity(before.DegreesOfFreedom)
            ? ChiSquared.CDF(DegreesOfFreedom, ratio * ratio * DegreesOfFreedom)
            : FisherSnedecor.CDF(DegreesOfFreedom, before.DegreesOfFreedom, ratio * ratio);
        return share > 1 - Seldom;
    }
}
