using MathNet.Numerics;

namespace InspectLog.Measuring;

/// <summary>A mixture of normals: their standard deviations and how likely each is.</summary>
/// <param name="sigmas">Standard deviations, above 0.</param>
/// <param name="weights">Their weights, which add up to 1.</param>
internal readonly ref struct SpreadNodes(ReadOnlySpan<double> sigmas, ReadOnlySpan<double> weights)
{
    // Of the standard deviation: boxes this narrow count by their variance alone, which changes what is above by less than 2
    // parts in 10⁹.
    private const double Narrow = 0.02;

    // Standard deviations within which three terms of the series are good to 1 part in 10¹².
    private const double Close = 0.01;

    private readonly ReadOnlySpan<double> _sigmas = sigmas;
    private readonly ReadOnlySpan<double> _weights = weights;

    /// <summary>How many; 0 where there is no mixture.</summary>
    internal int Count => _sigmas.Length;

    /// <summary>What lies above a place of the mixture with two boxes added, and the density there.</summary>
    /// <param name="x">The place, 0 or more.</param>
    /// <param name="boxes">Half-widths of the boxes, the wider first.</param>
    internal (double Above, double Density) Tail(double x, (double Wide, double Other) boxes)
    {
        var (above, density) = (0.0, 0.0);
        for (var i = 0; i < _sigmas.Length; i++)
        {
            if (_weights[i] > 0)
            {
                var part = Part(x, _sigmas[i], boxes);
                above += _weights[i] * part.Above;
                density += _weights[i] * part.Density;
            }
        }

        return (above, density);
    }

    // Most of the normals that t is made of are far wider than all else, and cheap.
    private static (double Above, double Density) Part(double x, double sigma, (double Wide, double Other) boxes)
    {
        if (boxes.Wide > Narrow * sigma)
        {
            return new BlurredBoxes(sigma, boxes.Wide, boxes.Other).At(x);
        }

        var all = Math.Sqrt((sigma * sigma) + (((boxes.Wide * boxes.Wide) + (boxes.Other * boxes.Other)) / 3));
        var z = x / all;
        return z > Close
            ? (NormalDistribution.Above(z), NormalDistribution.Density(z) / all)
            : (0.5 - (z * (1 - (z * z / 6)) / Constants.Sqrt2Pi), (1 - (z * z / 2)) / (Constants.Sqrt2Pi * all));
    }
}
