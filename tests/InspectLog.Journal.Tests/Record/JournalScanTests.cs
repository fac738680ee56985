using System.Text;
using System.Text.Json.Nodes;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;
using static InspectLog.Journal.Tests.Record.ScannedJournal;

namespace InspectLog.Journal.Tests.Record;

/// <summary>A journal that was cut, changed or damaged, read from its bytes.</summary>
public sealed class JournalScanTests
{
    [Fact]
    public void Journal_cut_at_any_byte_reads_up_to_its_last_whole_line()
    {
        for (var length = 0; length <= LineEnds[7]; length++)
        {
            var whole = LineEnds.Count(end => end < length);

            var scan = JournalScan.Of(Bytes.AsMemory(0, length));

            Assert.Equal(Hashes.Take(whole), scan.Entries.Select(entry => entry.Hash));
            Assert.Equal(whole == 0 ? 0 : LineEnds[whole - 1] + 1, scan.SoundBytes);
            Assert.Equal(scan.SoundBytes == length ? null : true, scan.Broken?.IsUnfinished);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(14)]
    [InlineData(26)]
    public void Line_with_any_bit_flipped_is_not_an_entry(int line)
    {
        var bytes = Encoding.UTF8.GetBytes(Lines()[line]);
        Assert.Equal(Hashes[line], EntryLine.Read(bytes).Hash);
        for (var bit = 0; bit < bytes.Length * 8; bit++)
        {
            Assert.Throws<FormatException>(() => EntryLine.Read(Flip(bytes, bit)));
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Journal_with_any_bit_of_a_line_flipped_reads_up_to_that_line(int line)
    {
        var journal = Bytes[..(LineEnds[2] + 1)];
        for (var bit = (LineEnds[line - 1] + 1) * 8; bit < (LineEnds[line] + 1) * 8; bit++)
        {
            var scan = JournalScan.Of(Flip(journal, bit));

            Assert.Equal(Hashes.Take(line), scan.Entries.Take(line).Select(entry => entry.Hash));
            Assert.DoesNotContain(Hashes[line], scan.Entries.Select(entry => entry.Hash));
            Assert.Equal(line + 1, scan.Broken?.Line);
        }
    }

    [Fact]
    public void Lines_that_change_places_are_noticed()
    {
        var lines = Lines();
        (lines[5], lines[6]) = (lines[6], lines[5]);

        AssertDamagedAt(6, Join(lines), "it is numbered 7, and should be 6");
    }

    [Fact]
    public void Line_that_was_taken_out_is_noticed()
    {
        var lines = Lines();
        lines.RemoveAt(5);

        AssertDamagedAt(6, Join(lines), "it is numbered 7, and should be 6");
    }

    [Fact]
    public void Line_written_anew_with_hashes_of_its_own_breaks_the_line_after_it()
    {
        var lines = Lines();
        var previous = JournalScan.Of(Bytes).Entries[12].Hash;
        lines[13] = Encoding.UTF8.GetString(EntryLine.Write(
            14, Some.Clock().GetLocalNow(), Some.Technician, new NoteWritten(7, null, "Smells of roses"), previous,
            EntryLine.NewSalt()));

        AssertDamagedAt(15, Join(lines), "it does not follow from the line before");
    }

    [Fact]
    public void Changed_body_is_noticed()
    {
        var lines = Lines();
        lines[13] = lines[13].Replace("petrol", "diesel", StringComparison.Ordinal);

        AssertDamagedAt(14, Join(lines), "its body was changed");
    }

    [Theory]
    [InlineData("\"actor\":\"Tess Okafor\"", "\"actor\":\"Tess O'Kafor\"", "its hash is not that of what it says")]
    [InlineData("{\"actor\"", "{ \"actor\"", "it is not spelled the way the program writes")]
    [InlineData("\"negated\":false", "\"negated\":false ", "it is not spelled the way the program writes")]
    [InlineData("\"version\":1}", "\"version\":1,\"x\":1}", "it is not spelled the way the program writes")]
    [InlineData("\"version\":1}", "\"version\":1.0}", "it is not an entry: a member is missing or is not of its sort")]
    [InlineData("\"version\":1}", "\"version\":\"1\"}", "it is not an entry: a member is missing or is not of its sort")]
    [InlineData(",\"version\":1}", "}", "it is not an entry: a member is missing or is not of its sort")]
    [InlineData("\"salt\":\"AAEC", "\"salt\":\"AAEB", "its body was changed")]
    [InlineData("\"version\":1}", "\"version\":1", "it is not JSON")]
    public void Any_other_change_of_a_line_is_noticed(string text, string changed, string reason)
    {
        var lines = Lines();
        Assert.Contains(text, lines[16], StringComparison.Ordinal);
        lines[16] = lines[16].Replace(text, changed, StringComparison.Ordinal);

        AssertDamagedAt(17, Join(lines), reason);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("7")]
    [InlineData("{}")]
    [InlineData("{\"offset\":\"\"}")]
    public void Line_that_is_no_entry_is_damage(string line)
    {
        var lines = Lines();
        lines[16] = line;

        AssertDamagedAt(17, Join(lines), reason: null);
    }

    [Theory]
    [InlineData("offset", "")]
    [InlineData("offset", "+1:00")]
    [InlineData("offset", "*01:00")]
    [InlineData("offset", "+23:59")]
    [InlineData("time", "yesterday")]
    [InlineData("time", "2026-13-25T10:30:00.123Z")]
    [InlineData("salt", "not base64")]
    public void Member_in_a_form_of_its_own_is_damage(string member, string value)
    {
        var lines = Lines();
        var entry = JsonNode.Parse(lines[16])!;
        entry[member] = value;
        lines[16] = entry.ToJsonString();

        AssertDamagedAt(17, Join(lines), reason: null);
    }

    [Fact]
    public void Zeros_where_a_page_never_reached_the_disk_are_the_remains_of_a_write()
    {
        var changed = Bytes.ToArray();
        changed.AsSpan(LineEnds[24] + 3, 200).Clear();
        changed = changed[..(LineEnds[25] + 1)];

        var scan = JournalScan.Of(changed);

        Assert.Equal(25, scan.Entries.Count);
        Assert.True(scan.Broken!.IsUnfinished);
    }

    [Fact]
    public void Zeros_before_a_sound_line_are_damage()
    {
        var changed = Bytes.ToArray();
        changed.AsSpan(LineEnds[10] + 3, 200).Clear();

        var scan = JournalScan.Of(changed);

        Assert.Equal(Hashes.Where((_, at) => at != 11), scan.Entries.Select(entry => entry.Hash));
        Assert.False(scan.Broken!.IsUnfinished);
    }
}
