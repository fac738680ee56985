using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Bench;

/// <summary>An inspection by the sheet for a search in depth, without a disk.</summary>
internal static class InDepth
{
    public const string Battery = "battery-voltage";
    public const string Supply = "supply-voltage";
    public const string Length = "lead-length";
    public const string Lead = "lead-resistance";

    /// <summary>±(0.8 % + 2) on a 20 V range in steps of 10 mV.</summary>
    public static readonly Instrument Meter = new("bench", "Bench meter", QuantityKind.Voltage, new(0.8, 2), 0.01);

    public static readonly Instrument OtherMeter = Meter with { Id = "old", Name = "Old meter" };

    private static readonly Instrument Ohms = new("bench-ohms", "Bench meter, ohms", QuantityKind.Resistance, new(1, 5), 10);

    private static readonly Instrument Tape = new("tape", "Tape", QuantityKind.Length, new(0, 1), 1);

    public static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionInDepth)!.For(6);

    public static Check Check(string id) => Sheet.Find(id)!;

    public static BenchScene Scene(params EntryBody[] first)
    {
        EntryBody[] bodies =
        [
            new VehicleAdded("Marigold", "1974 saloon", null),
            new InspectionStarted(Sheet.Id, Sheet.Version, Sheet.Sha256, "Tess Okafor", null, null) { Cylinders = 6 },
            .. first,
        ];
        var vehicle = bodies.Select((body, at) => Written.Entry(at + 1, default, body))
            .Aggregate(VehicleState.Before("marigold"), (state, entry) => state.Apply(entry));
        return BenchScene.Of(vehicle, SheetLibrary.BuiltIn, Written.Inspection)!;
    }

    /// <summary>The scene after entries, decided as everything that is recorded is.</summary>
    public static BenchScene Record(this BenchScene scene, params EntryBody[] bodies) =>
        Written.After(scene, [.. Comparing.Settled(scene, bodies)]);

    public static ReadingDecided Volts(string check, double value, Instrument? meter = null) => Of(check, null, meter ?? Meter, value);

    public static ReadingDecided Ohm(double value, int lead) => Of(Lead, lead, Ohms, value);

    public static ReadingDecided Millimetres(double value, int lead) => Of(Length, lead, Tape, value);

    /// <summary>The last reading of a check that counts.</summary>
    public static Recorded<ReadingDecided> Last(this BenchScene scene, string check, int? cylinder = null) =>
        scene.Inspection.Readings.FindLast(one => one.Body.Check == check && one.Body.Cylinder == cylinder)!;

    private static ReadingDecided Of(string check, int? place, Instrument meter, double value) => ReadingRecords.Decide(
        Written.Inspection, DecisionRule.NonBinary, new GivenReading(Check(check), place, [value], null, $"{value}", meter, []));
}
