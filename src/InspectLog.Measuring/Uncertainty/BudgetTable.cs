namespace InspectLog.Measuring;

/// <summary>One line of an uncertainty budget as a table shows it.</summary>
/// <param name="Contribution">What contributes and how much.</param>
/// <param name="Share">Its share of the combined variance, 0 to 1; independent lines add up to 1.</param>
/// <param name="ExpandedWithout">What the expanded uncertainty would come down to without it, base unit.</param>
public readonly record struct BudgetLine(Contribution Contribution, double Share, double ExpandedWithout)
{
    /// <summary>Standard uncertainty of the quantity itself (JCGM 100:2008, 4.1): in °C for the winding temperature,
    /// otherwise in the base unit.</summary>
    public double InputUncertainty { get; init; } = Contribution.StandardUncertainty;

    /// <summary>The sensitivity coefficient c (5.1.3): how far the result moves for each unit the quantity moves. The
    /// contribution is its size times <see cref="InputUncertainty"/>.</summary>
    public double Sensitivity { get; init; } = 1;

    /// <summary>Whether it comes from the scatter of repeats (type A, 4.2), and not from what is known of the instrument
    /// and the method (type B, 4.3).</summary>
    public bool IsTypeA => double.IsFinite(Contribution.DegreesOfFreedom) || ContributionNames.IsOfRepeats(Contribution.Name);
}

/// <summary>The uncertainty budget of an estimate as a table: which line matters most, and what is left without it.</summary>
public static class BudgetTable
{
    /// <summary>The lines, largest first, each with its own uncertainty and sensitivity.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="evaluation">How the expanded uncertainty is found; null for the usual way.</param>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why.</exception>
    public static IReadOnlyList<BudgetLine> Of(Reading reading, Evaluation? evaluation = null)
    {
        var estimate = Estimate.Of(reading, evaluation);
        var winding = (reading as DisplayedReading)?.Winding;
        return [.. Of(estimate).Select(line => WithSensitivity(line, estimate.Value, winding))];
    }

    /// <summary>The lines, largest first. Sensitivities are not known here and left at 1.</summary>
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

    // A hotter winding refers to less; the leads are subtracted; everything is scaled by the reference to another
    // temperature.
    private static BudgetLine WithSensitivity(in BudgetLine line, double value, WindingTemperature? winding)
    {
        if (winding is not null && line.Contribution.Name == ContributionNames.WindingTemperature)
        {
            return line with
            {
                InputUncertainty = Budget.Rectangular(winding.HalfWidth),
                Sensitivity = -value * winding.ShareForEachDegree,
            };
        }

        var factor = winding?.Factor ?? 1;
        return line with
        {
            InputUncertainty = line.Contribution.StandardUncertainty / factor,
            Sensitivity = ContributionNames.IsOfLeads(line.Contribution.Name) ? -factor : factor,
        };
    }
}
