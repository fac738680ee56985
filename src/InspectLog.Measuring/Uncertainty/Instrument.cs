namespace InspectLog.Measuring;

/// <summary>A measuring instrument, as far as its readings' uncertainty depends on it.</summary>
/// <param name="Id">A short name of its own within the workshop: letters, digits and hyphens.</param>
/// <param name="Name">What the technician calls it.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Accuracy">The maker's stated accuracy.</param>
/// <param name="Resolution">The smallest step it displays, in the base unit of <paramref name="Kind"/>; above 0.</param>
public sealed record Instrument(string Id, string Name, QuantityKind Kind, Accuracy Accuracy, double Resolution);
