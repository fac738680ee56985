using InspectLog.App.Bench;
using InspectLog.App.Tests.Bench;
using InspectLog.App.Trends;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Trends;

/// <summary>Checks of sheets that go on from each other have one trend; those of other sheets have their own.</summary>
public sealed class TrendAcrossSheetsTests
{
    private const string OldSheet = "498186981c26035753e46f0d47d69a9d5beeb1b242639dfa45ab6f0d0e28186f";
    private const string Lead = "lead-resistance";

    private static readonly DateTimeOffset First = new(2024, 5, 1, 9, 0, 0, TimeSpan.Zero);

    private readonly List<EntryBody> _entries = [new VehicleAdded("Teasel", "", null)];

    private VehicleState Vehicle => _entries
        .Select((body, at) => Written.Entry(at + 1, First.AddDays(at), body))
        .Aggregate(VehicleState.Before("teasel"), (state, entry) => state.Apply(entry));

    [Fact]
    public void Trend_goes_on_from_the_earlier_sheet_to_the_one_that_continues_it()
    {
        Inspect(BuiltInSheets.FindExact(OldSheet)!, null, 6300);
        Inspect(BuiltInSheets.All[0], 6, 6400);

        var series = Assert.Single(TrendSeries.Of(Vehicle, SheetLibrary.BuiltIn));

        Assert.Equal([6300, 6400], series.Readings.Select(reading => reading.Value));
        Assert.Equal(BuiltInSheets.All[0].Sha256, series.Sheet.Sha256);
    }

    [Fact]
    public void Check_of_the_same_id_on_another_sheet_is_another_check()
    {
        Inspect(BuiltInSheets.All[0], 6, 6300);
        Inspect(BuiltInSheets.All[0] with { Id = "mower" }, 6, 6400);

        Assert.Empty(TrendSeries.Of(Vehicle, SheetLibrary.BuiltIn));
    }

    private void Inspect(CheckSheet sheet, int? cylinders, double value)
    {
        _entries.Add(new InspectionStarted(sheet.Id, sheet.Version, sheet.Sha256, "Tess Okafor", null, null) { Cylinders = cylinders });
        var reading = new DisplayedReading([value], new Accuracy(0.5, 1), 10);
        _entries.Add(new ReadingDecided(_entries.Count, Lead, 4, reading, "", null, null, null, []));
    }
}
