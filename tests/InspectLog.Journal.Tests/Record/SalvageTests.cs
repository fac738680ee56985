using System.Text;
using CsCheck;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;
using static InspectLog.Journal.Tests.Record.ScannedJournal;

namespace InspectLog.Journal.Tests.Record;

/// <summary>Damage in the middle of a journal costs the damaged lines and no other.</summary>
public sealed class SalvageTests
{
    [Fact]
    public void Every_entry_before_and_after_damaged_lines_is_read_and_every_damaged_line_is_named() =>
        Gen.Int[0, Hashes.Length - 1].HashSet[1, 8].Sample(damaged =>
        {
            var lines = Lines();
            foreach (var at in damaged)
            {
                lines[at] = lines[at].Replace("\"actor\":\"T", "\"actor\":\"X", StringComparison.Ordinal);
            }

            var scan = JournalScan.Of(Join(lines));

            Assert.Equal(Hashes.Where((_, at) => !damaged.Contains(at)), scan.Entries.Select(entry => entry.Hash));
            Assert.Equal(damaged.Order().Select(at => at + 1L), scan.Damage.Select(line => line.Line));
            Assert.All(scan.Damage, line => Assert.Equal((false, false), (line.HoldsEntry, line.IsUnfinished)));
        });

    [Fact]
    public void Whatever_is_done_to_the_lines_no_entry_is_made_up_or_read_out_of_order() =>
        Gen.Int[0, 15].Array[0, 40].Select(Gen.Int[0, 15], Gen.Int[0, 4000]).Sample((order, cut, flip) =>
        {
            var all = Lines();
            var file = Flip([.. Join(order.Select(at => all[at])), .. Encoding.UTF8.GetBytes(all[cut])[..50]], flip % 400);

            var scan = JournalScan.Of(file);

            Assert.Equal(scan.Entries.Select(entry => entry.Sequence).Order().Distinct(), scan.Entries.Select(entry => entry.Sequence));
            Assert.All(scan.Entries, entry => Assert.Equal(Hashes[entry.Sequence - 1], entry.Hash));
            Assert.NotEmpty(scan.Damage);
        });

    [Fact]
    public void Line_that_was_taken_out_leaves_a_break_before_the_next_which_is_shown()
    {
        var lines = Lines();
        lines.RemoveAt(5);

        var scan = JournalScan.Of(Join(lines));

        Assert.Equal(Hashes.Where((_, at) => at != 5), scan.Entries.Select(entry => entry.Hash));
        Assert.Equal(new BrokenLine(6, "it is numbered 7, and should be 6", false) { HoldsEntry = true }, Assert.Single(scan.Damage));
        Assert.False(scan.Entries[5].Follows(scan.Entries[4]));
        Assert.True(scan.Entries[6].Follows(scan.Entries[5]));
    }

    [Fact]
    public void Line_that_was_taken_out_beside_a_damaged_one_is_named_too()
    {
        var lines = Lines();
        lines[4] = "{}";
        lines.RemoveAt(5);

        var scan = JournalScan.Of(Join(lines));

        Assert.Equal(Hashes.Where((_, at) => at is not (4 or 5)), scan.Entries.Select(entry => entry.Hash));
        Assert.Equal([(5L, false), (6L, true)], scan.Damage.Select(line => (line.Line, line.HoldsEntry)));
    }

    [Fact]
    public void Line_of_another_journal_between_the_others_is_not_shown_and_harms_none()
    {
        var lines = Lines();
        lines.Insert(6, Encoding.UTF8.GetString(EntryLine.Write(
            7, Some.Clock().GetLocalNow(), Some.Technician, new NoteWritten(7, null, "of another car"), new string('e', 64), EntryLine.NewSalt())));

        var scan = JournalScan.Of(Join(lines));

        Assert.Equal(Hashes, scan.Entries.Select(entry => entry.Hash));
        Assert.Equal(new BrokenLine(7, "it does not follow from the line before", false), Assert.Single(scan.Damage));
    }

    [Fact]
    public void Line_that_stands_twice_is_shown_once()
    {
        var lines = Lines();
        lines.Insert(6, lines[5]);

        var scan = JournalScan.Of(Join(lines));

        Assert.Equal(Hashes, scan.Entries.Select(entry => entry.Hash));
        Assert.Equal(new BrokenLine(7, "it is numbered 6, and should be 7", false), Assert.Single(scan.Damage));
    }

    [Fact]
    public void Two_lines_that_became_one_cost_both_and_the_rest_is_read()
    {
        var joined = Bytes.ToArray();
        joined[LineEnds[5]] = (byte)' ';

        var scan = JournalScan.Of(joined);

        Assert.Equal(Hashes.Where((_, at) => at is not (5 or 6)), scan.Entries.Select(entry => entry.Hash));
        Assert.Equal([(6L, false), (7L, true)], scan.Damage.Select(line => (line.Line, line.HoldsEntry)));
    }

    [Fact]
    public void Torn_end_of_a_damaged_journal_is_damage_and_nothing_is_cut_off()
    {
        var lines = Lines();
        lines[4] = "{}";

        var scan = JournalScan.Of(Join(lines).AsMemory()[..^5]);

        Assert.Equal([5L, lines.Count], scan.Damage.Select(line => line.Line));
        Assert.DoesNotContain(scan.Damage, line => line.IsUnfinished);
        Assert.Equal(LineEnds[3] + 1, scan.SoundBytes);
    }

    [Fact]
    public void Journal_of_which_no_line_is_sound_has_no_entry_and_is_read_in_a_moment()
    {
        var scan = JournalScan.Of(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("\0noise\n", 100_000))[..^1] + "x\n"));

        Assert.Empty(scan.Entries);
        Assert.True(scan.Broken!.IsUnfinished);
    }

    [Theory]
    [InlineData("+14:00", true)]
    [InlineData("-14:00", true)]
    [InlineData("+14:01", false)]
    [InlineData("-23:59", false)]
    public void Offset_that_no_clock_has_is_damage_of_that_line(string offset, bool sound)
    {
        var line = OtherOffset(offset, "2026-11-25T10:30:00.123Z");

        Assert.Equal(sound, JournalScan.Of(line).Damage.IsEmpty);
        Assert.Equal(sound ? 1 : 0, JournalScan.Of(line).Entries.Count);
    }

    [Theory]
    [InlineData("-01:00", "0001-01-01T00:30:00.000Z")]
    [InlineData("+01:00", "9999-12-31T23:30:00.000Z")]
    public void Time_that_the_offset_carries_out_of_the_calendar_is_damage(string offset, string time) =>
        Assert.Single(JournalScan.Of(OtherOffset(offset, time)).Damage);

    /// <summary>A first line with sound hashes, of a clock of its own.</summary>
    private static byte[] OtherOffset(string offset, string time)
    {
        var line = System.Text.Json.Nodes.JsonNode.Parse(LineOfAnotherProgram(1, "note", 1, "{}", EntryLine.NoPrevious))!.AsObject();
        foreach (var member in new[] { "body", "hash", "salt" })
        {
            line.Remove(member);
        }

        (line["offset"], line["time"]) = (offset, time);
        line["hash"] = Sha256(Canonical(line));
        return [.. Canonical(line), (byte)'\n'];
    }
}
