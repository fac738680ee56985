namespace InspectLog.Measuring;

/// <summary>What an expanded uncertainty would be with one contribution changed.</summary>
internal static class Changed
{
    internal static double Expanded(
        in Estimate estimate, int contribution, double standardUncertainty, double degreesOfFreedom)
    {
        Contribution[] parts = [.. estimate.Contributions];
        parts[contribution] = parts[contribution] with
        {
            StandardUncertainty = standardUncertainty,
            DegreesOfFreedom = degreesOfFreedom,
        };
        return Estimate.From(estimate.Value, parts, estimate.Evaluation).ExpandedUncertainty;
    }
}
