using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>What an unfinished write or another program left behind: it is set aside or told of, and the rest works.</summary>
public sealed class RemainsTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Full_disk_is_called_that_and_nothing_of_the_refused_line_stays()
    {
        var disk = new FaultyDisk();
        string id;
        using (var garage = Garage.Open(_folder.Path, Some.Clock(), disk))
        {
            id = garage.AddVehicle(Some.Technician, Some.Vehicle());
            disk.Arm(1, FaultyDisk.NoSpace);
            var refusal = Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "no room"));
            Assert.StartsWith("The disk is full.", refusal.Message, StringComparison.Ordinal);
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.Equal("vehicle-added", Assert.Single(again.Entries(id)).Kind);
        Assert.Empty(again.Problems);
        Assert.Equal(3, again.Note(id, "now there is room").NextSequence);
    }

    [Fact]
    public void Half_written_line_of_a_power_cut_is_set_aside_at_the_next_start()
    {
        var (id, _) = VehicleWithTornTail();

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.Equal(["vehicle-added", "tail-set-aside"], again.Entries(id).Select(entry => entry.Kind));
        var problem = Assert.Single(again.Problems);
        Assert.False(problem.ReadOnly);
        Assert.Equal(id, problem.VehicleId);
        var aside = (TailSetAside)again.Entries(id)[1].Body!;
        var remains = File.ReadAllText(_folder.At("set-aside", aside.File));
        Assert.Equal("{\"actor\":\"Tess", remains);
        Assert.Equal(remains.Length, aside.Bytes);
        Assert.Equal(4, again.Note(id, "goes on").NextSequence);
    }

    [Fact]
    public void Remains_that_cannot_be_set_aside_stay_in_place_and_the_garage_opens_for_reading()
    {
        var (id, journal) = VehicleWithTornTail();
        var torn = File.ReadAllBytes(journal);
        var opening = new FaultyDisk();
        using (Garage.Open(_folder.At("empty"), Some.Clock(), opening))
        {
            // Counts the acts before the journals are read.
        }

        using (var garage = Garage.Open(_folder.Path, Some.Clock(), new FaultyDisk().Arm(opening.Acts + 1, FaultyDisk.NoSpace)))
        {
            Assert.True(Assert.Single(garage.Problems).ReadOnly);
            Assert.Equal("Marigold", garage.FindVehicle(id)!.Name);
            Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "not now"));
        }

        Assert.Equal(torn, File.ReadAllBytes(journal));
        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Equal("tail-set-aside", again.Entries(id)[^1].Kind);
    }

    [Fact]
    public void Damage_in_the_middle_stops_that_journal_and_no_other()
    {
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
            garage.AddVehicle(Some.Technician, Some.Vehicle("Heron"));
            garage.Note("teasel", "first");
            garage.Note("teasel", "second");
        }

        var path = _folder.At("vehicles", "teasel", "journal.jsonl");
        var damaged = File.ReadAllText(path).Replace("first", "worst", StringComparison.Ordinal);
        File.WriteAllText(path, damaged);

        using var again = Garage.Open(_folder.Path, Some.Clock());

        var problem = Assert.Single(again.Problems);
        Assert.True(problem.ReadOnly);
        Assert.Equal("teasel", problem.VehicleId);
        Assert.Contains("Line 2 of the journal of Teasel is damaged", problem.Message, StringComparison.Ordinal);
        Assert.Equal("Teasel", again.FindVehicle("teasel")!.Name);
        Assert.Equal([1L, 3L], again.Entries("teasel").Select(entry => entry.Sequence));
        Assert.Empty(again.Search("first"));
        Assert.Single(again.Search("second"));
        var refusal = Assert.Throws<JournalReadOnlyException>(() => again.Note("teasel", "more"));
        Assert.Contains("line 2", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(3, again.Note("heron", "goes on").NextSequence);
        Assert.Equal(damaged, File.ReadAllText(path));
    }

    [Fact]
    public void Journal_that_another_program_wrote_to_takes_no_more()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        File.AppendAllText(_folder.At("vehicles", id, "journal.jsonl"), "scribble\n");

        var refusal = Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "after"));

        Assert.Contains("another program", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Vehicle_that_was_being_added_is_set_aside()
    {
        using (Garage.Open(_folder.Path, Some.Clock()))
        {
            Directory.CreateDirectory(_folder.At("vehicles", ".new-teasel"));
            File.WriteAllText(_folder.At("vehicles", ".new-teasel", "journal.jsonl"), "{\"actor\":");
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.Empty(again.Vehicles());
        Assert.False(Assert.Single(again.Problems).ReadOnly);
        var aside = Assert.Single(Directory.GetDirectories(_folder.At("set-aside")));
        Assert.Equal("{\"actor\":", File.ReadAllText(Path.Combine(aside, "journal.jsonl")));
        Assert.Equal("teasel", again.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));
    }

    [Fact]
    public void Torn_line_of_the_workshop_is_set_aside_too()
    {
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.AppendToWorkshop(Some.Technician, new InstrumentAdded(Some.Meter));
        }

        File.AppendAllText(_folder.At("workshop.jsonl"), "{\"act");

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.Equal([Some.Meter], again.Workshop.Instruments);
        Assert.Contains("the workshop", Assert.Single(again.Problems).Message, StringComparison.Ordinal);
        Assert.Equal("{\"act", File.ReadAllText(Assert.Single(Directory.GetFiles(_folder.At("set-aside")))));
    }

    private (string Id, string Journal) VehicleWithTornTail()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var journal = _folder.At("vehicles", id, "journal.jsonl");
        File.AppendAllText(journal, "{\"actor\":\"Tess");
        return (id, journal);
    }
}
