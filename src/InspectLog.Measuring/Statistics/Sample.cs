namespace InspectLog.Measuring;

/// <summary>Mean and spread of repeated readings (JCGM 100:2008, 4.2).</summary>
/// <param name="Count">How many readings, 1 or more.</param>
/// <param name="Mean">Their arithmetic mean.</param>
/// <param name="StandardDeviation">Their experimental standard deviation s; 0 for a single reading.</param>
public readonly record struct Sample(int Count, double Mean, double StandardDeviation)
{
    /// <summary>Experimental standard deviation of the mean, s/√n.</summary>
    public double StandardDeviationOfMean => StandardDeviation / Math.Sqrt(Count);

    /// <summary>Describes one or more finite values.</summary>
    /// <exception cref="ArgumentException">There is none, one is not finite, or they are too large to add.</exception>
    public static Sample Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0)
        {
            throw new ArgumentException("Give at least one value.");
        }

        var mean = MeanOf(values);
        var deviation = values.Count == 1 ? 0 : Math.Sqrt(SumOfSquares(values, mean) / (values.Count - 1));
        if (!double.IsFinite(mean) || !double.IsFinite(deviation))
        {
            throw new ArgumentException("The values are too large to work with.");
        }

        return new Sample(values.Count, mean, deviation);
    }

    // A second pass over the deviations takes back what the first sum lost to rounding.
    private static double MeanOf(IReadOnlyList<double> values)
    {
        var sum = 0.0;
        for (var i = 0; i < values.Count; i++)
        {
            if (!double.IsFinite(values[i]))
            {
                throw new ArgumentException("A value must be a finite number.");
            }

            sum += values[i];
        }

        var first = sum / values.Count;
        var rest = 0.0;
        for (var i = 0; i < values.Count; i++)
        {
            rest += values[i] - first;
        }

        return first + (rest / values.Count);
    }

    private static double SumOfSquares(IReadOnlyList<double> values, double mean)
    {
        var squares = 0.0;
        var rest = 0.0;
        for (var i = 0; i < values.Count; i++)
        {
            var deviation = values[i] - mean;
            squares += deviation * deviation;
            rest += deviation;
        }

        return Math.Max(0, squares - (rest * rest / values.Count));
    }
}
