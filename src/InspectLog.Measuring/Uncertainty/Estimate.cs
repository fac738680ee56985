namespace InspectLog.Measuring;

/// <summary>The best estimate of a value with its uncertainty, before any limits come into it.</summary>
/// <param name="Value">The mean of the repeats, corrected and referred as the reading says; or the middle of the
/// bracket. Base unit.</param>
/// <param name="StandardUncertainty">Combined standard uncertainty, base unit (JCGM 100:2008, 5.1.2).</param>
/// <param name="DegreesOfFreedom">Effective degrees of freedom (G.4), 1 or more, or infinity. Not rounded. Only the
/// classical evaluation uses them.</param>
/// <param name="Distribution">What is known of the value, about <paramref name="Value"/>.</param>
/// <param name="ExpandedUncertainty">Half-width of the middle of the distribution that holds the coverage, base unit.</param>
/// <param name="Evaluation">How the distribution and the expanded uncertainty were found.</param>
/// <param name="Contributions">The uncertainty budget, largest first.</param>
public readonly record struct Estimate(
    double Value,
    double StandardUncertainty,
    double DegreesOfFreedom,
    MeasurandDistribution Distribution,
    double ExpandedUncertainty,
    Evaluation Evaluation,
    IReadOnlyList<Contribution> Contributions)
{
    /// <summary>Coverage factor k: how many standard uncertainties the expanded uncertainty is. That of a normal
    /// distribution where there is no uncertainty at all.</summary>
    public double CoverageFactor => StandardUncertainty > 0
        ? ExpandedUncertainty / StandardUncertainty
        : Coverage.Factor(Evaluation.Coverage, double.PositiveInfinity);

    /// <summary>How many times the value was read; 0 where it was not read off a display.</summary>
    public int Readings { get; init; }

    /// <summary>Whether a single reading was taken of which nothing says how far a second would lie from it. The
    /// uncertainty is then that of the instrument and the method alone.</summary>
    public bool ScatterUnknown { get; init; }

    /// <summary>A value whose uncertainty is known from elsewhere, such as a certificate or a budget worked out by
    /// hand.</summary>
    /// <param name="value">The value, finite, base unit.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, 0 or more, base unit.</param>
    /// <param name="degreesOfFreedom">Its effective degrees of freedom, 1 or more, or infinity.</param>
    /// <param name="evaluation">The coverage; null for the usual one.</param>
    /// <exception cref="ArgumentException">A number is out of range; the message says which.</exception>
    public static Estimate Known(
        double value,
        double standardUncertainty,
        double degreesOfFreedom = double.PositiveInfinity,
        Evaluation? evaluation = null)
    {
        Refuse.BadEstimate(value, standardUncertainty, degreesOfFreedom);
        return From(
            value,
            [
                new(ContributionNames.AsStated, standardUncertainty, degreesOfFreedom)
                {
                    Shape = double.IsFinite(degreesOfFreedom) ? ContributionShape.Student : ContributionShape.Normal,
                },
            ],
            evaluation ?? Evaluation.Default);
    }

    /// <summary>Estimates the value behind a reading (JCGM 100:2008).</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="evaluation">How; null for the usual way.</param>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why, for the person who entered
    /// it.</exception>
    public static Estimate Of(Reading reading, Evaluation? evaluation = null)
    {
        ArgumentNullException.ThrowIfNull(reading);
        evaluation ??= Evaluation.Default;
        return reading switch
        {
            DisplayedReading displayed => DisplayedEstimate.Of(displayed, evaluation),
            Bracket bracket => Of(bracket, evaluation),
            _ => throw new ArgumentException($"There is no rule for a reading of type {reading.GetType().Name}."),
        };
    }

    /// <summary>Puts contributions together that are independent of each other.</summary>
    /// <exception cref="ArgumentException">They are too large to work with.</exception>
    internal static Estimate From(double value, Contribution[] contributions, Evaluation evaluation)
    {
        var u = Budget.Combined(contributions);
        var degreesOfFreedom = Budget.EffectiveDegreesOfFreedom(contributions, u);
        var distribution = evaluation.Method == EvaluationMethod.Classical
            ? MeasurandDistribution.Student(u, degreesOfFreedom)
            : MeasurandDistribution.Of(contributions);
        return From(value, u, degreesOfFreedom, distribution, contributions, evaluation);
    }

    /// <summary>Puts an estimate together from its parts.</summary>
    /// <exception cref="ArgumentException">They are too large to work with.</exception>
    internal static Estimate From(
        double value,
        double standardUncertainty,
        double degreesOfFreedom,
        in MeasurandDistribution distribution,
        IReadOnlyList<Contribution> contributions,
        Evaluation evaluation)
    {
        var expanded = standardUncertainty > 0 ? distribution.HalfWidthOf(evaluation.Coverage) : 0;
        if (!double.IsFinite(value) || !double.IsFinite(expanded) || !double.IsFinite(4 * expanded))
        {
            throw new ArgumentException("The values are too large to work with.");
        }

        return new(value, standardUncertainty, degreesOfFreedom, distribution, expanded, evaluation, contributions);
    }

    /// <summary>Probability, 0 to 1, that the true value lies within limits (JCGM 106:2012, 7.2 to 7.4).</summary>
    public double ShareWithin(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var from = limits.Lower - Value ?? double.NegativeInfinity;
        var to = limits.Upper - Value ?? double.PositiveInfinity;
        return StandardUncertainty > 0
            ? Math.Min(1, Distribution.Between(from, to))
            : from <= 0 && to >= 0 ? 1 : 0;
    }

    /// <summary>Probability, 0 to 1, that the true value lies outside limits. It is 1 less
    /// <see cref="ShareWithin"/>, worked out from the tails themselves, so that a small risk keeps its digits.</summary>
    public double ShareOutside(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var from = limits.Lower - Value ?? double.NegativeInfinity;
        var to = limits.Upper - Value ?? double.PositiveInfinity;
        return StandardUncertainty > 0
            ? Math.Min(1, Distribution.Above(-from) + Distribution.Above(to))
            : from <= 0 && to >= 0 ? 0 : 1;
    }

    /// <summary>The measurement capability index C_m = T/(4u) (JCGM 106:2012, 7.5): how many expanded uncertainties fit
    /// between the middle of two limits and one of them. Null for a single limit.</summary>
    public double? CapabilityIndex(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return (limits.Upper - limits.Lower) / (4 * StandardUncertainty);
    }

    // A bracket is a box between its gauges, whatever the evaluation; the gauges' own uncertainty smears both its ends,
    // and a second box of the same standard uncertainty does so.
    private static Estimate Of(Bracket bracket, Evaluation evaluation)
    {
        Refuse.BadBracket(bracket);
        var halfWidth = (bracket.Stops - bracket.Goes) / 2;
        var gauges = bracket.GaugeUncertainty.GetValueOrDefault();
        var gap = Even(ContributionNames.Gap, Budget.Rectangular(halfWidth));
        return From(
            bracket.Goes + halfWidth,
            gauges > 0 ? [gap, Even(ContributionNames.Gauges, gauges)] : [gap],
            evaluation.Method == EvaluationMethod.Distribution
                ? evaluation
                : evaluation with { Method = EvaluationMethod.Distribution });
    }

    private static Contribution Even(string name, double standardUncertainty) =>
        new(name, standardUncertainty, double.PositiveInfinity) { Shape = ContributionShape.Even };
}
