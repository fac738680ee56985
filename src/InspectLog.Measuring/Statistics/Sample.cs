namespace InspectLog.Measuring;

/// <summary>Mean and spread of repeated readings (JCGM 100:2008, 4.2).</summary>
/// <param name="Count">How many readings, 1 or more.</param>
/// <param name="Mean">Their arithmetic mean.</param>
/// <param name="StandardDeviation">Their experimental standard deviation s; 0 for a single reading.</param>
public readonly record struct Sample(int Count, double Mean, double StandardDeviation)
{
    /// <summary>Experimental standard deviation of the mean, s/√n.</summary>
    public double StandardDeviationOfMean => StandardDeviation / Math.Sqrt(Count);

    // The mean in two parts, since a mean far from 0 has no room for all the digits of a small spread about it.
    private double Origin { get; init; }

    private double Offset { get; init; } = Mean;

    /// <summary>How far a value lies from the mean.</summary>
    internal double Deviation(double value) => Difference.Of(value, Origin) - Offset;

    /// <summary>Describes one or more finite values.</summary>
    /// <exception cref="ArgumentException">There is none, one is not finite, or they are too large to add.</exception>
    public static Sample Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0)
        {
            throw new ArgumentException("Give at least one value.");
        }

        var origin = values[0];
        var offset = MeanFrom(origin, values);
        var deviation = values.Count == 1 ? 0 : Math.Sqrt(SumOfSquares(values, origin, offset) / (values.Count - 1));
        var mean = origin + offset;
        if (!double.IsFinite(mean) || !double.IsFinite(deviation))
        {
            throw new ArgumentException("The values are too large to work with.");
        }

        return new Sample(values.Count, mean, deviation) { Origin = origin, Offset = offset };
    }

    // The mean, counted from the first value.
    private static double MeanFrom(double origin, IReadOnlyList<double> values)
    {
        var sum = 0.0;
        for (var i = 0; i < values.Count; i++)
        {
            if (!double.IsFinite(values[i]))
            {
                throw new ArgumentException("A value must be a finite number.");
            }

            sum += Difference.Of(values[i], origin);
        }

        return sum / values.Count;
    }

    // Less what the deviations do not quite add up to, which is the rounding of the mean.
    private static double SumOfSquares(IReadOnlyList<double> values, double origin, double offset)
    {
        var squares = 0.0;
        var rest = 0.0;
        for (var i = 0; i < values.Count; i++)
        {
            var deviation = Difference.Of(values[i], origin) - offset;
            squares += deviation * deviation;
            rest += deviation;
        }

        return Math.Max(0, squares - (rest * rest / values.Count));
    }
}
