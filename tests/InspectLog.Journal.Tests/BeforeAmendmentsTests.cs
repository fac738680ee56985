using System.Globalization;
using System.Text;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;
using InspectLog.Measuring;

namespace InspectLog.Journal.Tests;

/// <summary>A garage that an older version of the program wrote. See TestData/before-amendments/README.md.</summary>
public sealed class BeforeAmendmentsTests : IDisposable
{
    private static readonly (string Journal, int Entries)[] Journals =
        [("workshop.jsonl", 6), ("vehicles/marigold/journal.jsonl", 287), ("vehicles/teasel/journal.jsonl", 184)];

    private readonly TempFolder _folder = new();

    // Opening writes an index, so a copy is opened.
    public BeforeAmendmentsTests()
    {
        var kept = TestData.PathOf("before-amendments");
        foreach (var file in Directory.GetFiles(kept, "*", SearchOption.AllDirectories))
        {
            var copy = _folder.At(Path.GetRelativePath(kept, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Old_garage_is_intact_with_all_its_entries_and_media()
    {
        var report = JournalVerifier.Verify(_folder.Path);

        Assert.True(report.IsIntact);
        Assert.Equal(
            Journals.Select(one => (_folder.At(one.Journal.Split('/')), one.Entries)).ToHashSet(),
            report.Journals.Select(journal => (journal.File, (int)journal.Entries)).ToHashSet());
        Assert.All(
            report.Journals.SelectMany(journal => journal.Media ?? []),
            media => Assert.Equal(MediaCondition.Whole, media.Condition));
    }

    [Fact]
    public void Opening_an_old_garage_reads_every_entry_and_changes_none()
    {
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            Assert.Empty(garage.Problems);
            Assert.Equal([("marigold", 287), ("teasel", 184)], garage.Vehicles().Select(one => (one.Id, garage.Entries(one.Id).Count)));
            Assert.All(
                garage.Vehicles().SelectMany(vehicle => garage.Entries(vehicle.Id)), entry => Assert.NotNull(entry.Body));
        }

        Assert.All(Journals, one =>
        {
            var (before, after) = (
                TestData.Bytes(["before-amendments", .. one.Journal.Split('/')]), File.ReadAllBytes(_folder.At(one.Journal.Split('/'))));
            Assert.Equal(before, after[..before.Length]);
            var added = Encoding.UTF8.GetString(after[before.Length..]);
            Assert.Equal(one.Journal == "workshop.jsonl" ? 1 : 0, added.Split("\"kind\":\"vehicles-noted\"").Length - 1);
            Assert.Equal(one.Journal == "workshop.jsonl" ? 1 : 0, added.Count(c => c == '\n'));
        });
    }

    [Fact]
    public void Old_readings_keep_their_figures_limits_and_decisions()
    {
        var expected = File.ReadLines(TestData.PathOf("before-amendments", "readings.csv")).Skip(1).ToList();

        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var read = garage.Vehicles()
            .SelectMany(vehicle => garage.FindVehicle(vehicle.Id)!.Inspections
                .SelectMany(inspection => inspection.Readings)
                .Select(reading => Row(vehicle.Id, reading)));

        Assert.Equal(103, expected.Count);
        Assert.Equal(expected.Select(Columns), read);
    }

    [Fact]
    public void Old_inspections_name_the_sheet_they_were_made_with()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var sheets = garage.Vehicles()
            .SelectMany(vehicle => garage.FindVehicle(vehicle.Id)!.Inspections)
            .Select(inspection => (inspection.How.Sheet, inspection.How.SheetSha256))
            .ToList();

        Assert.Equal(8, sheets.Count);
        Assert.Equal(
            ("ignition-breakerless-6", "498186981c26035753e46f0d47d69a9d5beeb1b242639dfa45ab6f0d0e28186f"),
            Assert.Single(sheets.Distinct()));
    }

    /// <summary>Numbers as numbers: the table may spell them in another way than the program.</summary>
    private static IReadOnlyList<object?> Columns(string row) =>
        [.. row.Split(',').Select(cell => double.TryParse(cell, CultureInfo.InvariantCulture, out var number) ? number : Spelt(cell))];

    private static object? Spelt(string cell) => cell.Length == 0 ? null : cell;

    private static IReadOnlyList<object?> Row(string vehicle, Recorded<ReadingDecided> reading)
    {
        var body = reading.Body;
        var decided = body.Conformity!;
        return
        [
            vehicle, (double)reading.Sequence, (double)body.Inspection, body.Check, (double?)body.Cylinder, Shown(body.Reading),
            decided.Value, decided.StandardUncertainty, decided.ExpandedUncertainty, decided.CoverageFactor,
            decided.ProbabilityOfConformity, decided.Decision.Words(), body.Limits!.Lower, body.Limits.Upper, body.Limits.Rule,
        ];
    }

    // A lone value is a number in the table, several are words.
    private static object Shown(Reading reading) => reading switch
    {
        DisplayedReading { Values: [var lone] } => lone,
        DisplayedReading displayed => string.Join(' ', displayed.Values.Select(Number)),
        Bracket bracket => $"{Number(bracket.Goes)} to {Number(bracket.Stops)}",
        _ => throw new NotSupportedException(),
    };

    private static string Number(double value) => value.ToString(CultureInfo.InvariantCulture);
}
