using System.Globalization;
using InspectLog.App.Bench;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Workings;

/// <summary>Values an inspection knows, written for a field.</summary>
public static class FromInspection
{
    /// <summary>The last value of a check at a place, in a unit; empty when there is none.</summary>
    public static string Value(BenchScene scene, string check, Unit unit, int? cylinder = null)
    {
        var reading = scene.Inspection.Readings
            .FindLast(one => one.Body.Check == check && one.Body.Cylinder == cylinder)?.Body;
        return reading is null ? "" : Text(unit.FromBase(RecordWords.BestEstimate(reading)));
    }

    /// <summary>Places of a check that have a value, with it in the base unit.</summary>
    public static IReadOnlyList<(int Cylinder, double Value)> Values(BenchScene scene, string check) =>
    [
        .. Enumerable.Range(1, scene.Sheet.Cylinders)
            .Select(cylinder => (Cylinder: cylinder, Reading: scene.Inspection.Readings
                .FindLast(one => one.Body.Check == check && one.Body.Cylinder == cylinder)?.Body))
            .Where(one => one.Reading is not null)
            .Select(one => (one.Cylinder, RecordWords.BestEstimate(one.Reading!))),
    ];

    public static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
