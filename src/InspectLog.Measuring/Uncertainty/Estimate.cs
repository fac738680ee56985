namespace InspectLog.Measuring;

/// <summary>The best estimate of a value with its uncertainty, before any limits come into it.</summary>
/// <param name="Value">The mean of the repeats, corrected and referred as the reading says; or the middle of the
/// bracket. Base unit.</param>
/// <param name="StandardUncertainty">Combined standard uncertainty, base unit.</param>
/// <param name="DegreesOfFreedom">Effective degrees of freedom, 1 or more, or infinity. Not rounded.</param>
/// <param name="CoverageFactor">Coverage factor k for 95.45 %.</param>
/// <param name="Contributions">The uncertainty budget, largest first.</param>
public readonly record struct Estimate(
    double Value,
    double StandardUncertainty,
    double DegreesOfFreedom,
    double CoverageFactor,
    IReadOnlyList<Contribution> Contributions)
{
    /// <summary>Expanded uncertainty at 95.45 % coverage, base unit.</summary>
    public double ExpandedUncertainty => CoverageFactor * StandardUncertainty;

    /// <summary>The bounded shape of a bracket about its middle; null for a displayed reading, which is normal.</summary>
    internal Trapezoid? Shape { get; init; }

    /// <summary>A value whose uncertainty is known from elsewhere, such as a certificate or a budget worked out by
    /// hand.</summary>
    /// <param name="value">The value, finite, base unit.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, 0 or more, base unit.</param>
    /// <param name="degreesOfFreedom">Its effective degrees of freedom, 1 or more, or infinity.</param>
    /// <exception cref="ArgumentException">A number is out of range; the message says which.</exception>
    public static Estimate Known(
        double value, double standardUncertainty, double degreesOfFreedom = double.PositiveInfinity)
    {
        Refuse.BadEstimate(value, standardUncertainty, degreesOfFreedom);
        return new(
            value, standardUncertainty, degreesOfFreedom, Coverage.Factor(degreesOfFreedom),
            [new(ContributionNames.AsStated, standardUncertainty, degreesOfFreedom)]);
    }

    /// <summary>Estimates the value behind a reading (JCGM 100:2008).</summary>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why, for the person who entered
    /// it.</exception>
    public static Estimate Of(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading switch
        {
            DisplayedReading displayed => DisplayedEstimate.Of(displayed),
            Bracket bracket => Of(bracket),
            _ => throw new ArgumentException($"There is no rule for a reading of type {reading.GetType().Name}."),
        };
    }

    /// <summary>Probability, 0 to 1, that the true value lies within limits (JCGM 106:2012, 7.2 to 7.4; for a bracket,
    /// the share of its shape within them).</summary>
    public double ShareWithin(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var from = limits.Lower - Value ?? double.NegativeInfinity;
        var to = limits.Upper - Value ?? double.PositiveInfinity;
        if (Shape is { } shape)
        {
            return shape.Between(from, to);
        }

        return StandardUncertainty > 0
            ? NormalDistribution.Between(from / StandardUncertainty, to / StandardUncertainty)
            : from <= 0 && to >= 0 ? 1 : 0;
    }

    /// <summary>Probability, 0 to 1, that the true value lies outside limits. It is 1 less
    /// <see cref="ShareWithin"/>, worked out from the tails themselves, so that a small risk keeps its digits.</summary>
    public double ShareOutside(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var from = limits.Lower - Value ?? double.NegativeInfinity;
        var to = limits.Upper - Value ?? double.PositiveInfinity;
        if (Shape is { } shape)
        {
            return shape.Above(-from) + shape.Above(to);
        }

        return StandardUncertainty > 0
            ? NormalDistribution.Below(from / StandardUncertainty) + NormalDistribution.Above(to / StandardUncertainty)
            : from <= 0 && to >= 0 ? 0 : 1;
    }

    /// <summary>The measurement capability index C_m = T/(4u) (JCGM 106:2012, 7.5): how many expanded uncertainties fit
    /// between the middle of two limits and one of them. Null for a single limit.</summary>
    public double? CapabilityIndex(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return (limits.Upper - limits.Lower) / (4 * StandardUncertainty);
    }

    private static Estimate Of(Bracket bracket)
    {
        Refuse.BadBracket(bracket);
        var halfWidth = (bracket.Stops - bracket.Goes) / 2;
        var gap = new Contribution("gap between the gauges", Budget.Rectangular(halfWidth), double.PositiveInfinity);
        var gauges = bracket.GaugeUncertainty.GetValueOrDefault();
        // The gauges' uncertainty smears both ends of the box; a second box of the same standard uncertainty does so
        // and keeps everything in closed form.
        var shape = Trapezoid.OfBoxes(halfWidth, gauges * Math.Sqrt(3));
        var u = shape.StandardDeviation;
        return new(
            bracket.Goes + halfWidth,
            u,
            double.PositiveInfinity,
            shape.HalfWidthOf(Coverage.Probability) / u,
            gauges > 0 ? [gap, new("size of the gauges", gauges, double.PositiveInfinity)] : [gap])
        {
            Shape = shape,
        };
    }
}
