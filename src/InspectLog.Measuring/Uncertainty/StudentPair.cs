using System.Numerics;
using MathNet.Numerics;

namespace InspectLog.Measuring;

/// <summary>The sum of two t as a mixture of normals: the variances that occur, and how likely each is, in one sum instead of
/// one sum in another.</summary>
/// <remarks>With e^W the variance of both together and the shares q and 1 − q of it that each has, ln(q/(1 − q)) = u, the
/// density of W is the integral over u of both densities (see <see cref="StudentMixture"/>) at ln s₁² − W − ln q and
/// ln s₂² − W − ln(1 − q); the substitution has a Jacobian of 1. Both sums are trapezoidal rules on functions that are
/// smooth and fall off at both ends.</remarks>
internal static class StudentPair
{
    /// <summary>Room for the nodes of any pair that is worked out here.</summary>
    internal const int MostNodes = 512;

    private const int MostShares = 1024;
    private const double WidestStep = 0.4;
    private const double Reach = 24;

    // With more degrees of freedom together, the nodes lie so close that one sum in another is no dearer.
    private const double MostDegrees = 40;

    /// <summary>Fills in standard deviations and weights; gives their number, 0 where the pair is not one for this.</summary>
    /// <param name="distribution">A distribution with two t.</param>
    /// <param name="sigmas">Standard deviations, the normal part included.</param>
    /// <param name="weights">Their weights.</param>
    internal static int Fill(in MeasurandDistribution distribution, Span<double> sigmas, Span<double> weights)
    {
        if (!(distribution.DegreesOfFreedom + distribution.OtherDegreesOfFreedom <= MostDegrees))
        {
            return 0;
        }

        // In units of the larger scale, so that nothing overflows.
        var size = Math.Max(distribution.StudentScale, distribution.OtherScale);
        var one = new Part(distribution.StudentScale / size, distribution.DegreesOfFreedom);
        var two = new Part(distribution.OtherScale / size, distribution.OtherDegreesOfFreedom);
        var step = Math.Min(WidestStep, 0.65 / Math.Sqrt(one.Half + two.Half));
        var from = Math.Log((one.Variance * Math.Exp(-one.Highest)) + (two.Variance * Math.Exp(-two.Highest)));
        var to = Math.Max(one.LogVariance - one.Lowest, two.LogVariance - two.Lowest);
        var count = (int)((to - from) / step) + 1;
        Span<double> rises = stackalloc double[MostShares];
        Span<double> falls = stackalloc double[MostShares];
        var shares = Shares.Over(one, two, to, rises, falls);
        if (count > MostNodes || shares.Count == 0)
        {
            return 0;
        }

        var normal = distribution.Normal / size;
        for (var i = 0; i < count; i++)
        {
            var w = from + (i * step);
            sigmas[i] = size * Math.Sqrt(Math.Exp(w) + (normal * normal));
            weights[i] = step * shares.DensityAt(w, one, two);
        }

        return count;
    }

    // One of the two: χ²/ν = eᵛ has the log density LogScale + Half·(v − eᵛ), next to nothing outside Lowest to Highest.
    private readonly struct Part
    {
        internal Part(double scale, double degreesOfFreedom)
        {
            Half = degreesOfFreedom / 2;
            Variance = scale * scale;
            LogVariance = Math.Log(Variance);
            LogScale = (Half * Math.Log(Half)) - SpecialFunctions.GammaLn(Half);
            Highest = Math.Log(1 + (Reach / Half) + Math.Sqrt(2 * Reach / Half));
            Lowest = -(Reach / Half) - Math.Sqrt(2 * Reach / Half);
        }

        internal double Half { get; }

        internal double Variance { get; }

        internal double LogVariance { get; }

        internal double LogScale { get; }

        internal double Highest { get; }

        internal double Lowest { get; }
    }

    // Places u at which the variance is shared, with what does not change with W: the integrand is
    // exp(rise − fall·e⁻ᵂ − (h₁ + h₂)·W).
    private readonly ref struct Shares
    {
        private readonly ReadOnlySpan<double> _rises;
        private readonly ReadOnlySpan<double> _falls;
        private readonly double _from;
        private readonly double _step;

        private Shares(ReadOnlySpan<double> rises, ReadOnlySpan<double> falls, double from, double step)
        {
            _rises = rises;
            _falls = falls;
            _from = from;
            _step = step;
        }

        internal int Count => _rises.Length;

        internal static Shares Over(in Part one, in Part two, double highestW, Span<double> rises, Span<double> falls)
        {
            var step = Math.Min(WidestStep, 0.65 / Math.Sqrt(Math.Max(one.Half, two.Half)));
            var from = -(one.Highest + highestW - one.LogVariance);
            var count = (int)((two.Highest + highestW - two.LogVariance - from) / step) + 1;
            if (count > MostShares)
            {
                return default;
            }

            var level = one.LogScale + two.LogScale + (one.Half * one.LogVariance) + (two.Half * two.LogVariance);
            for (var i = 0; i < count; i++)
            {
                var u = from + (i * step);
                var (ofOne, ofTwo) = (Math.Exp(-u), Math.Exp(u));
                rises[i] = level + (one.Half * LogOnePlus(ofOne, -u)) + (two.Half * LogOnePlus(ofTwo, u));
                falls[i] = (one.Half * one.Variance * (1 + ofOne)) + (two.Half * two.Variance * (1 + ofTwo));
            }

            return new(rises[..count], falls[..count], from, step);
        }

        internal double DensityAt(double w, in Part one, in Part two)
        {
            // Outside, one of the two is where its density is next to nothing.
            var low = Math.Max(-Logit(one.Highest + w - one.LogVariance), Logit(two.Lowest + w - two.LogVariance));
            var high = Math.Min(Logit(two.Highest + w - two.LogVariance), -Logit(one.Lowest + w - one.LogVariance));
            if (!(high > low))
            {
                return 0;
            }

            var first = Math.Clamp((int)Math.Floor((low - _from) / _step), 0, Count);
            var last = Math.Clamp((int)Math.Ceiling((high - _from) / _step) + 1, first, Count);
            return _step * Sum(_rises[first..last], _falls[first..last], -(one.Half + two.Half) * w, Math.Exp(-w));
        }

        private static double Sum(ReadOnlySpan<double> rises, ReadOnlySpan<double> falls, double level, double shrink)
        {
            var sums = Vector<double>.Zero;
            var (levels, shrinks) = (new Vector<double>(level), new Vector<double>(shrink));
            var i = 0;
            for (; i <= rises.Length - Vector<double>.Count; i += Vector<double>.Count)
            {
                sums += Vector.Exp(new Vector<double>(rises[i..]) + levels - (new Vector<double>(falls[i..]) * shrinks));
            }

            var sum = Vector.Sum(sums);
            for (; i < rises.Length; i++)
            {
                sum += Math.Exp(rises[i] + level - (falls[i] * shrink));
            }

            return sum;
        }

        // u where ln(1 + eᵘ) is so much; −∞ where it never is as little.
        private static double Logit(double log) => log > 30 ? log : log > 0 ? Math.Log(Math.Exp(log) - 1) : double.NegativeInfinity;

        private static double LogOnePlus(double exponential, double log) => log > 40 ? log : Math.Log(1 + exponential);
    }
}
