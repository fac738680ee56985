using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>A journal of sixty entries is cut at every byte.</summary>
public sealed class TruncationTests : IDisposable
{
    private const int Entries = 60;

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Journal_cut_at_any_byte_keeps_every_whole_entry_and_says_what_is_left_over()
    {
        var path = JournalOfSixty();
        var bytes = File.ReadAllBytes(path);
        var ends = Enumerable.Range(0, bytes.Length).Where(at => bytes[at] == '\n').ToList();
        Assert.Equal(Entries, ends.Count);
        var hashes = Hashes(path);

        for (var length = bytes.Length - 1; length >= 0; length--)
        {
            using (var file = File.OpenHandle(path, access: FileAccess.Write))
            {
                RandomAccess.SetLength(file, length);
            }

            var whole = ends.Count(end => end < length);
            var content = Read(path);

            Assert.Equal(hashes.Take(whole), content.Entries.Select(entry => entry.Hash));
            Assert.Equal(whole == 0 ? 0 : ends[whole - 1] + 1, content.SoundBytes);
            Assert.Equal(length > 0 && content.SoundBytes == length, content.Damage is null);
        }
    }

    [Fact]
    public void Garage_with_a_journal_cut_anywhere_opens_and_can_be_written_again()
    {
        var path = JournalOfSixty();
        var bytes = File.ReadAllBytes(path);
        var hashes = Hashes(path);
        for (var cut = 1; cut < bytes.Length; cut += 1 + (bytes.Length / 40))
        {
            File.WriteAllBytes(path, bytes[..^cut]);
            var whole = bytes[..^cut].Count(one => one == '\n');

            using var garage = Garage.Open(_folder.Path, Some.Clock());

            Assert.Equal(hashes.Take(whole), garage.Entries("marigold").Take(whole).Select(entry => entry.Hash));
            if (whole > 0)
            {
                Assert.Equal("after the cut", Assert.IsType<InspectLog.Journal.Entries.NoteWritten>(Appended(garage)).Text);
            }
        }
    }

    private static InspectLog.Journal.Entries.EntryBody? Appended(Garage garage)
    {
        garage.Note("marigold", "after the cut");
        return garage.Entries("marigold")[^1].Body;
    }

    private string JournalOfSixty()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        for (var n = garage.Entries(id).Count; n < Entries; n++)
        {
            garage.Note(id, $"Lead {n}: sound, no chafing ⚡");
        }

        return _folder.At("vehicles", id, "journal.jsonl");
    }

    private static List<string> Hashes(string path) => [.. Read(path).Entries.Select(entry => entry.Hash)];

    private static JournalContent<string> Read(string path) => JournalContent.Of(
        new JournalFile(path, new Durable(), new WriteLatches().Adding), "", (state, _) => state, mustHoldEntries: true);
}
