using System.Text.Json;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>The limits of a check in each unit it can be typed in, for a device that has to do without the workshop's
/// computer for a while.</summary>
/// <param name="Unit">Symbol of the unit.</param>
/// <param name="Lower">Lower limit in it; null for none.</param>
/// <param name="Upper">Upper limit in it; null for none.</param>
/// <param name="Words">Both in words.</param>
public sealed record UnitLimits(string Unit, double? Lower, double? Upper, string Words)
{
    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web);

    /// <summary>As the page says them.</summary>
    public static string Json(LimitsInForce limits, IReadOnlyList<Unit> units)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(units);
        return JsonSerializer.Serialize(units.Select(unit => Of(limits, unit)), Web);
    }

    private static UnitLimits Of(LimitsInForce limits, Unit unit) => new(
        unit.Symbol,
        In(limits.Lower, unit),
        In(limits.Upper, unit),
        Printed.Span(Limits.Of(limits.Lower, limits.Upper), unit));

    /// <summary>One that is too large for a number in the smaller unit is as good as none.</summary>
    private static double? In(double? inBase, Unit unit) =>
        inBase is { } value && unit.FromBase(value) is var converted && double.IsFinite(converted) ? converted : null;
}
