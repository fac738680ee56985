using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Record;

/// <summary>Where the entries of a sound journal stand in its file, and their hashes. It only grows, by one writer at a time;
/// readers that know of so many entries need no lock.</summary>
/// <param name="log">Where the journal is kept.</param>
/// <param name="cache">Entries that were read lately.</param>
/// <param name="names">Names that were read already.</param>
internal sealed class EntryPlaces(IEntryLog log, EntryCache cache, EntryNames names)
{
    private const int OfChunk = 128; // five kilobytes: most vehicles have few entries
    private const int HashBytes = 32;

    private Chunk[] _chunks = [];

    /// <summary>Adds lines that follow the ones before.</summary>
    /// <param name="at">How many there are already.</param>
    /// <param name="ends">Where the new ones end without their line ends, bytes from the end of the last one before.</param>
    /// <param name="hashes">Their hashes, 32 bytes each.</param>
    public void Add(int at, IReadOnlyList<int> ends, ReadOnlySpan<byte> hashes)
    {
        var start = StartOf(at);
        for (var n = 0; n < ends.Count; n++)
        {
            var place = at + n;
            if (place / OfChunk == _chunks.Length)
            {
                Volatile.Write(ref _chunks, [.. _chunks, new Chunk(new long[OfChunk], new byte[OfChunk * HashBytes])]);
            }

            var chunk = _chunks[place / OfChunk];
            chunk.Ends[place % OfChunk] = start + ends[n];
            hashes.Slice(n * HashBytes, HashBytes).CopyTo(chunk.Hashes.AsSpan(place % OfChunk * HashBytes, HashBytes));
        }
    }

    /// <summary>Adds entries that were just appended.</summary>
    /// <param name="at">How many there are already.</param>
    /// <param name="entries">The entries.</param>
    /// <param name="lengths">The lengths of their lines without their ends, bytes.</param>
    public void Add(int at, IReadOnlyList<JournalEntry> entries, IReadOnlyList<int> lengths)
    {
        var (ends, hashes, end) = (new int[entries.Count], new byte[entries.Count * HashBytes], 0);
        for (var n = 0; n < entries.Count; n++)
        {
            ends[n] = end + lengths[n];
            end = ends[n] + 1;
            Convert.FromHexString(entries[n].Hash, hashes.AsSpan(n * HashBytes, HashBytes), out _, out _);
        }

        Add(at, ends, hashes);
        foreach (var entry in entries)
        {
            cache.Keep(this, entry);
        }
    }

    /// <summary>The hash at a place, lower-case hex.</summary>
    public string HashAt(int place) => Convert.ToHexStringLower(HashBytesAt(place));

    /// <summary>What an entry after so many has to follow from.</summary>
    public ChainEnd EndAfter(int count) => count == 0 ? ChainEnd.None : new(count, HashBytesAt(count - 1).ToArray());

    /// <summary>The entry at a place.</summary>
    /// <exception cref="IOException">It cannot be read, or is not what it was.</exception>
    public JournalEntry Read(int place)
    {
        if (cache.Find(this, place + 1) is { } known)
        {
            return known;
        }

        var entry = Read(place, place + 1)[0];
        cache.Keep(this, entry);
        return entry;
    }

    /// <summary>The entries from a place to before another.</summary>
    /// <exception cref="IOException">They cannot be read, or are not what they were.</exception>
    public JournalEntry[] Read(int from, int to)
    {
        var start = StartOf(from);
        var bytes = new byte[EndOf(to - 1) - start];
        log.Read(bytes, start);
        var entries = new JournalEntry[to - from];
        for (var place = from; place < to; place++)
        {
            entries[place - from] = Entry(place, bytes.AsMemory((int)(StartOf(place) - start)..(int)(EndOf(place) - start)));
        }

        return entries;
    }

    private JournalEntry Entry(int place, ReadOnlyMemory<byte> line)
    {
        var entry = QuickEntries.One(line.Span, names) ?? SlowEntry(line);
        return entry is not null && entry.Sequence == place + 1 && entry.Hash == HashAt(place)
            ? entry
            : throw new JournalChangedException(log.Place, place + 1);
    }

    private static JournalEntry? SlowEntry(ReadOnlyMemory<byte> line)
    {
        try
        {
            return EntryLine.Read(line);
        }
        catch (FormatException)
        {
            return null;
        }
    }

    private long StartOf(int place) => place == 0 ? 0 : EndOf(place - 1) + 1;

    private long EndOf(int place) => Volatile.Read(ref _chunks)[place / OfChunk].Ends[place % OfChunk];

    private ReadOnlySpan<byte> HashBytesAt(int place) =>
        Volatile.Read(ref _chunks)[place / OfChunk].Hashes.AsSpan(place % OfChunk * HashBytes, HashBytes);

    private sealed record Chunk(long[] Ends, byte[] Hashes);
}
