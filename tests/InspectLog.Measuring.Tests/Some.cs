namespace InspectLog.Measuring.Tests;

/// <summary>Readings and limits as tests need them.</summary>
internal static class Some
{
    /// <summary>A reading whose only contribution that counts is u, normal, on a display step too small to matter.</summary>
    internal static DisplayedReading With(double value, double u) => new([value], new Accuracy(0, 0), 1e-12)
    {
        Allowances = [new(AllowanceSource.Reference, 2 * u, AllowanceShape.TwoStandardDeviations)],
    };

    internal static DisplayedReading Reading(double[] values, double percent, double counts, double resolution) =>
        new(values, new Accuracy(percent, counts), resolution);

    internal static Contribution Part(double u, double degreesOfFreedom = double.PositiveInfinity) =>
        new("part", u, degreesOfFreedom);
}
