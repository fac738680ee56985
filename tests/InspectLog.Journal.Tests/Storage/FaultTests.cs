using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>A disk that fails at one act: nothing acknowledged is lost, nothing else is believed, nothing more is written
/// there until the disk was read afresh, and everything else goes on.</summary>
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
            var kept = RunAgainst(folder.Path, new FaultyDisk().Arm(failAt, error, written));

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
    public void After_a_failed_sync_the_vehicle_is_refused_memory_stays_behind_the_disk_and_the_others_go_on()
    {
        var disk = new FaultyDisk();
        using var garage = Garage.Open(_folder.Path, Some.Clock(), disk);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var other = garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
        var before = garage.FindVehicle(id);
        disk.Arm(2); // the write works, the sync does not

        var refusal = Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "unsynced"));

        Assert.Contains("Writing the journal of Marigold failed", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(new GarageProblem(ReadOnly: true, refusal.Message) { VehicleId = id, IsFailedWrite = true }, Assert.Single(garage.Problems));
        Assert.Same(before, garage.FindVehicle(id));
        Assert.Empty(garage.Search("unsynced"));
        Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "another"));
        garage.Note(other, "written");
        Assert.Equal("Heron", garage.FindVehicle(garage.AddVehicle(Some.Technician, Some.Vehicle("Heron")))?.Name);
        garage.AppendToWorkshop("Tess", new InstrumentAdded(Some.Meter));
        garage.Media.Keep("photo"u8, "image/jpeg");
        Assert.Single(garage.Search("written"));
    }

    [Fact]
    public void Recording_of_a_vehicle_that_failed_does_not_wait_to_be_transcribed()
    {
        var disk = new FaultyDisk();
        using var garage = Garage.Open(_folder.Path, Some.Clock(), disk);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var recording = garage.Media.Keep("sound"u8, "audio/wav");
        garage.Append(id, Some.Technician, now => [new RecordingKept(1, recording, 1, null)]);
        Assert.Single(garage.WaitingRecordings());
        disk.Arm(1);

        Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "refused"));

        Assert.Empty(garage.WaitingRecordings());
    }

    [Fact]
    public void After_a_failed_medium_no_more_media_are_kept_and_entries_go_on() =>
        Closes("no recordings and photos can be kept", garage => garage.Media.Keep("photo"u8, "image/jpeg"));

    [Fact]
    public void After_a_failed_sheet_no_more_sheets_are_kept_and_entries_go_on() =>
        Closes("no inspection can be started", garage => garage.Sheets.Keep("{}"u8));

    [Fact]
    public void After_a_failed_adding_no_more_vehicles_are_added_and_entries_go_on() =>
        Closes("no vehicle can be added", garage => garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));

    [Fact]
    public void After_a_failed_write_of_the_workshop_it_stays_as_it_is_and_entries_go_on() =>
        Closes("instruments, own words and devices stay as they are", garage => garage.AppendToWorkshop("Tess", new InstrumentAdded(Some.Meter)));

    [Fact]
    public void Full_disk_is_told_of_everything_that_was_tried()
    {
        var disk = new FaultyDisk();
        using var garage = Garage.Open(_folder.Path, Some.Clock(), disk);
        string[] ids = [garage.AddVehicle(Some.Technician, Some.Vehicle()), garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"))];
        disk.ArmForGood(1, written: 0.5, FaultyDisk.NoSpace);

        foreach (var id in ids)
        {
            Assert.StartsWith("The disk is full. What was done to ", Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "too much")).Message, StringComparison.Ordinal);
        }

        Assert.Equal(ids.Order(), garage.Problems.Select(problem => problem.VehicleId).Order());
    }

    /// <summary>Something that fails once is refused from then on, with these words, and a vehicle can be written.</summary>
    private void Closes(string words, Action<Garage> act)
    {
        var disk = new FaultyDisk();
        using var garage = Garage.Open(_folder.Path, Some.Clock(), disk);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        disk.Arm(1);

        var refusal = Assert.Throws<JournalReadOnlyException>(() => act(garage));

        Assert.Contains(words, refusal.Message, StringComparison.Ordinal);
        Assert.Throws<JournalReadOnlyException>(() => act(garage));
        var problem = Assert.Single(garage.Problems);
        Assert.Equal((refusal.Message, true, false), (problem.Message, problem.ReadOnly, problem.ClosesGarage));
        garage.Note(id, "goes on");
        Assert.Single(garage.Search("goes on"));
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
        RunAgainst(folder.Path, disk);
        return disk.Acts;
    }

    /// <summary>Does a bit of everything, and gives the hashes of the entries that were acknowledged.</summary>
    private static Dictionary<string, List<string>> RunAgainst(string folder, FaultyDisk disk)
    {
        var kept = new Dictionary<string, List<string>>();
        try
        {
            using var garage = Garage.Open(folder, Some.Clock(), disk);
            Try(() => garage.AppendToWorkshop(Some.Technician, new InstrumentAdded(Some.Meter)));
            foreach (var name in new[] { "Teasel", "Marigold" })
            {
                Try(() => Note(garage.AddVehicle(Some.Technician, Some.Vehicle(name))));
                var photo = new MediaFile("", 0, "");
                Try(() => photo = garage.Media.Keep("a photo"u8, "image/jpeg"));
                foreach (var id in kept.Keys)
                {
                    Try(() => garage.Append(id, Some.Technician, _ => [new VehiclePictured(photo), new NoteWritten(0, null, "two")]));
                    Note(id);
                    Try(() => garage.Note(id, "three"));
                    Note(id);
                }
            }

            Assert.True(garage.Problems.Count(problem => problem.ReadOnly) <= 1); // what failed once closes itself only

            void Note(string id) => kept[id] = [.. garage.Entries(id).Select(entry => entry.Hash)];

            void Try(Action act)
            {
                try
                {
                    act();
                }
                catch (JournalReadOnlyException)
                {
                    Assert.Contains(garage.Problems, problem => problem.ReadOnly);
                    Assert.All(kept, pair => Assert.Equal(pair.Value, garage.Entries(pair.Key).Select(entry => entry.Hash)));
                }
            }
        }
        catch (IOException)
        {
            Assert.Empty(kept); // the folder could not be opened
        }

        return kept;
    }
}
