using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;
using static InspectLog.Journal.Tests.Record.ScannedJournal;

namespace InspectLog.Journal.Tests.Verification;

/// <summary>The quick way of reading a journal gives the very entries the slow way gives, or steps back.</summary>
public sealed class QuickEntriesTests
{
    [Fact]
    public void Journal_as_the_program_writes_it_gives_the_same_entries()
    {
        var lines = Lines();
        lines[3] = Without(lines[3], "body", "salt");
        lines.Add(LineOfAnotherProgram(lines.Count + 1, "smell-noted", 4, """{"smell":"petrol \"and\\nmore"}""", Hashes[^1]));

        AssertSame(Join(lines));
        Assert.Contains(QuickEntries.Of(Join(lines))!, entry => entry.UnreadBody is not null);
        Assert.Contains(QuickEntries.Of(Join(lines))!, entry => entry.IsWithheld);
    }

    [Fact]
    public void Old_journals_and_samples_of_every_kind_give_the_same_entries()
    {
        var files = Directory.GetFiles(Path.GetDirectoryName(TestData.PathOf("before-amendments", "readings.csv"))!, "*.jsonl", SearchOption.AllDirectories)
            .Append(TestData.PathOf("entries.jsonl")).ToList();
        Assert.All(files, file => AssertSame(File.ReadAllBytes(file)));
    }

    [Fact]
    public void Any_flipped_bit_of_a_line_makes_the_quick_way_step_back()
    {
        var journal = Bytes[..(LineEnds[3] + 1)];
        Assert.NotNull(QuickEntries.Of(journal));
        for (var bit = 0; bit < journal.Length * 8; bit++)
        {
            Assert.Null(QuickEntries.Of(Flip(journal, bit)));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("not a line\n")]
    public void What_is_no_sound_journal_is_left_to_the_slow_way(string text) =>
        Assert.Null(QuickEntries.Of(System.Text.Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Device_and_names_with_signs_are_read_as_they_are_meant()
    {
        var line = EntryLine.Write(
            1, Some.Clock().GetLocalNow(), new("Ann \"the\\lamp\" Ω", "phone\t2"), new Entries.NoteWritten(0, null, "a\u0001b"), EntryLine.NoPrevious, EntryLine.NewSalt());

        AssertSame([.. line, (byte)'\n']);
    }

    private static void AssertSame(byte[] journal)
    {
        var slow = JournalScan.Of(journal);
        var quick = QuickEntries.Of(journal);

        Assert.Empty(slow.Damage);
        Assert.NotNull(quick);
        Assert.Equal(slow.Entries.Count, quick.Count);
        Assert.All(slow.Entries.Zip(quick), pair =>
        {
            Assert.Equal(pair.First with { Body = null }, pair.Second with { Body = null });
            Assert.Equal(pair.First.Body?.GetType(), pair.Second.Body?.GetType());
            Assert.Equal(Spelled(pair.First), Spelled(pair.Second));
        });
    }

    // Records with lists are not equal by what is in them.
    private static string? Spelled(JournalEntry entry) =>
        entry.Body is { } body ? System.Text.Encoding.UTF8.GetString(BodyJson.Write(body)) : null;
}
