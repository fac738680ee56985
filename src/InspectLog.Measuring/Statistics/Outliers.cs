namespace InspectLog.Measuring;

/// <summary>The value farthest from the mean, tested by Grubbs' test.</summary>
/// <param name="Index">Its place in the list.</param>
/// <param name="Statistic">G: its distance from the mean in standard deviations.</param>
/// <param name="Critical">The value G must exceed at the chosen level.</param>
/// <param name="Probability">Upper bound of the probability of such a G where all values are alike, 0 to 1.</param>
public readonly record struct GrubbsResult(int Index, double Statistic, double Critical, double Probability)
{
    /// <summary>Whether the value is an outlier at the chosen level.</summary>
    public bool IsOutlier => Statistic > Critical;
}

/// <summary>One step of the generalised test.</summary>
/// <param name="Index">Place in the list of the value taken out at this step.</param>
/// <param name="Statistic">R: its distance from the mean of what was left, in standard deviations.</param>
/// <param name="Critical">λ: the value R must exceed.</param>
public readonly record struct EsdStep(int Index, double Statistic, double Critical);

/// <summary>Finds the odd one out among values that should be alike, such as the cylinders of an engine.</summary>
public static class Outliers
{
    /// <summary>Grubbs' test for one outlier on either side (NIST/SEMATECH e-Handbook 1.3.5.17.1).</summary>
    /// <param name="values">Three or more.</param>
    /// <param name="level">The chance of calling one of a set of like values an outlier, above 0 and below 1.</param>
    /// <returns>The result, or null where the values show no spread.</returns>
    /// <exception cref="ArgumentException">There are fewer than three values, or one is not finite.</exception>
    public static GrubbsResult? Grubbs(IReadOnlyList<double> values, double level = 0.05)
    {
        RefuseFew(values);
        var sample = Sample.Of(values);
        if (sample.StandardDeviation == 0)
        {
            return null;
        }

        var index = Farthest(values, sample);
        var g = Math.Abs(sample.Deviation(values[index])) / sample.StandardDeviation;
        return new(index, g, GrubbsCritical(values.Count, level), GrubbsProbability(g, values.Count));
    }

    /// <summary>The critical value of Grubbs' test for an outlier on either side.</summary>
    /// <param name="count">Number of values, 3 or more.</param>
    /// <param name="level">Level, above 0 and below 1. Twice the level gives the value for one side only.</param>
    public static double GrubbsCritical(int count, double level)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 3);
        var t = StudentDistribution.Factor(1 - (level / count), count - 2);
        return (count - 1) / Math.Sqrt(count) * Math.Sqrt(t * t / (count - 2 + (t * t)));
    }

    /// <summary>The generalised extreme studentised deviate test for up to <paramref name="most"/> outliers (Rosner;
    /// NIST/SEMATECH e-Handbook 1.3.5.17.3), which one outlier does not hide from by another.</summary>
    /// <param name="values">The values; at least two more than <paramref name="most"/>.</param>
    /// <param name="most">The largest number of outliers looked for, 1 or more.</param>
    /// <param name="level">The chance of calling one of a set of like values an outlier, above 0 and below 1.</param>
    /// <returns>The steps, one a value taken out, and how many of these are outliers. Fewer steps than asked for where
    /// what is left shows no spread.</returns>
    /// <exception cref="ArgumentException">There are too few values, or one is not finite.</exception>
    public static (IReadOnlyList<EsdStep> Steps, int Count) GeneralisedEsd(
        IReadOnlyList<double> values, int most, double level = 0.05)
    {
        RefuseFew(values);
        if (most < 1 || most > values.Count - 2)
        {
            throw new ArgumentException("Look for at least one outlier, and leave two more values than that.");
        }

        var left = values.Select((value, index) => (Value: value, Index: index)).ToList();
        var steps = new List<EsdStep>(most);
        var count = 0;
        while (steps.Count < most)
        {
            double[] rest = [.. left.Select(item => item.Value)];
            var sample = Sample.Of(rest);
            if (sample.StandardDeviation == 0)
            {
                break;
            }

            var farthest = Farthest(rest, sample);
            var r = Math.Abs(sample.Deviation(rest[farthest])) / sample.StandardDeviation;
            steps.Add(new(left[farthest].Index, r, GrubbsCritical(left.Count, level)));
            count = r > steps[^1].Critical ? steps.Count : count;
            left.RemoveAt(farthest);
        }

        return (steps, count);
    }

    /// <summary>Modified z-scores 0.6745·(x − median)/MAD (Iglewicz and Hoaglin): beyond ±3.5 a value is an outlier. They
    /// do not care how far out the outliers are.</summary>
    /// <param name="values">Three or more.</param>
    /// <returns>A score a value; or null where more than half the values are equal, so that there is no spread to judge
    /// by.</returns>
    /// <exception cref="ArgumentException">There are fewer than three values, or one is not finite.</exception>
    public static IReadOnlyList<double>? ModifiedZ(IReadOnlyList<double> values)
    {
        RefuseFew(values);
        _ = Sample.Of(values);
        var median = Median(values);
        var spread = Median([.. values.Select(value => Math.Abs(value - median))]);
        return spread == 0 ? null : [.. values.Select(value => 0.6745 * (value - median) / spread)];
    }

    /// <summary>The median of one or more values.</summary>
    public static double Median(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        double[] sorted = [.. values.Order()];
        var middle = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    // The critical value solved for the level: the chance that any of n values lies so far out, on either side.
    private static double GrubbsProbability(double g, int count)
    {
        var left = (double)(count - 1) * (count - 1) / count / (g * g) - 1;
        var t = left > 0 ? Math.Sqrt((count - 2) / left) : double.PositiveInfinity;
        return Math.Min(1, count * StudentDistribution.BothTails(t, count - 2));
    }

    private static int Farthest(IReadOnlyList<double> values, Sample sample) =>
        Enumerable.Range(0, values.Count).MaxBy(i => Math.Abs(sample.Deviation(values[i])));

    private static void RefuseFew(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count < 3)
        {
            throw new ArgumentException("Three values or more are needed to say that one of them is odd.");
        }
    }
}
