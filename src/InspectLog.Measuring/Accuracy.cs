namespace InspectLog.Measuring;

/// <summary>The accuracy a meter's maker states, as ±(percent of reading + counts of the last digit).</summary>
/// <param name="PercentOfReading">Percent of the reading, 0 or more: 0.8 for 0.8 %.</param>
/// <param name="Counts">Counts of the last displayed digit, 0 or more.</param>
public sealed record Accuracy(double PercentOfReading, double Counts)
{
    /// <summary>The half-width of the stated error span about a reading, in the unit of the reading.</summary>
    /// <param name="value">The reading.</param>
    /// <param name="resolution">The value of one count, in the same unit.</param>
    public double HalfWidth(double value, double resolution) =>
        (PercentOfReading / 100 * Math.Abs(value)) + (Counts * resolution);
}
