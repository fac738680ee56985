using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace InspectLog.Measuring;

/// <summary>The standard normal distribution, with tails computed as tails so that small risks keep their digits.</summary>
public static class NormalDistribution
{
    /// <summary>Probability, 0 to 1, of a value at or below <paramref name="z"/>.</summary>
    public static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / Constants.Sqrt2);

    /// <summary>Probability, 0 to 1, of a value above <paramref name="z"/>.</summary>
    public static double Above(double z) => Below(-z);

    /// <summary>Probability density at a value.</summary>
    internal static double Density(double z) => Math.Exp(-z * z / 2) / Constants.Sqrt2Pi;

    /// <summary>Probability, 0 to 1, of a value from <paramref name="from"/> to <paramref name="to"/>.</summary>
    /// <param name="from">Lower end; negative infinity for none.</param>
    /// <param name="to">Upper end, not below <paramref name="from"/>; infinity for none.</param>
    public static double Between(double from, double to) =>
        from > 0 ? Above(from) - Above(to) : Below(to) - Below(from);

    /// <summary>The value that a share <paramref name="probability"/> of the distribution lies below.</summary>
    /// <param name="probability">From 0 (negative infinity) to 1 (infinity).</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside 0 to 1, or not a number.</exception>
    public static double Quantile(double probability)
    {
        if (!(probability is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), "A probability lies from 0 to 1.");
        }

        return Normal.InvCDF(0, 1, probability);
    }
}
