using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Bench;

/// <summary>A vehicle's state as its entries make it, without a disk.</summary>
internal static class Written
{
    /// <summary>Number of the inspection that every vehicle here has.</summary>
    public const long Inspection = 2;

    private static readonly Instrument Meter =
        new("meter", "Bench meter", QuantityKind.Resistance, new Accuracy(0.5, 2), 0.01);

    /// <summary>A vehicle with an inspection and further entries in it.</summary>
    public static BenchScene Scene(params EntryBody[] further)
    {
        EntryBody[] bodies =
        [
            new VehicleAdded("Marigold", "1974 saloon", null),
            Started(),
            .. further,
        ];
        var vehicle = bodies.Select(Entry).Aggregate(VehicleState.Before("marigold"), (state, entry) => state.Apply(entry));
        return BenchScene.Of(vehicle, SheetLibrary.BuiltIn, Inspection)!;
    }

    /// <summary>A vehicle with an inspection of an engine with so many cylinders.</summary>
    public static BenchScene Scene(int cylinders)
    {
        EntryBody[] bodies = [new VehicleAdded("Marigold", "1974 saloon", null), Started() with { Cylinders = cylinders }];
        var vehicle = bodies.Select(Entry).Aggregate(VehicleState.Before("marigold"), (state, entry) => state.Apply(entry));
        return BenchScene.Of(vehicle, SheetLibrary.BuiltIn, Inspection)!;
    }

    /// <summary>The scene after some more entries.</summary>
    public static BenchScene After(BenchScene scene, params EntryBody[] further)
    {
        var vehicle = further.Aggregate(scene.Vehicle, (now, body) => now.Apply(Entry(body, (int)now.NextSequence - 1)));
        return BenchScene.Of(vehicle, SheetLibrary.BuiltIn, Inspection)!;
    }

    /// <summary>An inspection's first entry, with the built-in sheet.</summary>
    public static InspectionStarted Started(double? odometer = null, string? unit = null)
    {
        var sheet = BuiltInSheets.All[0];
        return new(sheet.Id, sheet.Version, sheet.Sha256, "Tess Okafor", odometer, unit) { Cylinders = sheet.Cylinders };
    }

    /// <summary>A reading in the base unit of its check, decided against the sheet's limits.</summary>
    public static ReadingDecided Reading(string check, double value, int? cylinder = null) => ReadingRecords.Decide(
        Inspection,
        DecisionRule.NonBinary,
        new GivenReading(
            BuiltInSheets.All[0].Find(check)!, cylinder, [value], null, $"{value}", Meter, []));

    public static ObservationMade Seen(string check, string condition, int? cylinder = null, bool absent = false) =>
        new(Inspection, check, cylinder, condition, absent, null);

    public static ActionDone Done(string check, string action, int? cylinder = null) =>
        new(Inspection, check, cylinder, action, null);

    /// <summary>An entry as a journal would have it, without its hashes.</summary>
    public static JournalEntry Entry(long sequence, DateTimeOffset time, EntryBody body) =>
        new(sequence, time, TimeSpan.Zero, "Tess Okafor", body, "", 1, "", "");

    private static JournalEntry Entry(EntryBody body, int index) =>
        Entry(index + 1, new DateTimeOffset(2026, 3, 4, 9, 0, index, TimeSpan.Zero), body);
}
