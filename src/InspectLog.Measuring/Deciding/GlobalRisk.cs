using MathNet.Numerics.Integration;

namespace InspectLog.Measuring;

/// <summary>How often a rule goes wrong over many parts, given how such parts vary (JCGM 106:2012, clause 9.5): what to
/// look at before a rule or an instrument is chosen, where a decision's own risks speak of one reading.</summary>
/// <param name="Consumers">Share of all parts, 0 to 1, that are outside the limits and accepted all the same.</param>
/// <param name="Producers">Share of all parts, 0 to 1, that are within the limits and rejected all the same.</param>
public readonly record struct GlobalRisk(double Consumers, double Producers)
{
    private const int Panels = 32;
    private const int PointsInPanel = 32;

    // Standard deviations that hold all normal parts but for a share that does not matter.
    private const double AllParts = 9;

    /// <summary>Works out both risks for parts that are normal.</summary>
    /// <param name="mean">Their mean, base unit.</param>
    /// <param name="standardDeviation">Their standard deviation, above 0.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="accepted">The readings that are accepted.</param>
    /// <param name="standardUncertainty">Standard uncertainty of a reading, above 0; taken as normal.</param>
    /// <exception cref="ArgumentException">The scatter or the uncertainty is not above 0, or a number is not finite.
    /// </exception>
    public static GlobalRisk OfNormalParts(
        double mean, double standardDeviation, Limits limits, AcceptanceZone accepted, double standardUncertainty)
    {
        if (!(standardDeviation > 0))
        {
            throw new ArgumentException("The scatter of parts must be above 0.");
        }

        double Density(double part) => NormalDistribution.Density((part - mean) / standardDeviation) / standardDeviation;
        var reach = AllParts * standardDeviation;
        return Of(Density, new(mean - reach, mean + reach), limits, accepted, standardUncertainty);
    }

    /// <summary>Works out both risks.</summary>
    /// <param name="density">Probability density of the parts' true values, base unit; smooth between the limits and
    /// outside them.</param>
    /// <param name="parts">A span that holds all parts but for a share that does not matter.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="accepted">The readings that are accepted.</param>
    /// <param name="standardUncertainty">Standard uncertainty of a reading, above 0; taken as normal.</param>
    /// <exception cref="ArgumentException">The uncertainty is not above 0, or the span is empty or not finite.</exception>
    public static GlobalRisk Of(
        Func<double, double> density,
        PlausibleSpan parts,
        Limits limits,
        AcceptanceZone accepted,
        double standardUncertainty)
    {
        ArgumentNullException.ThrowIfNull(density);
        ArgumentNullException.ThrowIfNull(limits);
        if (!(standardUncertainty > 0 && parts.To > parts.From && double.IsFinite(parts.To - parts.From)))
        {
            throw new ArgumentException("Global risks need an uncertainty above 0 and a finite span of parts.");
        }

        var lower = Math.Clamp(limits.Lower ?? parts.From, parts.From, parts.To);
        var upper = Math.Clamp(limits.Upper ?? parts.To, parts.From, parts.To);
        double Accepted(double part) => NormalDistribution.Between(
            ((accepted.Lower ?? double.NegativeInfinity) - part) / standardUncertainty,
            ((accepted.Upper ?? double.PositiveInfinity) - part) / standardUncertainty);
        double Outside(double part) => density(part) * Accepted(part);
        double Within(double part) => density(part) * (1 - Accepted(part));
        return new(
            Integral(Outside, parts.From, lower) + Integral(Outside, upper, parts.To),
            Integral(Within, lower, upper));
    }

    private static double Integral(Func<double, double> function, double from, double to)
    {
        var sum = 0.0;
        var width = (to - from) / Panels;
        for (var panel = 0; panel < Panels; panel++)
        {
            var start = from + (panel * width);
            sum += GaussLegendreRule.Integrate(function, start, start + width, PointsInPanel);
        }

        return sum;
    }
}
