using MathNet.Numerics;

namespace InspectLog.Measuring;

/// <summary>Student's t distribution, as far as coverage factors need it. Degrees of freedom need not be whole
/// (JCGM 100:2008, G.4.1), are at least 1, and may be infinite.</summary>
public static class StudentDistribution
{
    // From here on the incomplete beta function loses digits, and the tail of a normal at a place a little nearer is exact to
    // the last one.
    private const double NormalFrom = 1e6;

    // From here on the series in 1/ν is exact to the last digit, and the incomplete beta function starts to lose some.
    private const double SeriesFrom = 1000;

    /// <summary>Probability, 0 to 1, of a value farther than <paramref name="t"/> from 0 on either side.</summary>
    /// <param name="t">0 or more.</param>
    /// <param name="degreesOfFreedom">1 or more, or infinity.</param>
    public static double BothTails(double t, double degreesOfFreedom) =>
        double.IsPositiveInfinity(degreesOfFreedom) ? 2 * NormalDistribution.Above(t)
            : degreesOfFreedom >= NormalFrom ? 2 * NormalDistribution.Above(NormalPlace(t, degreesOfFreedom))
            : SpecialFunctions.BetaRegularized(
                degreesOfFreedom / 2, 0.5, degreesOfFreedom / (degreesOfFreedom + (t * t)));

    /// <summary>Probability density at a value.</summary>
    internal static double Density(double t, double degreesOfFreedom) => degreesOfFreedom >= NormalFrom
        ? NormalDistribution.Density(t)
        : Math.Exp(LogDensityScale(degreesOfFreedom) - ((degreesOfFreedom + 1) / 2 * Math.Log(1 + (t * t / degreesOfFreedom))));

    private static double LogDensityScale(double nu) =>
        SpecialFunctions.GammaLn((nu + 1) / 2) - SpecialFunctions.GammaLn(nu / 2) - (0.5 * Math.Log(nu * Math.PI));

    /// <summary>The factor t for which a share <paramref name="coverage"/> of the distribution lies within ±t.</summary>
    /// <param name="coverage">Above 0 and below 1: 0.95 for 95 %.</param>
    /// <param name="degreesOfFreedom">1 or more, or infinity.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of the two lies outside its range.</exception>
    public static double Factor(double coverage, double degreesOfFreedom)
    {
        if (!(coverage is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(coverage), "A coverage lies between 0 and 1.");
        }

        return Factor(1 - coverage, -NormalDistribution.Quantile((1 - coverage) / 2), degreesOfFreedom);
    }

    /// <summary>As <see cref="Factor(double, double)"/>, with the tails and the normal factor already known.</summary>
    internal static double Factor(double bothTails, double normalFactor, double degreesOfFreedom)
    {
        if (!(degreesOfFreedom >= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), "There must be 1 degree of freedom or more.");
        }

        var start = Series(normalFactor, degreesOfFreedom);
        return degreesOfFreedom >= SeriesFrom ? start : Solve(bothTails, start, degreesOfFreedom);
    }

    // Abramowitz and Stegun 26.7.8.
    private static double NormalPlace(double t, double nu) => t * (1 - (1 / (4 * nu))) / Math.Sqrt(1 + (t * t / (2 * nu)));

    // Abramowitz and Stegun 26.7.5: t as a series in 1/ν about the normal factor.
    private static double Series(double z, double nu)
    {
        var z2 = z * z;
        var g1 = z * (z2 + 1) / 4;
        var g2 = z * ((((5 * z2) + 16) * z2) + 3) / 96;
        var g3 = z * ((((((3 * z2) + 19) * z2) + 17) * z2) - 15) / 384;
        var g4 = z * ((((((((79 * z2) + 776) * z2) + 1482) * z2) - 1920) * z2) - 945) / 92160;
        return z + ((g1 + ((g2 + ((g3 + (g4 / nu)) / nu)) / nu)) / nu);
    }

    // Halley's method on the logarithm of the tails against the logarithm of t. That curve is concave and falls, and near
    // straight where tails are heavy, so the iterates cannot run away; the error goes with the cube of the step before.
    private static double Solve(double bothTails, double start, double nu)
    {
        var logDensityScale = LogDensityScale(nu);
        var t = start;
        for (var step = 0; step < 60; step++)
        {
            var tails = BothTails(t, nu);
            var density = Math.Exp(logDensityScale - ((nu + 1) / 2 * Math.Log(1 + (t * t / nu))));
            var value = Math.Log(tails / bothTails);
            var slope = -2 * density * t / tails;
            var curvature = slope * (1 - ((nu + 1) * t * t / (nu + (t * t))) - slope);
            var change = -2 * value * slope / ((2 * slope * slope) - (value * curvature));
            t *= Math.Exp(change);
            if (Math.Abs(change) < 1e-5)
            {
                break;
            }
        }

        return t;
    }
}
