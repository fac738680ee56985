using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Which limits the checks of a sheet are decided against on a vehicle: its own before the sheet's.</summary>
public static class LimitsFor
{
    /// <summary>A sheet with the vehicle's own limits in place.</summary>
    public static CheckSheet Vehicle(VehicleState vehicle, CheckSheet sheet) => LimitOverride.ApplyAll(
        sheet,
        vehicle.Limits.Values.Select(own => new LimitOverride(own.Check, Limits.Of(own.Lower, own.Upper), own.Source)));

    /// <summary>The limits in force for a check of such a sheet; null when there are none.</summary>
    /// <param name="check">The check.</param>
    /// <param name="rule">The rule that readings are decided by.</param>
    public static LimitsInForce? Check(Check check, DecisionRule rule) => check.Measurand is { Limits: { } limits } measurand
        ? new LimitsInForce(limits.Lower, limits.Upper, measurand.LimitSource, rule.Id)
        : null;
}
