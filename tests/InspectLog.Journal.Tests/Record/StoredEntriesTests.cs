using System.Collections.Immutable;
using CsCheck;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Record;

/// <summary>Entries that stay on the disk are those that stand there, each at its place.</summary>
public sealed class StoredEntriesTests
{
    private static readonly Gen<string[][]> Batches = Gen.Int[0, 60].Select(length => new string('Ω', length)).Array[1, 40].Array[1, 60];

    [Fact]
    public void Entries_opened_and_appended_are_the_ones_of_the_file_whatever_their_lengths() => Batches.Sample(
        batches =>
        {
            var opened = batches.Length / 2;
            var log = new HeldLog([]);
            foreach (var texts in batches[..opened])
            {
                Opened(log).Append("Tess", _ => Notes(texts), (_, _) => { });
            }

            var journal = Opened(log);
            foreach (var texts in batches[opened..])
            {
                journal.Append("Tess", _ => Notes(texts), (_, _) => { });
            }

            AssertSame(JournalScan.Of(log.Bytes).Entries, journal.Now.Entries);
            AssertSame(JournalScan.Of(log.Bytes).Entries, Opened(log).Now.Entries);
        },
        iter: 40);

    [Fact]
    public void Numbers_and_hashes_are_told_without_reading()
    {
        var log = Written(5);
        var (entries, reads) = (Opened(log).Now.Entries, log.Reads);

        Assert.Equal(5, entries.LastSequence());
        Assert.Equal(3, entries.CountUpTo(3));
        Assert.True(entries.Has(5));
        Assert.False(entries.Has(6));
        Assert.Null(entries.HashOf(0));
        Assert.Equal(64, entries.HashOf(5)!.Length);
        Assert.Equal(reads, log.Reads);
    }

    [Fact]
    public void Snapshot_does_not_see_what_is_appended_later()
    {
        var journal = Opened(Written(3));
        var before = journal.Now.Entries;
        journal.Append("Tess", _ => Notes("later"), (_, _) => { });

        Assert.Equal(3, before.Count);
        Assert.Equal([1L, 2, 3], before.Select(entry => entry.Sequence));
        Assert.Null(before.At(4));
        Assert.Throws<ArgumentOutOfRangeException>(() => before[3]);
        Assert.Equal("later", ((NoteWritten)journal.Now.Entries[3].Body!).Text);
    }

    [Fact]
    public void Line_that_changed_since_it_was_opened_is_not_given_as_the_entry_that_was_there()
    {
        var log = Written(4);
        var other = Written(4, "away");
        var entries = Opened(log).Now.Entries;
        other.Bytes.CopyTo(log.Bytes, 0);

        Assert.Contains("Line 2 of held.jsonl", Assert.Throws<JournalChangedException>(() => entries[1]).Message, StringComparison.Ordinal);
        Assert.Throws<JournalChangedException>(() => entries.ToList());

        log.Bytes.AsSpan().Clear();
        Assert.Throws<JournalChangedException>(() => entries[2]);
    }

    [Fact]
    public void Journal_of_several_parts_is_sound_and_damage_in_a_later_part_is_found()
    {
        var log = new HeldLog([]);
        var text = new string('m', 20_000);
        Opened(log).Append("Tess", _ => Notes([.. Enumerable.Repeat(text, 600)]), (_, _) => { });
        var sound = Opened(log);
        Assert.Null(sound.Damage);
        AssertSame(JournalScan.Of(log.Bytes).Entries, sound.Now.Entries);

        log.Bytes[^30_000] ^= 1;
        var damaged = Opened(log);
        var scan = JournalScan.Of(log.Bytes);
        Assert.Equal(scan.Damage, damaged.Damage!.Lines);
        AssertSame(scan.Entries, damaged.Now.Entries);
    }

    private static HeldLog Written(int count, string what = "here")
    {
        var log = new HeldLog([]);
        Opened(log).Append("Tess", _ => Notes([.. Enumerable.Range(0, count).Select(n => $"{what} {n}")]), (_, _) => { });
        return new(log.Bytes);
    }

    private static OpenJournal<string> Opened(HeldLog log) => new(log, "", (state, _) => state, Some.Clock());

    private static IReadOnlyList<EntryBody> Notes(params string[] texts) => [.. texts.Select(text => new NoteWritten(1, null, text))];

    private static void AssertSame(ImmutableList<JournalEntry> expected, IReadOnlyList<JournalEntry> entries)
    {
        Assert.Equal(expected, entries); // by going through
        Assert.Equal(expected, Enumerable.Range(0, entries.Count).Select(at => entries[at])); // one by one
        Assert.Equal(expected.Select(entry => entry.Hash), Enumerable.Range(0, entries.Count).Select(entries.HashAt));
    }
}
