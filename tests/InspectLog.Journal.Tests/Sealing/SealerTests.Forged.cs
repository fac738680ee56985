using InspectLog.Journal.Sealing;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests.Sealing;

/// <content>What was done to a sealed journal.</content>
public sealed partial class SealerTests
{
    [Fact]
    public void Entries_cut_from_the_end_are_found_and_named()
    {
        Seal();
        File.WriteAllLines(Journal, File.ReadAllLines(Journal)[..2]);

        Assert.Contains("was cut", Fault(), StringComparison.Ordinal);
        Assert.Contains("entry 3 is not there", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Hashes_rewritten_are_found_and_named()
    {
        Seal();
        var copy = SomeSeals.Journal(3);
        using var elsewhere = new TempFolder();
        WriteAnew(elsewhere, "Marigold", ["One", "Changed"]);
        File.Copy(elsewhere.At("vehicles", "marigold", "journal.jsonl"), Journal, overwrite: true);

        Assert.NotEqual(copy[0].Hash, Verified().Chain.HashOf(1));
        Assert.Empty(Verified().Damage);
        Assert.Contains("written anew from its first entry", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_vehicles_whole_journal_in_its_place_is_found_and_named()
    {
        Seal();
        File.Copy(_folder.At("vehicles", "teasel", "journal.jsonl"), Journal, overwrite: true);

        Assert.Empty(Verified().Damage);
        Assert.Contains("another journal", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_vehicles_journal_together_with_its_seals_is_found_and_named()
    {
        _sealer.Seal(SealFolder.Of(_folder.Path, "teasel"), "teasel", _garage.Entries("teasel").ToList().Chain(), _key);
        _garage.Dispose();
        Directory.Delete(_folder.At("vehicles", "marigold"), recursive: true);
        Directory.Move(_folder.At("vehicles", "teasel"), _folder.At("vehicles", "marigold"));

        Assert.Contains("is of the vehicle teasel, and this is marigold", Fault(), StringComparison.Ordinal);

        Directory.Move(_folder.At("vehicles", "marigold"), _folder.At("vehicles", "teasel-2"));
        Assert.True(JournalVerifier.Verify(_folder.At("vehicles", "teasel-2")).IsIntact); // as an import names it where teasel is taken
    }

    [Fact]
    public void Body_withheld_since_is_found_and_its_entry_named_until_a_later_seal_stands_for_it()
    {
        Seal();
        Withhold(2);
        Assert.Contains("Withheld since", Fault(), StringComparison.Ordinal);
        Assert.Contains("#2", Fault(), StringComparison.Ordinal);

        _sealer.Seal(Folder, "marigold", Verified().Chain, _key);

        Assert.True(Verified().IsIntact);
        Assert.Equal([2], Verified().Seals.Newest()!.Kept.Sound!.Seal.Withheld);
        using var other = SealKey.Make();
        Assert.False(Verified().Seals.IsIntact(other.Public.Fingerprint));
    }
}
