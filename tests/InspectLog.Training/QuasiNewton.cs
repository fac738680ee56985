namespace InspectLog.Training;

/// <summary>Finds the least of a smooth function by limited-memory BFGS (Nocedal and Wright, Numerical Optimization, algorithm
/// 7.5) with a line search that halves the step until the function falls enough (Armijo).</summary>
/// <param name="function">The function: its value, and its gradient written into the second argument.</param>
internal sealed class QuasiNewton(Func<double[], double[], double> function)
{
    private const int Memory = 8;
    private const int MostHalvings = 20;
    private const double Enough = 1e-4;
    private const double Flat = 1e-6;

    private readonly List<(double[] Step, double[] Slope, double Inverse)> _pairs = [];

    /// <summary>Where it is least, as far as some rounds go.</summary>
    public double[] Minimise(double[] start, int rounds)
    {
        var (at, gradient) = ((double[])start.Clone(), new double[start.Length]);
        var value = function(at, gradient);
        for (var round = 0; round < rounds; round++)
        {
            var direction = Direction(gradient);
            var descent = Dot(direction, gradient);
            if (descent >= 0)
            {
                _pairs.Clear();
                direction = [.. gradient.Select(slope => -slope)];
                descent = -Dot(gradient, gradient);
            }

            var length = _pairs.Count > 0 ? 1 : 1 / Math.Max(1, Math.Sqrt(-descent));
            var (next, slope, fallen) = Search(at, value, direction, descent, length);
            if (next is null)
            {
                break;
            }

            Remember(at, next, gradient, slope);
            var gain = value - fallen;
            (at, gradient, value) = (next, slope, fallen);
            if (gain < Flat * Math.Max(1, Math.Abs(value)))
            {
                break;
            }
        }

        return at;
    }

    private (double[]? Next, double[] Slope, double Value) Search(double[] at, double value, double[] direction, double descent, double length)
    {
        var slope = new double[at.Length];
        for (var halving = 0; halving < MostHalvings; halving++, length /= 2)
        {
            var next = new double[at.Length];
            for (var one = 0; one < at.Length; one++)
            {
                next[one] = at[one] + length * direction[one];
            }

            var fallen = function(next, slope);
            if (fallen <= value + Enough * length * descent)
            {
                return (next, slope, fallen);
            }
        }

        return (null, slope, value);
    }

    private double[] Direction(double[] gradient)
    {
        var direction = (double[])gradient.Clone();
        var weights = new double[_pairs.Count];
        for (var pair = _pairs.Count - 1; pair >= 0; pair--)
        {
            weights[pair] = _pairs[pair].Inverse * Dot(_pairs[pair].Step, direction);
            AddTo(direction, _pairs[pair].Slope, -weights[pair]);
        }

        if (_pairs.Count > 0)
        {
            var (step, slope, _) = _pairs[^1];
            var scale = Dot(step, slope) / Dot(slope, slope);
            for (var one = 0; one < direction.Length; one++)
            {
                direction[one] *= scale;
            }
        }

        for (var pair = 0; pair < _pairs.Count; pair++)
        {
            AddTo(direction, _pairs[pair].Step, weights[pair] - _pairs[pair].Inverse * Dot(_pairs[pair].Slope, direction));
        }

        for (var one = 0; one < direction.Length; one++)
        {
            direction[one] = -direction[one];
        }

        return direction;
    }

    private void Remember(double[] at, double[] next, double[] before, double[] after)
    {
        var (step, slope) = (new double[at.Length], new double[at.Length]);
        for (var one = 0; one < at.Length; one++)
        {
            (step[one], slope[one]) = (next[one] - at[one], after[one] - before[one]);
        }

        var curve = Dot(step, slope);
        if (curve > 1e-12)
        {
            _pairs.Add((step, slope, 1 / curve));
            if (_pairs.Count > Memory)
            {
                _pairs.RemoveAt(0);
            }
        }
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var one = 0; one < a.Length; one++)
        {
            sum += a[one] * b[one];
        }

        return sum;
    }

    private static void AddTo(double[] to, double[] what, double times)
    {
        for (var one = 0; one < to.Length; one++)
        {
            to[one] += times * what[one];
        }
    }
}

/// <summary>How many processors the training takes. The result does not depend on it.</summary>
internal static class Workers
{
    public static ParallelOptions Options { get; } = new() { MaxDegreeOfParallelism = Math.Clamp(Environment.ProcessorCount, 1, 2) };
}
