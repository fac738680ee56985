namespace InspectLog.Measuring;

/// <summary>A measuring instrument, as far as its readings' uncertainty depends on it.</summary>
/// <param name="Id">A short name of its own within the workshop: letters, digits and hyphens.</param>
/// <param name="Name">What the technician calls it.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Accuracy">The maker's stated accuracy.</param>
/// <param name="Resolution">The smallest step it displays, in the base unit of <paramref name="Kind"/>; above 0.</param>
public sealed record Instrument(string Id, string Name, QuantityKind Kind, Accuracy Accuracy, double Resolution)
{
    /// <summary>Its ranges, where it has several; null for one alone.</summary>
    public IReadOnlyList<MeterRange>? Ranges { get; init; }
}

/// <summary>One range of an instrument.</summary>
/// <param name="Name">What the switch or display calls it: "20 kΩ".</param>
/// <param name="FullScale">The largest value it shows, base unit, above 0.</param>
/// <param name="Accuracy">The maker's stated accuracy on this range.</param>
/// <param name="Resolution">The smallest step it displays, base unit, above 0.</param>
public sealed record MeterRange(string Name, double FullScale, Accuracy Accuracy, double Resolution);
