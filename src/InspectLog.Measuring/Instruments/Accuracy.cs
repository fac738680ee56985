using System.Diagnostics.CodeAnalysis;

namespace InspectLog.Measuring;

/// <summary>The accuracy a meter's maker states: ± a sum of a share of the reading, a share of the range, counts of the last
/// digit and a fixed size, each of which may be none.</summary>
/// <param name="PercentOfReading">Percent of the reading, 0 or more: 0.8 for 0.8 %.</param>
/// <param name="Counts">Counts of the last displayed digit, 0 or more.</param>
public sealed record Accuracy(double PercentOfReading, double Counts)
{
    /// <summary>Percent of the range's full scale, above 0; null for none.</summary>
    public double? PercentOfRange { get; init => field = value is 0 ? null : value; }

    /// <summary>A fixed size, in the unit of the reading, above 0; null for none.</summary>
    public double? Fixed { get; init => field = value is 0 ? null : value; }

    /// <summary>The half-width of the stated error span about a reading, in the unit of the reading.</summary>
    /// <param name="value">The reading.</param>
    /// <param name="resolution">The value of one count, in the same unit.</param>
    /// <exception cref="ArgumentException">It has a share of a range, and no range is known: see <see cref="On"/>.</exception>
    public double HalfWidth(double value, double resolution) => PercentOfRange is null
        ? (PercentOfReading / 100 * Math.Abs(value)) + (Counts * resolution) + Fixed.GetValueOrDefault()
        : throw new ArgumentException("The accuracy has a percentage of the range, so the range's largest value is needed.");

    /// <summary>The same accuracy on one range: the share of the range is a fixed size then.</summary>
    /// <param name="fullScale">The largest value of the range, in the unit of the reading; null where it is not known.</param>
    public Accuracy On(double? fullScale) => (PercentOfRange, fullScale) is ({ } percent, { } full)
        ? this with { PercentOfRange = null, Fixed = Fixed.GetValueOrDefault() + (percent / 100 * full) }
        : this;

    /// <summary>Each of its terms so many times as large.</summary>
    /// <param name="factor">How many times, 0 or more.</param>
    public Accuracy Times(double factor) => new(PercentOfReading * factor, Counts * factor)
    {
        PercentOfRange = PercentOfRange * factor,
        Fixed = Fixed * factor,
    };

    /// <summary>The sum of two accuracies, term by term: the span that holds the errors of both.</summary>
    public Accuracy Plus(Accuracy other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new(PercentOfReading + other.PercentOfReading, Counts + other.Counts)
        {
            PercentOfRange = PercentOfRange.GetValueOrDefault() + other.PercentOfRange.GetValueOrDefault(),
            Fixed = Fixed.GetValueOrDefault() + other.Fixed.GetValueOrDefault(),
        };
    }

    /// <summary>Reads an accuracy as data sheets write it: <c>0.8%+3</c>, <c>±(0.8 % + 3 digits)</c>, <c>2%</c>,
    /// <c>+3</c>, <c>0.5% rdg + 0.1% rng + 2 + 0.05 Ω</c>. The terms may stand in any order.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="kind">What the instrument measures: the units a fixed size may have; null where none may.</param>
    /// <param name="accuracy">The accuracy, where the text is one, with a fixed size in the base unit.</param>
    /// <param name="problem">Otherwise what is wrong and what to do, in one or two sentences.</param>
    public static bool TryParse(
        string? text,
        QuantityKind? kind,
        [NotNullWhen(true)] out Accuracy? accuracy,
        [NotNullWhen(false)] out string? problem) =>
        AccuracyText.TryRead(text, kind, out accuracy, out problem);

    /// <summary>As data sheets write it, readable by <see cref="TryParse"/>: <c>±(0.8 % + 3)</c>,
    /// <c>±(0.5 % + 0.1 % of range + 2 + 0.05 Ω)</c>.</summary>
    /// <param name="unit">The unit to write a fixed size in.</param>
    public string Written(Unit unit) => AccuracyText.Write(this, unit);
}
