namespace InspectLog.Measuring;

/// <summary>Combines the contributions to a standard uncertainty (JCGM 100:2008).</summary>
public static class Budget
{
    /// <summary>Standard uncertainty of a value known only to lie within ±<paramref name="halfWidth"/>, each place
    /// equally likely (4.3.7).</summary>
    public static double Rectangular(double halfWidth) => halfWidth / Math.Sqrt(3);

    /// <summary>Combined standard uncertainty of independent contributions: the root of the sum of squares (5.1.2).</summary>
    public static double Combined(ReadOnlySpan<Contribution> contributions)
    {
        var combined = 0.0;
        foreach (var contribution in contributions)
        {
            combined = double.Hypot(combined, contribution.StandardUncertainty);
        }

        return combined;
    }

    /// <summary>Effective degrees of freedom by the Welch–Satterthwaite formula (G.2b); infinite where every part that
    /// counts is taken as known. Not rounded.</summary>
    public static double EffectiveDegreesOfFreedom(ReadOnlySpan<Contribution> contributions, double combined)
    {
        var sum = 0.0;
        foreach (var contribution in contributions)
        {
            if (contribution.StandardUncertainty > 0)
            {
                var share = contribution.StandardUncertainty / combined;
                sum += share * share * share * share / contribution.DegreesOfFreedom;
            }
        }

        return 1 / sum;
    }
}
