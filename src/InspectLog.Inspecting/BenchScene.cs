using InspectLog.Checks;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting;

/// <summary>An inspection with its vehicle and sheet, as they stand at one moment.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Sheet">Its sheet, with the vehicle's own limits and the inspection's rule and coverage in place.</param>
public sealed record BenchScene(VehicleState Vehicle, InspectionState Inspection, CheckSheet Sheet)
{
    /// <summary>The scene of an inspection; null when there is no such vehicle, inspection or sheet.</summary>
    public static BenchScene? Find(Garage garage, SheetLibrary sheets, string vehicleId, long number) =>
        garage.FindVehicle(vehicleId) is { } vehicle ? Of(vehicle, sheets, number) : null;

    /// <summary>The scene of an inspection of a vehicle; null when it has no such inspection or its sheet is
    /// missing.</summary>
    public static BenchScene? Of(VehicleState vehicle, SheetLibrary sheets, long number) =>
        vehicle.Inspection(number) is { } inspection && sheets.Of(inspection) is { } sheet
            ? new BenchScene(vehicle, inspection, LimitsFor.Vehicle(vehicle, sheet) with
            {
                Rule = RuleWords.Of(inspection),
                Evaluation = RuleWords.EvaluationOf(inspection),
            })
            : null;
}
