using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests;

/// <summary>Journals that were written elsewhere.</summary>
public sealed class GarageImportTests : IDisposable
{
    private readonly TempFolder _there = new();
    private readonly TempFolder _here = new();

    public void Dispose()
    {
        _there.Dispose();
        _here.Dispose();
    }

    [Fact]
    public void Journal_comes_in_line_for_line_and_is_found_by_search_at_once_and_after_a_restart()
    {
        var journal = Written("Chafed lead");
        using (var garage = Open(_here))
        {
            Assert.Equal("marigold", garage.AddJournal("marigold", journal, []));
            Assert.Single(garage.Search("chafed"));
        }

        using var again = Open(_here);
        Assert.Equal(journal, File.ReadAllBytes(_here.At("vehicles", "marigold", "journal.jsonl")));
        Assert.Equal(Some.Technician, again.Entries("marigold")[^1].Actor);
        Assert.Single(again.Search("chafed"));
    }

    [Fact]
    public void Id_that_is_taken_or_is_none_is_not_used_and_a_vehicle_comes_in_once()
    {
        using var garage = Open(_here);
        garage.AddVehicle(Some.Technician, Some.Vehicle());
        var journal = Written("Chafed lead");

        Assert.Equal("marigold-2", garage.AddJournal("marigold", journal, []));
        Assert.Equal("marigold-2", garage.FindJournal(garage.Entries("marigold-2")[0].Hash));
        Assert.Throws<InvalidOperationException>(() => garage.AddJournal("teasel", journal, []));
        Assert.Equal(2, garage.Vehicles().Count);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}\n")]
    public void Journal_that_is_not_sound_is_not_taken(string journal)
    {
        using var garage = Open(_here);

        Assert.Throws<FormatException>(() => garage.AddJournal("marigold", System.Text.Encoding.UTF8.GetBytes(journal), []));
        Assert.Empty(garage.Vehicles());
    }

    [Fact]
    public void Newer_state_continues_and_what_is_here_stays_though_it_came_without_bodies()
    {
        var older = Written("Chafed lead");
        var newer = WithoutFirstBody(Written("Rotor burnt"));
        using var garage = Open(_here);
        garage.AddJournal("marigold", older, []);

        var state = garage.ContinueJournal("marigold", newer, []);

        Assert.Equal(5, state.NextSequence);
        Assert.Equal("Marigold", state.Name);
        Assert.Equal(older, File.ReadAllBytes(_here.At("vehicles", "marigold", "journal.jsonl"))[..older.Length]);
        Assert.Single(garage.Search("rotor"));
        Assert.Equal(6, garage.Note("marigold", "Gone on with").NextSequence);
        Assert.True(JournalVerifier.Verify(_here.Path, _ => true).IsIntact);
    }

    [Fact]
    public void Older_or_equal_state_changes_nothing_and_another_journal_is_refused()
    {
        var older = Written("Chafed lead");
        var newer = Written("Rotor burnt");
        using var garage = Open(_here);
        garage.AddJournal("marigold", newer, []);
        garage.ContinueJournal("marigold", older, []);
        garage.ContinueJournal("marigold", newer, []);

        Assert.Equal(newer, File.ReadAllBytes(_here.At("vehicles", "marigold", "journal.jsonl")));
        garage.Note("marigold", "Parted");
        Assert.Throws<FormatException>(() => garage.ContinueJournal("marigold", Written("Cap cracked"), []));
    }

    [Fact]
    public void Continuing_is_all_or_nothing_wherever_the_disk_fails()
    {
        var older = Written("Chafed lead");
        var newer = Written("Rotor burnt");
        for (var act = 1; ; act++)
        {
            using var folder = new TempFolder();
            var disk = new FaultyDisk();
            var failed = false;
            using (var garage = Garage.Open(folder.Path, Some.Clock(), disk))
            {
                garage.AddJournal("marigold", older, []);
                disk.Arm(act);
                try
                {
                    garage.ContinueJournal("marigold", newer, [new(Some.Photo, null)]);
                }
                catch (JournalReadOnlyException)
                {
                    failed = true;
                }
            }

            var there = File.ReadAllBytes(folder.At("vehicles", "marigold", "journal.jsonl"));
            Assert.True(there.SequenceEqual(older) || there.SequenceEqual(newer));
            using var again = Open(folder);
            Assert.DoesNotContain(again.Problems, problem => problem.ReadOnly);
            if (!failed)
            {
                Assert.True(act > 5);
                Assert.Equal(newer, there);
                return;
            }
        }
    }

