using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>The hashes of a journal's entries, in 40 bytes an entry.</summary>
/// <param name="sequences">The sequences, rising.</param>
/// <param name="hashes">The hashes, 32 bytes each.</param>
internal sealed class EntryHashes(long[] sequences, byte[] hashes)
{
    private const int Size = 32;

    /// <summary>How many entries there are.</summary>
    public int Count => sequences.Length;

    /// <summary>The sequence of the last entry; 0 where there is none.</summary>
    public long Last => Count == 0 ? 0 : sequences[^1];

    /// <summary>The hash of the last entry, lower-case hex; empty where there is none.</summary>
    public string LastHash => Count == 0 ? "" : this[Count - 1];

    /// <summary>The hash at a place, lower-case hex.</summary>
    public string this[int place] => Convert.ToHexStringLower(hashes, place * Size, Size);

    /// <summary>The hash of the entry of a sequence, lower-case hex; null when there is none.</summary>
    public string? At(long sequence) =>
        Array.BinarySearch(sequences, sequence) is >= 0 and var place ? this[place] : null;

    /// <summary>The hashes of entries.</summary>
    public static EntryHashes Of(IReadOnlyList<JournalEntry> entries)
    {
        var (sequences, hashes) = (new long[entries.Count], new byte[entries.Count * Size]);
        foreach (var (place, entry) in entries.Index())
        {
            sequences[place] = entry.Sequence;
            Convert.FromHexString(entry.Hash, hashes.AsSpan(place * Size, Size), out _, out _);
        }

        return new(sequences, hashes);
    }
}
