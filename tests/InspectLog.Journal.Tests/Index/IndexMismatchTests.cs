using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>An index and the journals beside it that do not tell the same: of an older state, or of journals that lost something.</summary>
public sealed class IndexMismatchTests : IDisposable
{
    private readonly TempFolder _folder = new();

    private string IndexFile => _folder.At("index.db");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Index_of_an_older_state_is_made_again()
    {
        using (FilledGarage.In(_folder))
        {
            // Closed in good order.
        }

        var old = File.ReadAllBytes(IndexFile);
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.Note("teasel", "a walrus");
            garage.AddVehicle(Some.Technician, Some.Vehicle("Heron"));
        }

        File.WriteAllBytes(IndexFile, old);

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Single(again.Search("walrus"));
        Assert.Contains(again.Vehicles(), vehicle => vehicle.Name == "Heron");
    }

    [Fact]
    public void Journal_cut_short_at_a_lines_end_is_noticed_until_it_is_put_back()
    {
        using (FilledGarage.In(_folder))
        {
            // Closed in good order.
        }

        var journal = _folder.At("vehicles", "teasel", "journal.jsonl");
        File.WriteAllLines(journal, File.ReadAllLines(journal).SkipLast(1));

        using (var shorter = Garage.Open(_folder.Path, Some.Clock()))
        {
            var problem = Assert.Single(shorter.Problems);
            Assert.Equal((false, "teasel"), (problem.ReadOnly, problem.VehicleId));
            Assert.Contains("was cut short", problem.Message, StringComparison.Ordinal);
            Assert.Empty(shorter.WaitingRecordings());
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Contains("was cut short", Assert.Single(again.Problems).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Vehicle_whose_journal_is_gone_is_told_of_and_not_begun_anew(bool empty)
    {
        using (FilledGarage.In(_folder))
        {
            // Closed in good order.
        }

        var journal = _folder.At("vehicles", "teasel", "journal.jsonl");
        File.Delete(journal);
        if (empty)
        {
            File.WriteAllText(journal, "");
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());
        var problem = Assert.Single(again.Problems);
        Assert.Contains("missing or empty", problem.Message, StringComparison.Ordinal);
        Assert.Equal((true, "teasel", false), (problem.ReadOnly, problem.VehicleId, problem.ClosesGarage));
        Assert.Equal("teasel", again.FindVehicle("teasel")!.Name);
        Assert.Throws<JournalReadOnlyException>(() => again.Note("teasel", "not from the beginning"));
        Assert.Equal("teasel-2", again.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));
    }

    [Fact]
    public void Vehicle_that_is_gone_is_noticed()
    {
        using (FilledGarage.In(_folder))
        {
            // Closed in good order.
        }

        Directory.Delete(_folder.At("vehicles", "teasel"), recursive: true);

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Equal("teasel", Assert.Single(again.Problems).VehicleId);
        Assert.Equal("Marigold", Assert.Single(again.Vehicles()).Name);
    }
}
