namespace InspectLog.Measuring;

/// <summary>One part of the standard uncertainty of a reading (a line of its budget, JCGM 100:2008).</summary>
/// <param name="Name">What it comes from, in words for the technician.</param>
/// <param name="StandardUncertainty">Its size as a standard uncertainty, in the base unit.</param>
/// <param name="DegreesOfFreedom">Its degrees of freedom; infinity where it is taken as known.</param>
public readonly record struct Contribution(string Name, double StandardUncertainty, double DegreesOfFreedom)
{
    /// <summary>How likely the values within it are; null in records from before shapes were kept, and then normal.
    /// </summary>
    public ContributionShape? Shape { get; init; }

    /// <summary>What its half-width was divided by for a standard uncertainty (JCGM 100:2008, 4.3); null where it was found
    /// as one.</summary>
    public double? Divisor() => Shape switch
    {
        ContributionShape.Even => Math.Sqrt(3),
        ContributionShape.Triangular => Math.Sqrt(6),
        _ => null,
    };
}

/// <summary>A reading decided against its limits.</summary>
/// <param name="Value">The best estimate: the mean of the repeats, or the middle of the bracket. Base unit.</param>
/// <param name="StandardUncertainty">Combined standard uncertainty, base unit.</param>
/// <param name="ExpandedUncertainty">Expanded uncertainty, base unit.</param>
/// <param name="CoverageFactor">Coverage factor k: how many standard uncertainties that is.</param>
/// <param name="ProbabilityOfConformity">Probability, 0 to 1, that the true value lies within the limits
/// (JCGM 106:2012, clause 7).</param>
/// <param name="Decision">The rule's answer.</param>
/// <param name="Contributions">The uncertainty budget, largest first.</param>
public sealed record Conformity(
    double Value,
    double StandardUncertainty,
    double ExpandedUncertainty,
    double CoverageFactor,
    double ProbabilityOfConformity,
    Decision Decision,
    IReadOnlyList<Contribution> Contributions)
{
    /// <summary>Whether the uncertainty is so large against the limits that no value at all could pass: a finer
    /// instrument or another method is needed.</summary>
    public bool AcceptanceZoneIsEmpty { get; init; }

    /// <summary>How the expanded uncertainty was found; null in records from before there was a choice, which are
    /// classical at 95.45 %.</summary>
    public Evaluation? Evaluation { get; init; }

    /// <summary>What was known of the value when it was decided, about <see cref="Value"/>, from the contributions that were
    /// kept. Records from before shapes were kept are normal, or t where the degrees of freedom are few.</summary>
    public MeasurandDistribution Distribution()
    {
        Contribution[] parts = [.. Contributions];
        return Evaluation is { Method: EvaluationMethod.Distribution }
            ? MeasurandDistribution.Of(parts)
            : MeasurandDistribution.Student(
                StandardUncertainty, Math.Max(1, Budget.EffectiveDegreesOfFreedom(parts, StandardUncertainty)));
    }

    /// <summary>Where the value is accepted: the probability, 0 to 1, that it is outside the limits all the same (specific
    /// consumer's risk, JCGM 106:2012, 9.3.2). Null where it is rejected. <see cref="Estimate.ShareOutside"/> keeps the
    /// digits of very small risks.</summary>
    public double? ConsumersRisk() => IsAccepted() ? 1 - ProbabilityOfConformity : null;

    /// <summary>Where the value is rejected: the probability, 0 to 1, that it is within the limits all the same (specific
    /// producer's risk). Null where it is accepted.</summary>
    public double? ProducersRisk() => IsAccepted() ? null : ProbabilityOfConformity;

    private bool IsAccepted() => Decision.Accepts();
}
