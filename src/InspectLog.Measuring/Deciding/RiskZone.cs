namespace InspectLog.Measuring;

/// <summary>Acceptance where the probability of conformity is high enough.</summary>
internal static class RiskZone
{
    // Beyond this many standard uncertainties from a limit no double tells the probability from 1.
    private const double Far = 40;

    internal static bool Accepts(in Estimate estimate, Limits limits, double risk) =>
        estimate.ShareOutside(limits) <= risk * (1 + 1e-9);

    internal static bool CanAccept(in Estimate estimate, Limits limits, double risk) =>
        Accepts(At(estimate, limits, Deepest(estimate, limits)), limits, risk);

    /// <summary>The values accepted. The probability falls from the middle of the limits outward, so each end is found
    /// by halving.</summary>
    internal static AcceptanceZone? Of(in Estimate estimate, Limits limits, double risk)
    {
        if (!CanAccept(estimate, limits, risk))
        {
            return null;
        }

        // Until no number is left in between.
        var (accepted, refused) = (Deepest(estimate, limits), 0.0);
        for (var between = accepted / 2; between != accepted && between != refused; between = (accepted + refused) / 2)
        {
            (accepted, refused) = Accepts(At(estimate, limits, between), limits, risk)
                ? (between, refused)
                : (accepted, between);
        }

        return new AcceptanceZone(limits.Lower + accepted, limits.Upper - accepted);
    }

    private static double Deepest(in Estimate estimate, Limits limits) =>
        (limits.Upper - limits.Lower) / 2 ?? Far * estimate.StandardUncertainty;

    private static Estimate At(in Estimate estimate, Limits limits, double inside) =>
        estimate with { Value = limits.Upper - inside ?? limits.Lower.GetValueOrDefault() + inside };
}
