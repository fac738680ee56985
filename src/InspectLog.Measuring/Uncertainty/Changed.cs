namespace InspectLog.Measuring;

/// <summary>What an expanded uncertainty would be with one contribution changed.</summary>
internal static class Changed
{
    internal static double Expanded(
        in Estimate estimate, int contribution, double standardUncertainty, double degreesOfFreedom)
    {
        if (estimate.Shape is not null)
        {
            // A bracket is its gap smeared by its gauges: without one part, the other is a box.
            return Expanded(estimate, contribution);
        }

        Contribution[] parts = [.. estimate.Contributions];
        parts[contribution] = parts[contribution] with
        {
            StandardUncertainty = standardUncertainty,
            DegreesOfFreedom = degreesOfFreedom,
        };
        var u = Budget.Combined(parts);
        return u * Coverage.Factor(Budget.EffectiveDegreesOfFreedom(parts, u));
    }

    private static double Expanded(in Estimate bracket, int without)
    {
        var left = 0.0;
        for (var i = 0; i < bracket.Contributions.Count; i++)
        {
            left += i == without ? 0 : bracket.Contributions[i].StandardUncertainty;
        }

        return left * Coverage.BoxFactor;
    }
}
