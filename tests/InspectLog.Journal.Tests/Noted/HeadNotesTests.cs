using InspectLog.Journal.Entries;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Noted;

/// <summary>The journals note how far the others are, and what is missing since is told at every start.</summary>
public sealed class HeadNotesTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Vehicle_is_noted_when_it_is_added_and_an_inspection_when_it_is_closed()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
        Assert.Equal(("teasel", 1L, HashAt(garage, 1)), Noted(garage));

        var number = garage.StartInspection("teasel");
        garage.Note("teasel", "first");
        Assert.Equal(1, Noted(garage).Entries);
        garage.Append("teasel", Some.Technician, _ => [new InspectionClosed(number)]);

        Assert.Equal(("teasel", 5L, HashAt(garage, 5)), Noted(garage));
        Assert.Equal("workshop-noted", garage.Entries("teasel")[4].Kind);
        Assert.Equal(1, garage.FindVehicle("teasel")!.WorkshopNoted!.Entries);
    }

    [Fact]
    public void Stop_and_start_note_what_changed_and_write_nothing_when_nothing_did()
    {
        Fill();
        var lines = File.ReadAllLines(_folder.At("workshop.jsonl")).Length;

        Fill(garage => garage.Note("teasel", "later"));
        Assert.Equal(lines + 1, File.ReadAllLines(_folder.At("workshop.jsonl")).Length);
        Fill(garage => Assert.Equal(garage.Entries("teasel").Count, Noted(garage).Entries));

        Assert.Equal(lines + 1, File.ReadAllLines(_folder.At("workshop.jsonl")).Length);
    }

    [Fact]
    public void Journal_cut_short_is_told_at_every_start_until_it_is_put_back()
    {
        Fill();
        var whole = File.ReadAllLines(Teasel);
        File.WriteAllLines(Teasel, whole[..^1]);

        for (var start = 0; start < 3; start++)
        {
            Fill(garage =>
            {
                var problem = Assert.Single(garage.Problems);
                Assert.Equal((false, "teasel"), (problem.ReadOnly, problem.VehicleId));
                Assert.Contains("was cut short: it holds 2 entries, and 3 entries are noted", problem.Message, StringComparison.Ordinal);
            });
            File.Delete(_folder.At("index.db"));
        }

        File.WriteAllLines(Teasel, whole);
        Fill(garage => Assert.Empty(garage.Problems));
    }

    [Fact]
    public void What_only_the_index_still_knew_is_noted_and_told_at_every_start()
    {
        Fill();
        var workshop = File.ReadAllBytes(_folder.At("workshop.jsonl"));
        Fill(garage => garage.Note("teasel", "later"));
        File.WriteAllBytes(_folder.At("workshop.jsonl"), workshop); // as if the note at the stop had not been written
        File.WriteAllLines(Teasel, File.ReadAllLines(Teasel)[..^1]);

        for (var start = 0; start < 2; start++)
        {
            Fill(garage => Assert.Contains("holds 3 entries, and 4 entries are noted", Assert.Single(garage.Problems).Message, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Journal_that_was_cut_short_and_written_on_is_not_the_noted_one()
    {
        Fill();
        File.WriteAllLines(Teasel, File.ReadAllLines(Teasel)[..^1]);
        Fill(garage => garage.Note("teasel", "another third"));

        Fill(garage => Assert.Contains("is not the one that was noted: its entry 3 is another", Assert.Single(garage.Problems).Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Going_on_without_what_is_lost_ends_the_warning_and_stands_in_the_journal()
    {
        Fill();
        Directory.Delete(Path.GetDirectoryName(Teasel)!, recursive: true);

        Fill(garage =>
        {
            var loss = Assert.Single(garage.Losses);
            Assert.Equal(("teasel", 3L, null), (loss.VehicleId, loss.Entries, loss.Found));
            garage.Accept(Some.Technician, loss);
            Assert.Empty(garage.Problems);
        });
        Fill(garage => Assert.Empty(garage.Problems));

        Assert.Contains("\"kind\":\"loss-accepted\"", File.ReadAllText(_folder.At("workshop.jsonl")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Workshops_journal_that_is_gone_or_cut_is_missed_by_the_vehicles(bool gone)
    {
        Fill(garage =>
        {
            garage.AppendToWorkshop(Some.Technician, new InstrumentAdded(Some.Meter));
            garage.Append("teasel", Some.Technician, state => [new InspectionClosed(state.OpenInspection!.Number)]);
        });
        var path = _folder.At("workshop.jsonl");
        File.WriteAllLines(path, gone ? [] : File.ReadAllLines(path)[..1]);

        for (var start = 0; start < 2; start++)
        {
            Fill(garage => Assert.True(Assert.Single(garage.Problems).IsOfWorkshop));
        }

        Fill(garage =>
        {
            garage.Accept(Some.Technician, Assert.Single(garage.Losses));
            Assert.Empty(garage.Problems);
        });
        Fill(garage => Assert.Empty(garage.Problems));
    }

    [Fact]
    public void Damage_is_told_as_damage_and_not_as_loss_too()
    {
        Fill();
        File.WriteAllText(Teasel, File.ReadAllText(Teasel).Replace("first", "worst", StringComparison.Ordinal));

        Fill(garage => Assert.Contains("is damaged", Assert.Single(garage.Problems).Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Vehicle_stays_added_where_it_could_not_be_noted()
    {
        var disk = new FaultyDisk();
        using (var garage = Garage.Open(_folder.Path, Some.Clock(), disk))
        {
            disk.Arm(5); // write, sync, two folders, and then the note
            Assert.Equal("teasel", garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));
            Assert.True(Assert.Single(garage.Problems) is { IsOfWorkshop: true, IsFailedWrite: true, ClosesGarage: false });
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Empty(again.Problems);
        Assert.Equal("teasel", Noted(again).Id);
    }

    private string Teasel => _folder.At("vehicles", "teasel", "journal.jsonl");

    /// <summary>Opens the garage, with a vehicle of three entries where it is new, does something, and closes it.</summary>
    private void Fill(Action<Garage>? act = null)
    {
        var isNew = !File.Exists(_folder.At("workshop.jsonl"));
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        if (isNew)
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
            garage.StartInspection("teasel");
            garage.Note("teasel", "first");
        }

        act?.Invoke(garage);
    }

    private static string HashAt(Garage garage, int sequence) => garage.Entries("teasel")[sequence - 1].Hash;

    private static (string Id, long Entries, string Head) Noted(Garage garage)
    {
        var noted = Assert.Single(garage.Workshop.Noted.Vehicles).Value;
        return (noted.Id, noted.Entries, noted.Head);
    }
}
