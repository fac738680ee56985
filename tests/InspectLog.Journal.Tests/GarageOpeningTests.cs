using System.Collections.Concurrent;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests;

/// <summary>Opening a data folder: what is told of it, and what is refused.</summary>
public sealed class GarageOpeningTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Opening_tells_of_each_journal_read_and_of_lists_only_when_they_are_made_again()
    {
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            foreach (var name in new[] { "Marigold", "Teasel", "Heron" })
            {
                garage.AddVehicle(Some.Technician, Some.Vehicle(name));
            }
        }

        var usual = new Told();
        Garage.Open(_folder.Path, Some.Clock(), usual).Dispose();
        File.Delete(_folder.At("index.db"));
        var without = new Told();
        Garage.Open(_folder.Path, Some.Clock(), without).Dispose();

        GarageOpening[] read = [.. Enumerable.Range(1, 3).Select(n => new GarageOpening(OpeningStep.Reading, n, 3))];
        Assert.Equal(read.ToHashSet(), usual.ToHashSet());
        Assert.Equal(
            [.. read.ToHashSet(), .. Enumerable.Range(1, 3).Select(n => new GarageOpening(OpeningStep.MakingLists, n, 3))],
            without.ToHashSet());
    }

    [Fact]
    public void File_in_place_of_the_data_folder_is_told()
    {
        File.WriteAllText(_folder.At("journals"), "");

        var refusal = Assert.Throws<IOException>(() => Garage.Open(_folder.At("journals"), Some.Clock()));

        Assert.Equal($"{_folder.At("journals")} is a file, not a folder. Choose a folder for the journals.", refusal.Message);
    }

    [Fact]
    public void Journal_that_cannot_be_read_is_told_as_what_it_is_and_costs_only_itself()
    {
        string id;
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
            id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        }

        var journal = _folder.At(Path.Combine("vehicles", id, "journal.jsonl"));
        using (new FileStream(journal, FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            using var garage = Garage.Open(_folder.Path, Some.Clock());
            Assert.Contains(journal, Assert.Single(garage.Problems).Message, StringComparison.Ordinal);
            Assert.Equal(3, garage.Note("teasel", "goes on").NextSequence);
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Equal(2, again.Vehicles().Count);
    }

    [Fact]
    public void Same_folder_cannot_be_opened_twice()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());

        var refusal = Assert.Throws<DataFolderInUseException>(() => Garage.Open(_folder.Path, Some.Clock()));

        Assert.Contains(_folder.Path, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("another", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_that_is_a_file_is_refused()
    {
        File.WriteAllText(_folder.At("file"), "");

        Assert.ThrowsAny<IOException>(() => Garage.Open(_folder.At("file"), Some.Clock()));
    }

    /// <summary>All that was told of an opening; reports may come from several threads.</summary>
    private sealed class Told : ConcurrentBag<GarageOpening>, IProgress<GarageOpening>
    {
        public void Report(GarageOpening value) => Add(value);
    }
}
