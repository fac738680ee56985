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
        var inside = Math.Min(
            limits.Upper - value ?? double.PositiveInfinity,
            value - limits.Lower ?? double.PositiveInfinity);
        var slack = SameNumber * Math.Max(Math.Abs(value), Math.Max(Size(limits), guardBand));
        return inside >= guardBand - slack ? Decision.Pass
            : inside >= -slack ? Decision.ConditionalPass
            : inside >= -guardBand - slack ? Decision.ConditionalFail
            : Decision.Fail;
    }

    /// <summary>Whether the guard bands of two limits overlap, so that no value at all can pass.</summary>
    internal static bool AcceptanceIsEmpty(Limits limits, double guardBand) =>
        limits is { Lower: { } lower, Upper: { } upper }
        && upper - lower < (2 * guardBand) - (SameNumber * Math.Max(Size(limits), guardBand));

    private static double Size(Limits limits) =>
        Math.Max(Math.Abs(limits.Lower ?? 0), Math.Abs(limits.Upper ?? 0));
}
