using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using System.Globalization;

namespace InspectLog.Inspecting.Workings;

/// <summary>Values an inspection knows, written for a field.</summary>
public static class FromInspection
{
    /// <summary>The last value of a check at a place, in a unit; empty when there is none.</summary>
    public static string Value(BenchScene scene, string check, Unit unit, int? cylinder = null) =>
        Last(scene, check, cylinder) is { } value ? Text(unit.FromBase(value)) : "";

    /// <summary>The last value of a check at a place, base unit; null when there is none.</summary>
    public static double? Last(BenchScene scene, string check, int? cylinder = null) =>
        scene.Inspection.Readings.FindLast(one => one.Body.Check == check && one.Body.Cylinder == cylinder) is { } reading
            ? RecordWords.BestEstimate(reading.Body)
            : null;

    /// <summary>The last reading of a check at a place with the unit it fills a field in; null when there is none.</summary>
    public static (ReadingDecided Reading, Unit Unit)? Read(BenchScene scene, string check, Unit unit, int? cylinder = null) =>
        scene.Inspection.Readings.FindLast(one => one.Body.Check == check && one.Body.Cylinder == cylinder) is { } reading
            ? (reading.Body, unit)
            : null;

    /// <summary>Places of a check that have a value, with it in the base unit.</summary>
    public static IReadOnlyList<(int Cylinder, double Value)> Values(BenchScene scene, string check) =>
    [
        .. PlacesOf(scene, check)
            .Select(cylinder => (Cylinder: cylinder, Reading: scene.Inspection.Readings
                .FindLast(one => one.Body.Check == check && one.Body.Cylinder == cylinder)?.Body))
            .Where(one => one.Reading is not null)
            .Select(one => (one.Cylinder, RecordWords.BestEstimate(one.Reading!))),
    ];

    /// <summary>The displayed values of each place of a check, base unit.</summary>
    public static IReadOnlyList<IReadOnlyList<double>> Repeats(BenchScene scene, string check) =>
    [
        .. PlacesOf(scene, check)
            .Select(cylinder => scene.Inspection.Readings.FindLast(one => one.Body.Check == check && one.Body.Cylinder == cylinder))
            .Select(one => one?.Body.Reading)
            .OfType<DisplayedReading>()
            .Select(reading => reading.Values),
    ];

    private static IEnumerable<int> PlacesOf(BenchScene scene, string check) =>
        scene.Sheet.Find(check) is { } found ? scene.Sheet.PlacesOf(found) : [];

    /// <summary>A reading's value in a unit, as it stands in a field.</summary>
    public static string Text(ReadingDecided reading, Unit unit) => Text(unit.FromBase(RecordWords.BestEstimate(reading)));

    /// <summary>A value as it stands in a field.</summary>
    public static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
