using InspectLog.Checks.Derived;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Workings;

/// <summary>How warm a winding is by its resistance.</summary>
public static class WindingWorking
{
    private static readonly IReadOnlyList<string> Windings =
        ["coil-secondary-resistance", "coil-primary-resistance", "coil-secondary-winding", "pickup-coil-resistance"];

    /// <summary>The winding temperature and its rise.</summary>
    public static readonly WorkingKind Kind = new(
        "winding-temperature",
        "Temperature of a winding",
        "How warm a copper winding is inside, and how far above the air, by what its resistance has risen.",
        Fields,
        (inputs, scene) =>
        [
            new(
                "By its resistance",
                ResistanceRise.From(
                    inputs.Number("cold"), inputs.Number("coldTemperature"), inputs.Number("hot"), inputs.Number("air"), UnitIn(scene)).Steps,
                [
                    "The number 235 is that of IEC 60034-1 for copper: at so many degrees below 0 °C its resistance would vanish if it fell on evenly.",
                    "A winding cools from the moment it is switched off. Read the hot resistance at once, and leave the meter on it.",
                ]),
        ]) { Checks = Windings };

    private static IReadOnlyList<WorkingField> Fields(BenchScene scene)
    {
        var (unit, readings) = (UnitIn(scene), Readings(scene));
        var cold = readings.Count > 0 ? readings[0].Body : null;
        // A second one that was referred to another temperature says nothing of how hot the winding was.
        var hot = readings.Count > 1 && readings[^1].Body is { Reading: DisplayedReading { Winding: null } } last ? last : null;
        return
        [
            Field("cold", "Resistance cold", unit, cold, "Filled in from the first reading of the winding, where there is one."),
            new("coldTemperature", "Temperature of the winding then", "°C", Temperature(cold), [], "That of the room, once it has stood there for hours."),
            Field("hot", "Resistance hot", unit, hot, "Filled in from the last reading, where there are two."),
            new("air", "Air about the hot winding", "°C", "", []),
        ];
    }

    private static WorkingField Field(string name, string label, Unit unit, ReadingDecided? reading, string hint) =>
        new(name, label, unit.Symbol, reading is null ? "" : FromInspection.Text(reading, unit), [], hint)
        {
            Read = reading is null ? null : (reading, unit),
        };

    // A reading referred to 20 °C is what the winding has at 20 °C.
    private static string Temperature(ReadingDecided? reading) => reading?.Reading is DisplayedReading { Winding: { } winding }
        ? FromInspection.Text(winding.To)
        : "";

    private static Unit UnitIn(BenchScene scene) => scene.Sheet.Find(Winding(scene))?.Measurand?.DisplayUnit ?? Units.Ohm;

    private static List<Recorded<ReadingDecided>> Readings(BenchScene scene)
    {
        var winding = Winding(scene);
        return [.. scene.Inspection.Readings.Where(one => one.Body.Check == winding && one.Body.Reading is DisplayedReading)];
    }

    // The one that was read twice, or else the first that was read.
    private static string Winding(BenchScene scene) => Windings
        .OrderByDescending(check => Math.Min(2, scene.Inspection.Readings.Count(one => one.Body.Check == check)))
        .First();
}
