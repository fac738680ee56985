using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Benchmarks.Garages;

/// <summary>A garage with one vehicle of many inspections, the last of which is open.</summary>
internal static class LongJournal
{
    /// <summary>Entries of an inspection.</summary>
    public const int OfInspection = 200;

    /// <summary>Who inspects.</summary>
    public const string Technician = "Tess Okafor";

    /// <summary>Makes the garage; gives the address of the open inspection.</summary>
    /// <param name="folder">Its folder.</param>
    /// <param name="count">How many entries.</param>
    public static string Make(string folder, int count)
    {
        using var garage = Open(folder);
        var sheet = BuiltInSheets.All[0].For(6);
        var id = garage.AddVehicle(Technician, new("Marigold", "1968 saloon", null));
        for (var made = OfInspection; made < count; made += OfInspection)
        {
            Inspect(garage, id, sheet, made, OfInspection - 3, isClosed: true);
        }

        var number = Inspect(garage, id, sheet, count, OfInspection - 2, isClosed: false);
        return FormattableString.Invariant($"/vehicles/{id}/inspections/{number}");
    }

    /// <summary>Opens a garage as the program does.</summary>
    public static Garage Open(string folder) => Garage.Open(folder, TimeProvider.System, rules: SheetRules.Of, wording: SheetWording.Of);

    /// <summary>A reading, as the bench writes one.</summary>
    public static EntryBody Reading(long inspection, int n) => new ReadingDecided(
        inspection,
        "lead-resistance",
        1 + (n / 8 % 6),
        new DisplayedReading([9000 + (n % 500), 9010 + (n % 500)], new(0.8, 3), 10),
        "9k",
        new("meter-1", "Bench meter", QuantityKind.Resistance, new(0.8, 3), 0.1),
        new(4000, 12000, "common practice, no source", "non-binary"),
        new(9005 + (n % 500), 58.25, 116.5, 2, 0.999, Decision.Pass, [new("Accuracy", 58.2, double.PositiveInfinity), new("Repeats", 5, 1)]),
        [])
    { Stamp = new($"3f2c-{n:x8}.9ab0c1d2e3f4", new(2026, 11, 25, 10, 30, 0, TimeSpan.Zero)) };

    private static long Inspect(Garage garage, string id, CheckSheet sheet, int salt, int entries, bool isClosed)
    {
        var number = garage.Append(id, Technician, _ =>
        [
            new InspectionStarted(sheet.Id, sheet.Version, sheet.Sha256, Technician, 80_000 + salt, "km") { Rule = sheet.Rule.Id, Cylinders = 6 },
        ]).OpenInspection!.Number;
        garage.Append(id, Technician, _ => [.. Enumerable.Range(salt, entries).Select(n => Body(number, n))]);
        if (isClosed)
        {
            garage.Append(id, Technician, _ => [new InspectionClosed(number)]);
        }

        return number;
    }

    private static EntryBody Body(long inspection, int n) => (n % 8) switch
    {
        0 or 4 => new NoteWritten(inspection, "plug-condition", $"Lead {(n % 6) + 1} chafed where it crosses the bracket, and 30 °C under the bonnet. Note {n}."),
        1 => new ObservationMade(inspection, "plug-condition", (n / 8 % 6) + 1, n % 3 == 0 ? "wet" : "good", false, null),
        2 => new ActionDone(inspection, "plug-condition", (n / 8 % 6) + 1, "cleaned", null),
        _ => Reading(inspection, n),
    };
}
