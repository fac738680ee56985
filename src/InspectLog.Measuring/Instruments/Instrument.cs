namespace InspectLog.Measuring;

/// <summary>A measuring instrument, as far as its readings' uncertainty depends on it.</summary>
/// <param name="Id">A short name of its own within the workshop: letters, digits and hyphens.</param>
/// <param name="Name">What the technician calls it.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Accuracy">The maker's stated accuracy, on the range in use where it has several.</param>
/// <param name="Resolution">The smallest step it displays, in the base unit of <paramref name="Kind"/>; above 0.</param>
public sealed record Instrument(string Id, string Name, QuantityKind Kind, Accuracy Accuracy, double Resolution)
{
    /// <summary>Its ranges; null where none are known. One alone is the range in use; of several, the one with the
    /// instrument's own accuracy and step.</summary>
    public IReadOnlyList<MeterRange>? Ranges { get; init; }

    /// <summary>Whether it chooses its range by itself; null for no.</summary>
    public bool? AutoRange { get; init => field = value is true ? true : null; }

    /// <summary>What the maker's plate calls this one; null where it is not noted.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>The day it was last calibrated; null where it is not noted.</summary>
    public DateOnly? Calibrated { get; init; }

    /// <summary>The last day its calibration is good for; null where none is set.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>What its certificate says is to be added, by rising readings; null where it says nothing.</summary>
    public IReadOnlyList<CalibrationPoint>? Corrections { get; init; }

    /// <summary>The expanded uncertainty (k = 2) of its certificate, base unit, above 0; null where none is noted.</summary>
    public double? CertificateUncertainty { get; init; }

    /// <summary>What a temperature outside the stated ones adds to its accuracy; null where that is not known.</summary>
    public TemperatureTerm? Temperature { get; init; }

    /// <summary>Whether its calibration had run out before a day.</summary>
    public bool IsOverdue(DateOnly day) => Due < day;

    /// <summary>The largest range it can be on as it is: of one that chooses by itself, the largest of all; of another
    /// the one in use. Null where that is not on file.</summary>
    public MeterRange? LargestRange() => AutoRange is true
        ? Ranges?.MaxBy(range => range.FullScale)
        : Ranges is [var only] ? only
        : Ranges?.FirstOrDefault(range => (range.Accuracy, range.Resolution) == (Accuracy, Resolution));

    /// <summary>The instrument on the range it shows values on: where it chooses by itself, the finest that shows them all,
    /// or its largest where none does. Its name then says which. One that does not choose is as it is.</summary>
    /// <param name="values">The values, base unit.</param>
    public Instrument OnRangeFor(IEnumerable<double> values)
    {
        if (AutoRange is not true || Ranges is not [_, ..] ranges)
        {
            return this;
        }

        var largest = values.Select(Math.Abs).DefaultIfEmpty(0).Max();
        return On(ranges.Where(range => range.Shows(largest)).MinBy(range => range.FullScale) ?? ranges.MaxBy(range => range.FullScale)!);
    }

    /// <summary>Its stated accuracy as data sheets write it, a fixed size in the base unit.</summary>
    public string WrittenAccuracy() => Accuracy.Written(Units.BaseOf(Kind));

    /// <summary>Two are equal when they say the same; lists go by what is in them.</summary>
    public bool Equals(Instrument? other) => other is not null
        && Parts().Equals(other.Parts())
        && (Ranges ?? []).SequenceEqual(other.Ranges ?? [])
        && (Corrections ?? []).SequenceEqual(other.Corrections ?? []);

    /// <inheritdoc/>
    public override int GetHashCode() => Parts().GetHashCode();

    private object Parts() =>
        (Id, Name, Kind, Accuracy, Resolution, AutoRange, (SerialNumber, Calibrated, Due, CertificateUncertainty, Temperature));

    /// <summary>The instrument on one of its ranges, which its name then says.</summary>
    public Instrument On(MeterRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        return this with
        {
            Name = $"{Name}, {range.Name} range",
            Accuracy = range.Accuracy,
            Resolution = range.Resolution,
            Ranges = [range],
            AutoRange = null,
        };
    }
}

/// <summary>One range of an instrument.</summary>
/// <param name="Name">What the switch or display calls it: "20 kΩ".</param>
/// <param name="FullScale">The largest value it shows, base unit, above 0.</param>
/// <param name="Accuracy">The maker's stated accuracy on this range.</param>
/// <param name="Resolution">The smallest step it displays, base unit, above 0.</param>
public sealed record MeterRange(string Name, double FullScale, Accuracy Accuracy, double Resolution)
{
    // A value in another unit may differ from the full scale by its binary rounding only.
    private const double Slack = 1 + 1e-12;

    /// <summary>What to call a range: its full scale in the unit that keeps the number short, "20 kΩ".</summary>
    /// <param name="fullScale">The full scale, base unit.</param>
    /// <param name="unit">The unit it was given in; kept where no other of the kind differs by powers of ten only.</param>
    public static string NameOf(double fullScale, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var shortest = Units.Of(unit.Kind)
            .Where(other => other.IsDecimalOf(unit) && other.FromBase(fullScale) >= 1)
            .MinBy(other => other.FromBase(fullScale));
        return Printed.Value(fullScale, shortest ?? unit);
    }

    /// <summary>Whether it shows a value, to either side of zero.</summary>
    public bool Shows(double value) => Math.Abs(value) <= FullScale * Slack;
}
