namespace InspectLog.Measuring;

/// <summary>Acceptance where the probability of conformity is high enough.</summary>
internal static class RiskZone
{
    // Of a probability: no display resolves that.
    private const double Slack = 1e-9;

    // Halvings after which nothing is left between two numbers but what the probabilities cannot tell.
    private const int Halvings = 44;

    internal static bool Accepts(in Estimate estimate, Limits limits, double risk) =>
        estimate.ShareOutside(limits) <= risk * (1 + Slack);

    /// <summary>Whether the value is within the limits with no more than that risk, and so as good as proven outside.
    /// </summary>
    internal static bool Rejects(in Estimate estimate, Limits limits, double risk) =>
        estimate.ShareWithin(limits) <= risk * (1 + Slack);

    internal static bool CanAccept(in Estimate estimate, Limits limits, double risk) =>
        limits is { Lower: { } lower, Upper: { } upper }
            ? Accepts(estimate with { Value = lower + ((upper - lower) / 2) }, limits, risk)
            : true;

    /// <summary>The values accepted. With one limit they begin where the risk lies beyond it; with two, which may share it,
    /// the end is found by halving, since the probability falls from the middle of the limits outward.</summary>
    internal static AcceptanceZone? Of(in Estimate estimate, Limits limits, double risk)
    {
        if (!CanAccept(estimate, limits, risk))
        {
            return null;
        }

        var depth = estimate.StandardUncertainty > 0 ? estimate.Distribution.HalfWidthOf(1 - (2 * risk)) : 0;
        if (limits is { Lower: { } lower, Upper: { } upper })
        {
            depth = Shared(estimate, limits, risk, depth, (upper - lower) / 2);
        }

        return new AcceptanceZone(limits.Lower + depth, limits.Upper - depth);
    }

    private static double Shared(in Estimate estimate, Limits limits, double risk, double tooLittle, double enough)
    {
        if (Accepts(At(estimate, limits, tooLittle), limits, risk))
        {
            return tooLittle;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var between = (enough + tooLittle) / 2;
            (enough, tooLittle) = Accepts(At(estimate, limits, between), limits, risk) ? (between, tooLittle) : (enough, between);
        }

        return enough;
    }

    private static Estimate At(in Estimate estimate, Limits limits, double inside) =>
        estimate with { Value = limits.Upper.GetValueOrDefault() - inside };
}
