namespace InspectLog.Measuring;

/// <summary>The usual coverage of an expanded uncertainty: 95.45 %, for which k is exactly 2 where the standard
/// uncertainty is well known and normal.</summary>
public static class Coverage
{
    /// <summary>The share of a normal distribution within two standard deviations, 2Φ(2) − 1 = 0.9545.</summary>
    public const double Probability = 0.95449973610364159;

    /// <summary>What lies outside it.</summary>
    internal const double BothTails = 0.04550026389635841;

    /// <summary>The coverage factor of a box (rectangular distribution): its middle 95.45 %, 0.9545·√3 = 1.653
    /// (EA-4/02 S9 does the same for 95 %). A box has no tails, so 2 standard uncertainties would reach beyond it.</summary>
    public static double BoxFactor { get; } = Probability * Math.Sqrt(3);

    /// <summary>The coverage factor k for given effective degrees of freedom.</summary>
    /// <remarks>JCGM 100:2008, G.4.1 lets a fractional number of degrees of freedom be truncated or interpolated.
    /// Here the t distribution is evaluated at the fractional number itself, so that k never jumps.</remarks>
    /// <param name="degreesOfFreedom">1 or more, or infinity.</param>
    public static double Factor(double degreesOfFreedom) => StudentDistribution.Factor(BothTails, 2, degreesOfFreedom);

    /// <summary>The coverage factor for another coverage; for <see cref="Probability"/> exactly that above.</summary>
    /// <param name="coverage">Above 0 and below 1.</param>
    /// <param name="degreesOfFreedom">1 or more, or infinity.</param>
    public static double Factor(double coverage, double degreesOfFreedom) => coverage == Probability
        ? Factor(degreesOfFreedom)
        : StudentDistribution.Factor(coverage, degreesOfFreedom);
}
