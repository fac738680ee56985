using InspectLog.Journal.Entries;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>What is written and synced, and in which order, before anything is acknowledged. A sync that was left out
/// shows in no other test: only a power cut would tell.</summary>
public sealed class OrderTests : IDisposable
{
    // FIPS 180-2, appendix B.1: SHA-256 of "abc".
    private const string Sha256OfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private readonly TempFolder _folder = new();
    private readonly FaultyDisk _disk = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void New_data_folder_is_synced_with_every_folder_above_it_that_is_new()
    {
        using var garage = Garage.Open(_folder.At("workshops", "ours") + "/", Some.Clock(), _disk);

        Assert.Equal([_folder.At("workshops"), _folder.Path, _folder.At("workshops", "ours")], _disk.Log);
    }

    [Fact]
    public void Append_is_one_write_and_one_sync()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock(), _disk);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());

        AssertActs(() => garage.Append(id, "Tess", _ => [new NoteWritten(0, null, "one"), new NoteWritten(0, null, "two")]), "write", "sync");
    }

    [Fact]
    public void Append_that_fails_is_taken_back_at_once()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock(), _disk);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        _disk.Arm(2);

        AssertActs(
            () => Assert.Throws<JournalReadOnlyException>(() => garage.Note(id, "refused")), "write", "sync", "cut", "sync");
    }

    [Fact]
    public void New_vehicle_is_whole_on_disk_before_it_gets_its_place()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock(), _disk);

        AssertActs(
            () => garage.AddVehicle(Some.Technician, Some.Vehicle()),
            "write", "sync", _folder.At("vehicles", ".new-marigold"), _folder.At("vehicles"), "write", "sync", _folder.Path);
    }

    [Fact]
    public void First_entry_of_the_workshop_syncs_the_folder_that_names_its_file()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock(), _disk);

        AssertActs(() => garage.AppendToWorkshop("Tess", new InstrumentRetired("a")), "write", "sync", _folder.Path);
        AssertActs(() => garage.AppendToWorkshop("Tess", new InstrumentRetired("b")), "write", "sync");
    }

    [Fact]
    public void Media_file_and_the_folders_that_name_it_are_synced()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock(), _disk);
        string[] folders = [_folder.At("media"), _folder.At("media", Sha256OfAbc[..2])];

        AssertActs(() => garage.Media.Keep("abc"u8, "audio/wav"), folders[0], "write", "sync", folders[1]);
        AssertActs(() => garage.Media.Keep("abc"u8, "audio/wav"), folders);
    }

    [Fact]
    public void Remains_of_a_write_are_safe_before_they_are_cut_off()
    {
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle());
        }

        File.AppendAllText(_folder.At("vehicles", "marigold", "journal.jsonl"), "{");

        using var again = Garage.Open(_folder.Path, Some.Clock(), _disk);

        Assert.Equal(
            [_folder.Path, "write", "sync", _folder.At("set-aside"), "cut", "sync", "write", "sync", "write", "sync"], _disk.Log);
    }

    private void AssertActs(Action act, params string[] acts)
    {
        var before = _disk.Acts;
        act();
        Assert.Equal(acts, _disk.Log.Skip(before));
    }
}
