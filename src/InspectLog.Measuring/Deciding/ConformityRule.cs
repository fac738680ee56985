namespace InspectLog.Measuring;

/// <summary>Decides readings against limits.</summary>
public static class ConformityRule
{
    /// <summary>Decides a reading by the non-binary rule of ILAC-G8:09/2019.</summary>
    /// <remarks>
    /// <para>A displayed reading is the mean of its repeats. What is known of it is the sum of the instrument's accuracy
    /// (a box), the display step (a box, half a step each way) and, with two repeats or more, their spread s/√n as
    /// Student's t with n − 1 degrees of freedom, and whatever else the reading names (JCGM 101:2008, 6.4). A bracket is a
    /// box between its gauges.</para>
    /// <para>The expanded uncertainty is the half-width of the middle 95.45 % of that distribution, and the probability of
    /// conformity its share within the limits (JCGM 106:2012, 7.2 to 7.4): a pass leaves no more than 2.3 % beyond a
    /// limit, and a conditional pass always more.</para>
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
            Evaluation = estimate.Evaluation,
        };
    }
}
