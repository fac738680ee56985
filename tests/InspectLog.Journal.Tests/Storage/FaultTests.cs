using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>A disk that fails at one act: nothing acknowledged is lost, nothing else is believed, and nothing more is
/// written until the disk was read afresh.</summary>
public sealed class FaultTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(FaultyDisk.InputOutputError, 0.0)]
    [InlineData(FaultyDisk.InputOutputError, 0.5)]
    [InlineData(FaultyDisk.InputOutputError, 1.0)]
    [InlineData(FaultyDisk.NoSpace, 0.5)]
    public void Failure_at_any_act_loses_nothing_acknowledged(int error, double written)
    {
        var acts = ActsOfOneRun();
        Assert.True(acts > 10);
        for (var failAt = 1; failAt <= acts; failAt++)
        {
            using var folder = new TempFolder();
            var kept = RunUntilRefused(folder.Path, new FaultyDisk().Arm(failAt, error, written));

            using var again = Garage.Open(folder.Path, Some.Clock());

            foreach (var (id, hashes) in kept)
            {
                Assert.Equal(hashes, again.Entries(id).Take(hashes.Count).Select(entry => entry.Hash));
            }

            Assert.DoesNotContain(again.Problems, problem => problem.ReadOnly);
            Assert.Equal("Heron", again.FindVehicle(again.AddVehicle(Some.Technician, Some.Vehicle("Heron")))?.Name);
        }
    }

    [Fact]
    public void After_a_failed_sync_everything_is_refused_and_memory_stays_behind_the_disk()
    {
        var disk = new FaultyDisk();
        using var garage = Garage.Open(_folder.Path, Some.Clock(), disk);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var before = garage.FindVehicle(id);
        disk.Arm(2); // the write works, the sync does not

        var refusal = Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "unsynced"));

        Assert.Contains("failed", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(new GarageProblem(ReadOnly: true, refusal.Message), Assert.Single(garage.Problems));
        Assert.Same(before, garage.FindVehicle(id));
        Assert.Empty(garage.Search("unsynced"));
        Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "another"));
        Assert.Throws<JournalReadOnlyException>(() => garage.AddVehicle(Some.Technician, Some.Vehicle("Otter")));
        Assert.Throws<JournalReadOnlyException>(() => garage.AppendToWorkshop("Tess", new InstrumentAdded(Some.Meter)));
        Assert.Throws<JournalReadOnlyException>(() => garage.Media.Keep("photo"u8, "image/jpeg"));
        Assert.Equal("Marigold", Assert.Single(garage.Vehicles()).Name);
    }

    [Fact]
    public void Full_disk_is_called_that_and_the_half_written_line_is_set_aside_at_the_next_start()
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

        Assert.Equal(["vehicle-added", "tail-set-aside"], again.Entries(id).Select(entry => entry.Kind));
        var problem = Assert.Single(again.Problems);
        Assert.False(problem.ReadOnly);
        Assert.Equal(id, problem.VehicleId);
        var aside = (TailSetAside)again.Entries(id)[1].Body!;
        var remains = File.ReadAllText(_folder.At("set-aside", aside.File));
        Assert.StartsWith("{\"actor\":\"Tess Okafor\"", remains, StringComparison.Ordinal);
        Assert.Equal(remains.Length, aside.Bytes);
        Assert.Equal(4, again.Note(id, "now there is room").NextSequence);
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
            garage.AddVehicle(Some.Technician, Some.Vehicle("Otter"));
            garage.AddVehicle(Some.Technician, Some.Vehicle("Heron"));
            garage.Note("otter", "first");
            garage.Note("otter", "second");
        }

        var path = _folder.At("vehicles", "otter", "journal.jsonl");
        var damaged = File.ReadAllText(path).Replace("first", "worst", StringComparison.Ordinal);
        File.WriteAllText(path, damaged);

        using var again = Garage.Open(_folder.Path, Some.Clock());

        var problem = Assert.Single(again.Problems);
        Assert.True(problem.ReadOnly);
        Assert.Equal("otter", problem.VehicleId);
        Assert.Contains("Line 2 of the journal of Otter is damaged", problem.Message, StringComparison.Ordinal);
        Assert.Equal("Otter", again.FindVehicle("otter")!.Name);
        Assert.Single(again.Entries("otter"));
        var refusal = Assert.Throws<JournalReadOnlyException>(() => again.Note("otter", "more"));
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
            Directory.CreateDirectory(_folder.At("vehicles", ".new-otter"));
            File.WriteAllText(_folder.At("vehicles", ".new-otter", "journal.jsonl"), "{\"actor\":");
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.Empty(again.Vehicles());
        Assert.False(Assert.Single(again.Problems).ReadOnly);
        var aside = Assert.Single(Directory.GetDirectories(_folder.At("set-aside")));
        Assert.Equal("{\"actor\":", File.ReadAllText(Path.Combine(aside, "journal.jsonl")));
        Assert.Equal("otter", again.AddVehicle(Some.Technician, Some.Vehicle("Otter")));
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

    private static int ActsOfOneRun()
    {
        using var folder = new TempFolder();
        var disk = new FaultyDisk();
        RunUntilRefused(folder.Path, disk);
        return disk.Acts;
    }

    /// <summary>Does a bit of everything, and gives the hashes of the entries that were acknowledged.</summary>
    private static Dictionary<string, List<string>> RunUntilRefused(string folder, FaultyDisk disk)
    {
        var kept = new Dictionary<string, List<string>>();
        try
        {
            using var garage = Garage.Open(folder, Some.Clock(), disk);
            try
            {
                garage.AppendToWorkshop(Some.Technician, new InstrumentAdded(Some.Meter));
                foreach (var name in new[] { "Otter", "Marigold" })
                {
                    var id = garage.AddVehicle(Some.Technician, Some.Vehicle(name));
                    kept[id] = Hashes(garage.Entries(id));
                    var photo = garage.Media.Keep("a photo"u8, "image/jpeg");
                    garage.Append(id, Some.Technician, _ => [new VehiclePictured(photo), new NoteWritten(0, null, "two")]);
                    kept[id] = Hashes(garage.Entries(id));
                    garage.Note(id, "three");
                    kept[id] = Hashes(garage.Entries(id));
                }
            }
            catch (JournalReadOnlyException)
            {
                Assert.Contains(garage.Problems, problem => problem.ReadOnly);
                Assert.All(kept, pair => Assert.Equal(pair.Value, Hashes(garage.Entries(pair.Key))));
            }
        }
        catch (IOException)
        {
            Assert.Empty(kept); // the folder could not be opened
        }

        return kept;

        static List<string> Hashes(IReadOnlyList<JournalEntry> entries) => [.. entries.Select(entry => entry.Hash)];
    }
}
