namespace InspectLog.Measuring;

/// <summary>Decides readings against limits.</summary>
public static class ConformityRule
{
    /// <summary>Decides a reading by the non-binary rule of ILAC-G8:09/2019.</summary>
    /// <remarks>
    /// <para>A displayed reading is the mean of its repeats. Its uncertainty combines the instrument's accuracy
    /// (rectangular), the display step (rectangular, half a step each way) and, with two repeats or more, their spread
    /// s/√n with n − 1 degrees of freedom, and whatever else the reading names. The probability of conformity comes from a
    /// normal density with that standard uncertainty (JCGM 106:2012, 7.2 to 7.4).</para>
    /// <para>A bracket is a box between its gauges. Its expanded uncertainty is the half-width of the box's middle
    /// 95.45 %, so it passes when no more than 2.3 % of the box lies beyond a limit: the same risk the guard band of two
    /// standard uncertainties leaves a displayed reading. The probability of conformity is the share of the box within
    /// the limits.</para>
    /// </remarks>
    /// <exception cref="ArgumentException">The reading has no value, a value that is not finite, a negative accuracy,
    /// a resolution of 0 or less, a bracket whose gauges are the wrong way round, or something else it cannot be decided
    /// with. The message is written for the person who entered it.</exception>
    public static Conformity Decide(Reading reading, Limits limits) => Decide(reading, limits, DecisionRule.NonBinary);

    /// <summary>Decides a reading by a chosen rule; otherwise as <see cref="Decide(Reading, Limits)"/>.</summary>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why.</exception>
    public static Conformity Decide(Reading reading, Limits limits, DecisionRule rule) =>
        Decide(Estimate.Of(reading), limits, rule);

    /// <summary>Decides a value whose uncertainty is already known.</summary>
    public static Conformity Decide(in Estimate estimate, Limits limits, DecisionRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return new Conformity(
            estimate.Value,
            estimate.StandardUncertainty,
            estimate.ExpandedUncertainty,
            estimate.CoverageFactor,
            estimate.ShareWithin(limits),
            rule.Decide(estimate, limits),
            estimate.Contributions)
        {
            AcceptanceZoneIsEmpty = !rule.CanAccept(estimate, limits),
        };
    }
}
