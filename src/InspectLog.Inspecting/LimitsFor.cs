using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting;

/// <summary>Which limits the checks of a sheet are decided against on a vehicle: its own before the sheet's.</summary>
public static class LimitsFor
{
    /// <summary>A sheet with the vehicle's own limits in place.</summary>
    public static CheckSheet Vehicle(VehicleState vehicle, CheckSheet sheet) => LimitOverride.ApplyAll(
        sheet,
        Own(vehicle, sheet).Select(own => new LimitOverride(own.Check, Limits.Of(own.Lower, own.Upper), own.Source)));

    /// <summary>The vehicle's own limits for the checks of a sheet. Those set before limits named their sheet come first,
    /// so that the last word on a check is what was said of this one.</summary>
    public static IEnumerable<LimitsSet> Own(VehicleState vehicle, CheckSheet sheet) => vehicle.Limits.Values
        .Where(own => own.Sheet is null || sheet.IsOneWith(own.Sheet))
        .OrderBy(own => own.Sheet is not null);

    /// <summary>The vehicle's own limits for a check of a sheet; null where it has none.</summary>
    public static LimitsSet? Own(VehicleState vehicle, CheckSheet sheet, string check) =>
        Own(vehicle, sheet).LastOrDefault(own => own.Check == check);

    /// <summary>The limits in force for a check of such a sheet; null when there are none.</summary>
    /// <param name="check">The check.</param>
    /// <param name="rule">The rule that readings are decided by.</param>
    public static LimitsInForce? Check(Check check, DecisionRule rule) => check.Measurand is { Limits: { } limits } measurand
        ? new LimitsInForce(limits.Lower, limits.Upper, measurand.LimitSource, rule.Id)
        : null;

    /// <summary>The same for a check that is compared with another, where that was not read: the source says so.</summary>
    public static LimitsInForce? WithoutOther(Check check, DecisionRule rule) =>
        Check(check, rule) is { } limits && check.Measurand!.DecidedBy is { IsOverruled: false } by
            ? limits with { Source = $"{ComparedWords.Missing(by)} {limits.Source}" }
            : Check(check, rule);

    /// <summary>The limits a reading at a place would be decided against as things stand, in terms of the reading itself;
    /// null when there are none.</summary>
    public static LimitsInForce? At(BenchScene scene, Check check, int? cylinder)
    {
        if (Comparing.OtherFor(scene, check, cylinder) is not { } other || RecordWords.EstimateOf(other) is not { } estimate)
        {
            return WithoutOther(check, scene.Sheet.Rule);
        }

        var by = check.Measurand!.DecidedBy!;
        var limits = Comparison.For(by.Form, by.Limits, estimate.Value);
        return new(limits.Lower, limits.Upper, $"{ComparedWords.Why(by, check.Measurand.DisplayUnit, other)} {by.LimitSource}", scene.Sheet.Rule.Id);
    }
}
