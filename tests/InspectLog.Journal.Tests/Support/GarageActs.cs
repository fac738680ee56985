using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Tests.Support;

/// <summary>What tests do with a garage all the time.</summary>
public static class GarageActs
{
    public static VehicleState Note(this Garage garage, string vehicle, string text) => garage.Append(
        vehicle, Some.Technician, state => [new NoteWritten(state.OpenInspection?.Number ?? 0, null, text)]);

    public static long StartInspection(this Garage garage, string vehicle) => garage.Append(
        vehicle, Some.Technician, _ => [new InspectionStarted("ignition-breakerless-6", 1, new string('c', 64), Some.Technician, null, null)])
        .OpenInspection!.Number;
}
