namespace InspectLog.Measuring;

/// <summary>The values a rule accepts (JCGM 106:2012, 3.3.9), ends included, base unit.</summary>
/// <param name="Lower">Lower acceptance limit; null where there is none.</param>
/// <param name="Upper">Upper acceptance limit; null where there is none.</param>
public readonly record struct AcceptanceZone(double? Lower, double? Upper)
{
    /// <summary>Limits drawn in by a guard band; null where the two guard bands leave nothing between them.</summary>
    internal static AcceptanceZone? Inside(Limits limits, double guardBand)
    {
        var zone = new AcceptanceZone(limits.Lower + guardBand, limits.Upper - guardBand);
        return zone.Upper - zone.Lower < -Zones.Slack(limits, guardBand) ? null : zone;
    }
}
