using System.Diagnostics.CodeAnalysis;

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

    /// <summary>Reads an accuracy as data sheets write it: <c>0.8%+3</c>, <c>±(0.8 % + 3 digits)</c>, <c>2%</c>,
    /// <c>+3</c>.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="accuracy">The accuracy, where the text is one.</param>
    /// <param name="problem">Otherwise what is wrong and what to do, in one or two sentences.</param>
    public static bool TryParse(
        string? text, [NotNullWhen(true)] out Accuracy? accuracy, [NotNullWhen(false)] out string? problem) =>
        AccuracyText.TryRead(text, out accuracy, out problem);

    /// <summary>As data sheets write it, readable by <see cref="TryParse"/>: <c>±(0.8 % + 3)</c>.</summary>
    public override string ToString() => AccuracyText.Write(this);
}
