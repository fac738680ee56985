using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Which limits the checks of a sheet are decided against on a vehicle: its own before the sheet's.</summary>
public static class LimitsFor
{
    /// <summary>Name of the decision rule, as it is written to the journal and printed in the report.</summary>
    public const string Rule = "ILAC-G8:09/2019 non-binary, guard band equal to the expanded uncertainty";

    /// <summary>A sheet with the vehicle's own limits in place.</summary>
    public static CheckSheet Vehicle(VehicleState vehicle, CheckSheet sheet) => LimitOverride.ApplyAll(
        sheet,
        vehicle.Limits.Values.Select(own => new LimitOverride(own.Check, Limits.Of(own.Lower, own.Upper), own.Source)));

    /// <summary>The limits in force for a check of such a sheet; null when there are none.</summary>
    public static LimitsInForce? Check(Check check) => check.Measurand is { Limits: { } limits } measurand
        ? new LimitsInForce(limits.Lower, limits.Upper, measurand.LimitSource, Rule)
        : null;
}