    [Fact]
    public void What_a_journal_came_without_is_known_after_a_restart_and_grows_with_it()
    {
        var copy = new MediaFile(new string('e', 64), 7, "image/jpeg");
        using (var garage = Open(_here))
        {
            garage.AddJournal("marigold", Written("Chafed lead"), [new(Some.Photo, copy)]);
            garage.ContinueJournal("marigold", Written("Rotor burnt"), [new(Some.Recording, null)]);
        }

        using var again = Open(_here);
        Assert.Equal(copy, again.Withheld(Some.Photo.Sha256)!.Copy);
        Assert.NotNull(again.Withheld(Some.Recording.Sha256));
        Assert.Null(again.Withheld(new string('0', 64)));
        Assert.Equal(2, VehicleReading.Of(_here.Path, "marigold").Withheld.Count);
    }

    [Fact]
    public void Line_without_its_body_keeps_its_hash_and_its_place()
    {
        var journal = Written("Chafed lead");
        var withheld = WithoutFirstBody(journal);

        var (before, after) = (JournalLines.Read(journal), JournalLines.Read(withheld));
        Assert.Null(after.Broken);
        Assert.Equal(before.Entries.Select(entry => entry.Hash), after.Entries.Select(entry => entry.Hash));
        Assert.True(after.Entries[0].IsWithheld);
        Assert.Throws<FormatException>(() => JournalLines.WithoutBody("{}"u8.ToArray()));
    }

    [Fact]
    public void File_is_kept_only_when_its_bytes_are_those_it_must_have()
    {
        using var garage = Open(_here);
        var bytes = new byte[600_000];
        var file = new MediaFile(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)), bytes.Length, "image/jpeg");

        Assert.Throws<InvalidDataException>(() => garage.Media.KeepFrom(new MemoryStream(bytes[1..]), file));
        Assert.False(garage.Media.Has(file.Sha256));
        Assert.Empty(Directory.GetFiles(_here.At("media"), "*", SearchOption.AllDirectories));
        garage.Media.KeepFrom(new MemoryStream(bytes), file);
        Assert.Equal(MediaCondition.Whole, garage.Media.Check(file));
        Assert.Empty(garage.Problems);
    }

    [Fact]
    public void Files_are_found_in_entries_of_kinds_that_are_not_known()
    {
        var entry = Support.Written.Entry(3, null) with
        {
            UnreadBody = $$"""{"left":[{"bytes":32044,"sha256":"{{Some.Recording.Sha256}}","type":"audio/wav"}],"sha256":"no file"}""",
        };

        Assert.Equal([Some.Recording], NamedMedia.Of(entry));
        Assert.Equal([Some.Photo], NamedMedia.Of(Support.Written.Entry(4, new VehiclePictured(Some.Photo))));
        Assert.Empty(NamedMedia.Of(Support.Written.Entry(5, null)));
    }

    private static Garage Open(TempFolder folder) => Garage.Open(folder.Path, Some.Clock());

    /// <summary>The journal of a vehicle elsewhere, after one more note.</summary>
    private byte[] Written(string note)
    {
        using (var garage = Open(_there))
        {
            var id = garage.Vehicles() is [var one] ? one.Id : garage.AddVehicle(Some.Technician, Some.Vehicle());
            var inspection = garage.FindVehicle(id)!.OpenInspection?.Number ?? garage.StartInspection(id);
            garage.Append(id, Some.Technician, _ => [new NoteWritten(inspection, null, note)]);
        }

        return File.ReadAllBytes(_there.At("vehicles", "marigold", "journal.jsonl"));
    }

    private static byte[] WithoutFirstBody(byte[] journal)
    {
        var end = Array.IndexOf(journal, (byte)'\n');
        return [.. JournalLines.WithoutBody(journal.AsMemory(0, end)), .. journal[end..]];
    }
}
