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

            Assert.Equal(kept.Keys.Order(), again.Vehicles().Select(vehicle => vehicle.Id).Order());
            foreach (var (id, hashes) in kept)
            {
                Assert.Equal(hashes, again.Entries(id).Select(entry => entry.Hash)); // and nothing that was refused
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
        Assert.Throws<JournalReadOnlyException>(() => garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));
        Assert.Throws<JournalReadOnlyException>(() => garage.AppendToWorkshop("Tess", new InstrumentAdded(Some.Meter)));
        Assert.Throws<JournalReadOnlyException>(() => garage.Media.Keep("photo"u8, "image/jpeg"));
        Assert.Equal("Marigold", Assert.Single(garage.Vehicles()).Name);
    }

    [Theory]
    [InlineData(0.5, "tail-set-aside")]
    [InlineData(1.0, "note-written")]
    public void Disk_that_goes_on_failing_keeps_what_was_acknowledged_and_what_is_not_whole_is_set_aside(double written, string last)
    {
        var disk = new FaultyDisk();
        using (var garage = Garage.Open(_folder.Path, Some.Clock(), disk))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
            disk.ArmForGood(1, written);
            Assert.Throws<JournalReadOnlyException>(() => garage.Note("teasel", "refused"));
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.Equal(["vehicle-added", last], again.Entries("teasel").Select(entry => entry.Kind));
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
                foreach (var name in new[] { "Teasel", "Marigold" })
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
