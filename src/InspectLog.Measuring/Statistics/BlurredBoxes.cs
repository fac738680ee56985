namespace InspectLog.Measuring;

/// <summary>The sum of a normal distribution and up to two boxes (rectangular distributions) about 0: how much of it lies
/// above a place, and its density there.</summary>
/// <remarks>Integrating the tail Q of a normal distribution once over a box leaves differences of
/// M₁(d) = σφ(d/σ) − d·Q(d/σ), twice over two boxes differences of M₂(d) = ½((σ² + d²)·Q(d/σ) − dσφ(d/σ)). A box far
/// narrower than the normal goes into its variance instead, where the differences would lose their digits; what that
/// changes is below 1 part in 10¹¹.</remarks>
internal readonly struct BlurredBoxes
{
    // A box narrower than this share of the normal's standard deviation.
    private const double Narrow = 0.005;

    // A box narrower than this share of the other box.
    private const double Sliver = 1e-6;

    // Standard deviations beyond which a tail is too small for a number.
    private const double NothingBeyond = 39;

    private readonly double _sigma;
    private readonly double _wide;
    private readonly double _other;

    /// <param name="sigma">Standard deviation of the normal, above 0.</param>
    /// <param name="wide">Half-width of the wider box, 0 or more.</param>
    /// <param name="other">Half-width of the other, 0 or more, at most <paramref name="wide"/>.</param>
    internal BlurredBoxes(double sigma, double wide, double other)
    {
        if (wide <= Narrow * sigma)
        {
            (_sigma, _wide, _other) = (Math.Sqrt((sigma * sigma) + (((wide * wide) + (other * other)) / 3)), 0, 0);
        }
        else if (other <= Narrow * sigma || other <= Sliver * wide)
        {
            (_sigma, _wide, _other) = (Math.Sqrt((sigma * sigma) + (other * other / 3)), wide, 0);
        }
        else
        {
            (_sigma, _wide, _other) = (sigma, wide, other);
        }
    }

    /// <summary>What lies above a place, 0 to ½, and the density there.</summary>
    /// <param name="x">The place, 0 or more.</param>
    internal (double Above, double Density) At(double x)
    {
        if (_wide == 0)
        {
            var z = x / _sigma;
            return (NormalDistribution.Above(z), NormalDistribution.Density(z) / _sigma);
        }

        return _other == 0 ? OverOne(x) : OverTwo(x);
    }

    private (double Above, double Density) OverOne(double x)
    {
        var near = Tails.At(x - _wide, _sigma);
        var far = Tails.At(x + _wide, _sigma);
        var width = 2 * _wide;
        return ((near.Once - far.Once) / width, (near.Tail - far.Tail) / width);
    }

    private (double Above, double Density) OverTwo(double x)
    {
        var (all, rest) = (_wide + _other, _wide - _other);
        var first = Tails.At(x - all, _sigma);
        var second = Tails.At(x - rest, _sigma);
        var third = Tails.At(x + rest, _sigma);
        var fourth = Tails.At(x + all, _sigma);
        var area = 4 * _wide * _other;
        return (
            (first.Twice - second.Twice - (third.Twice - fourth.Twice)) / area,
            (first.Once - second.Once - (third.Once - fourth.Once)) / area);
    }

    // The tail of the normal above d, and its first and second integral from d on.
    private readonly record struct Tails(double Tail, double Once, double Twice)
    {
        internal static Tails At(double d, double sigma)
        {
            var z = d / sigma;
            if (z > NothingBeyond)
            {
                return default;
            }

            var tail = NormalDistribution.Above(z);
            var bell = sigma * NormalDistribution.Density(z);
            return new(tail, bell - (d * tail), (((sigma * sigma) + (d * d)) * tail - (d * bell)) / 2);
        }
    }
}
