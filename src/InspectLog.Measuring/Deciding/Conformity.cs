namespace InspectLog.Measuring;

/// <summary>One part of the standard uncertainty of a reading (a line of its budget, JCGM 100:2008).</summary>
/// <param name="Name">What it comes from, in words for the technician.</param>
/// <param name="StandardUncertainty">Its size as a standard uncertainty, in the base unit.</param>
/// <param name="DegreesOfFreedom">Its degrees of freedom; infinity where it is taken as known.</param>
public readonly record struct Contribution(string Name, double StandardUncertainty, double DegreesOfFreedom);

/// <summary>A reading decided against its limits.</summary>
/// <param name="Value">The best estimate: the mean of the repeats, or the middle of the bracket. Base unit.</param>
/// <param name="StandardUncertainty">Combined standard uncertainty, base unit.</param>
/// <param name="ExpandedUncertainty">Expanded uncertainty at 95.45 % coverage, base unit.</param>
/// <param name="CoverageFactor">Coverage factor k; 2 for infinite degrees of freedom.</param>
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

    /// <summary>Where the value is accepted: the probability, 0 to 1, that it is outside the limits all the same (specific
    /// consumer's risk, JCGM 106:2012, 9.3.2). Null where it is rejected. <see cref="Estimate.ShareOutside"/> keeps the
    /// digits of very small risks.</summary>
    public double? ConsumersRisk() => IsAccepted() ? 1 - ProbabilityOfConformity : null;

    /// <summary>Where the value is rejected: the probability, 0 to 1, that it is within the limits all the same (specific
    /// producer's risk). Null where it is accepted.</summary>
    public double? ProducersRisk() => IsAccepted() ? null : ProbabilityOfConformity;

    private bool IsAccepted() => Decision is Decision.Pass or Decision.ConditionalPass;
}
