using InspectLog.Checks;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Measuring;
using System.Diagnostics;
using System.Globalization;

namespace InspectLog.Benchmarks.Searching;

/// <summary>Times the index of a large garage: opening it, making it again, and looking words up. The baseline is the same
/// garage with its entries worded as they stand in the journal.</summary>
internal static class SearchCommand
{
    private const int EntriesOfInspection = 200;
    private const int InspectionsOfVehicle = 10;

    private static readonly string[] Queries = ["tower 3", "lead 4", "9.4 kΩ", "Tess Okafor", "burnt"];

    /// <summary>Runs it.</summary>
    /// <param name="arguments">How many entries; 20,000 where none is said.</param>
    public static int Run(string[] arguments)
    {
        var count = arguments is [var given, ..] ? int.Parse(given, CultureInfo.InvariantCulture) : 20_000;
        var folder = Directory.CreateTempSubdirectory("inspectlog-search-").FullName;
        try
        {
            Fill(folder, count);
            foreach (var (name, wording) in new (string, Func<SheetStore, IEntryWording>?)[] { ("as they stand", null), ("in the sheet's words", SheetWording.Of) })
            {
                File.Delete(Path.Combine(folder, "index.db"));
                Time($"{name}: opening, index made again", () => Garage.Open(folder, TimeProvider.System, wording: wording).Dispose());
                Time($"{name}: opening, index as it is", () => Garage.Open(folder, TimeProvider.System, wording: wording).Dispose());
                using var garage = Garage.Open(folder, TimeProvider.System, wording: wording);
                foreach (var query in Queries)
                {
                    var hits = 0;
                    Time($"{name}: \"{query}\"", () => hits = garage.Search(query).Count, () => $", {hits} hits");
                }
            }

            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Fill(string folder, int count)
    {
        var sheet = BuiltInSheets.All[0];
        using var garage = Garage.Open(folder, TimeProvider.System);
        for (var made = 0; made < count;)
        {
            var id = garage.AddVehicle("Tess Okafor", new($"Vehicle {made}", "saloon", null));
            for (var visit = 0; visit < InspectionsOfVehicle && made < count; visit++, made += EntriesOfInspection)
            {
                var number = garage.Append(id, "Tess Okafor", _ =>
                    [new InspectionStarted(sheet.Id, sheet.Version, sheet.Sha256, "Tess Okafor", null, null)]).OpenInspection!.Number;
                garage.Append(id, "Tess Okafor", _ => [.. Enumerable.Range(0, EntriesOfInspection - 2).Select(at => Body(number, at))]);
                garage.Append(id, "Tess Okafor", _ => [new InspectionClosed(number)]);
            }
        }
    }

    private static EntryBody Body(long number, int at) => (at % 4) switch
    {
        0 => new ObservationMade(number, "cap-contacts", 1 + (at % 6), at % 8 == 0 ? "burnt" : "clean", false, null),
        1 => new ReadingDecided(
            number, "lead-resistance", 1 + (at % 6), new DisplayedReading([5000 + (at * 44)], new(0.8, 2), 10), $"{5 + (at * 0.044):0.00}k", null, null, null, []),
        2 => new NoteWritten(number, "spark", $"Looked at it again, {at}, as the lamp was weak."),
        _ => new ActionDone(number, "plug-condition", 1 + (at % 6), "cleaned", null),
    };

    private static void Time(string what, Action act, Func<string>? more = null)
    {
        var watch = Stopwatch.StartNew();
        act();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{watch.Elapsed.TotalMilliseconds,8:0} ms  {what}{more?.Invoke()}"));
    }
}
