namespace InspectLog.Measuring;

/// <summary>The zones of the non-binary rule (ILAC-G8:09/2019, 4.2.3).</summary>
/// <remarks>
/// <para>The guide writes the two conditional zones as closed intervals, which leaves a value exactly on an edge in two
/// zones. Here an edge belongs to the better side: a value exactly on an acceptance limit passes, one exactly on a
/// tolerance limit is a conditional pass (limits are inclusive, JCGM 106:2012, 3.3.5), and one exactly a guard band
/// outside is a conditional fail.</para>
/// <para>Numbers such as 0.1 + 0.2 miss their edge in the sixteenth digit. Anything within a millionth of a
/// millionth of the numbers involved counts as on the edge; no display resolves that.</para>
/// </remarks>
internal static class Zones
{
    private const double SameNumber = 1e-12;

    internal static Decision Decide(double value, Limits limits, double guardBand)
    {
        var inside = Inside(value, limits);
        var slack = Slack(limits, guardBand);
        return inside >= guardBand - slack ? Decision.Pass
            : inside >= -slack ? Decision.ConditionalPass
            : inside >= -guardBand - slack ? Decision.ConditionalFail
            : Decision.Fail;
    }

    /// <summary>How far within the nearer limit a value lies; negative outside.</summary>
    internal static double Inside(double value, Limits limits) => Math.Min(
        limits.Upper - value ?? double.PositiveInfinity,
        value - limits.Lower ?? double.PositiveInfinity);

    /// <summary>How far apart two of the numbers of a decision may be and still count as equal. A value near an edge is no
    /// larger than its limit and the guard band together.</summary>
    internal static double Slack(Limits limits, double guardBand) =>
        SameNumber * Math.Max(guardBand, Math.Max(Math.Abs(limits.Lower ?? 0), Math.Abs(limits.Upper ?? 0)));
}
