namespace InspectLog.Measuring;

/// <summary>One line of an uncertainty budget as a table shows it.</summary>
/// <param name="Contribution">What contributes and how much.</param>
/// <param name="Share">Its share of the combined variance, 0 to 1; independent lines add up to 1.</param>
/// <param name="ExpandedWithout">What the expanded uncertainty would come down to without it, base unit.</param>
public readonly record struct BudgetLine(Contribution Contribution, double Share, double ExpandedWithout);

/// <summary>The uncertainty budget of an estimate as a table: which line matters most, and what is left without it.</summary>
public static class BudgetTable
{
    /// <summary>The lines, largest first.</summary>
    public static IReadOnlyList<BudgetLine> Of(in Estimate estimate)
    {
        var u = estimate.StandardUncertainty;
        var lines = new BudgetLine[estimate.Contributions.Count];
        for (var i = 0; i < lines.Length; i++)
        {
            var contribution = estimate.Contributions[i];
            var share = u > 0 ? contribution.StandardUncertainty * contribution.StandardUncertainty / (u * u) : 0;
            lines[i] = new(contribution, share, Changed.Expanded(estimate, i, 0, double.PositiveInfinity));
        }

        return lines;
    }
}
