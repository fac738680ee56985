using InspectLog.Journal.Entries;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests.Sealing;

/// <summary>Sealing a vehicle in a data folder, and verifying the folder afterwards.</summary>
public sealed partial class SealerTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly SealKey _key = SealKey.Make();
    private readonly Sealer _sealer = new(Some.Clock(), SomeSeals.Program);
    private readonly Garage _garage;

    public SealerTests()
    {
        _garage = Garage.Open(_folder.Path, Some.Clock());
        foreach (var name in new[] { "Marigold", "Teasel" })
        {
            var id = _garage.AddVehicle(Some.Technician, Some.Vehicle(name));
            _garage.Note(id, "One");
            _garage.Note(id, "Two");
        }
    }

    private string Journal => _folder.At("vehicles", "marigold", "journal.jsonl");

    private SealFolder Folder => SealFolder.Of(_folder.Path, "marigold");

    public void Dispose()
    {
        _garage.Dispose();
        _key.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void Sealed_vehicle_is_intact_and_stays_so_when_entries_come_later()
    {
        var signed = Seal();
        Assert.Equal((3, "marigold"), (signed.Seal.Count, signed.Seal.Vehicle));
        Assert.Equal((true, SealStanding.Current), (Verified().IsIntact, Verified().Seals.Newest()!.Comparison!.Standing));

        _garage.Note("marigold", "Three");

        Assert.Equal((true, SealStanding.Continued), (Verified().IsIntact, Verified().Seals.Newest()!.Comparison!.Standing));
        Assert.True(Verified().Seals.IsIntact(_key.Public.Fingerprint));
        Assert.True(_garage.Note("marigold", "and the garage is none the wiser").NextSequence > 4);
    }

    [Fact]
    public void Later_seal_names_the_earlier_one_and_the_same_state_is_sealed_once()
    {
        var first = Seal();
        Assert.Equal(first.Compact, Seal().Compact);
        _garage.Note("marigold", "Three");
        var second = Seal();

        Assert.Equal(new EarlierSeal(3, first.Seal.Head), second.Seal.Earlier);
        Assert.Equal([first.FileName, second.FileName], Folder.Read().Select(one => one.Name));
        Assert.Empty(Verified().Seals.Missing);

        File.Delete(_folder.At("vehicles", "marigold", "seals", first.FileName));
        Assert.Equal([new EarlierSeal(3, first.Seal.Head)], Verified().Seals.Missing);
        Assert.True(Verified().IsIntact);
    }

    [Fact]
    public void Journal_that_is_not_what_was_sealed_is_not_sealed_again()
    {
        Seal();
        var cut = _garage.Entries("marigold").Take(2).ToList();

        var refused = Assert.Throws<SealRefusedException>(() => _sealer.Seal(Folder, "marigold", cut.Chain(), _key));

        Assert.Contains("was cut", refused.Message, StringComparison.Ordinal);
        Assert.Throws<SealRefusedException>(() => _sealer.Seal(Folder, "marigold", JournalChain.Of([]), _key));
        Assert.Throws<SealRefusedException>(() => _sealer.Seal(Folder, "marigold", JournalChain.Of([.. _garage.Entries("marigold")], isDamaged: true), _key));
        Assert.Single(Folder.Read());
    }

    [Fact]
    public void Seal_that_was_changed_is_named_and_the_others_still_count()
    {
        var first = Seal();
        _garage.Note("marigold", "Three");
        Seal();
        var path = _folder.At("vehicles", "marigold", "seals", first.FileName);
        File.WriteAllText(path, first.Compact + "\n");

        Assert.Contains($"The file {first.FileName} is no seal", Fault(), StringComparison.Ordinal);
        Assert.Equal(4, Verified().Seals.Newest()!.Kept.Sound!.Seal.Count);
    }

    [Fact]
    public void Seals_by_another_key_do_not_count_for_the_key_that_is_trusted()
    {
        Seal();
        using var forger = SealKey.Make();

        Assert.Contains("No seal here was made with the key", SealWords.Faults(Verified().Seals, forger.Public.Fingerprint).Single(), StringComparison.Ordinal);
        _garage.Note("marigold", "Three");
        _sealer.Seal(Folder, "marigold", Verified().Chain, forger);
        Assert.Equal(2, Verified().Seals.Keys.Count);
        Assert.Equal(3, Verified().Seals.Newest(_key.Public.Fingerprint)!.Kept.Sound!.Seal.Count);
    }

    [Fact]
    public void Seal_that_may_not_be_on_disk_is_not_acknowledged()
    {
        var signed = SignedSeal.Sign(SomeSeals.Of(SomeSeals.Journal(2).Chain()), _key);
        var disk = new FaultyDisk();
        new SealFolder(Made("whole"), disk).Keep(signed);
        Assert.True(disk.Acts >= 4);

        for (var act = 1; act <= disk.Acts; act++)
        {
            var folder = new SealFolder(Made($"failed-{act}"), new FaultyDisk().Arm(act));
            Assert.Throws<IOException>(() => folder.Keep(signed));
            Assert.All(folder.Read(), one => Assert.Null(one.Problem));
        }
    }

    private string Made(string name) => Directory.CreateDirectory(_folder.At(name)).FullName;

    private SignedSeal Seal() => _sealer.Seal(Folder, "marigold", _garage.Entries("marigold").ToList().Chain(), _key);

    private JournalReport Verified() => JournalVerifier.Verify(Journal).Journals[0];

    private string Fault()
    {
        Assert.False(JournalVerifier.Verify(_folder.Path).IsIntact);
        return string.Join('\n', SealWords.Faults(Verified().Seals, key: null));
    }

    private static void WriteAnew(TempFolder elsewhere, string name, IEnumerable<string> notes)
    {
        using var garage = Garage.Open(elsewhere.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle(name));
        foreach (var note in notes)
        {
            garage.Note(id, note);
        }
    }

    private void Withhold(int line)
    {
        var lines = File.ReadAllLines(Journal);
        var entry = System.Text.Json.Nodes.JsonNode.Parse(lines[line - 1])!.AsObject();
        entry.Remove("body");
        entry.Remove("salt");
        lines[line - 1] = entry.ToJsonString(new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        File.WriteAllText(Journal, string.Join('\n', lines) + "\n");
    }
}
