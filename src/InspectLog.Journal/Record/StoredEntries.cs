using System.Collections;

namespace InspectLog.Journal.Record;

/// <summary>The entries of a sound journal as they stand on the disk: of each its place and its hash are held, some forty bytes,
/// and it is read when it is asked for. Immutable: what is appended later is not among them.</summary>
/// <param name="places">Where the entries stand.</param>
/// <param name="count">How many of them these are.</param>
internal sealed class StoredEntries(EntryPlaces places, int count) : IReadOnlyList<JournalEntry>
{
    private const int ReadAtOnce = 256;

    /// <inheritdoc/>
    public int Count => count;

    /// <summary>Where they stand.</summary>
    public EntryPlaces Places => places;

    /// <inheritdoc/>
    /// <exception cref="JournalChangedException">The file is not what it was when it was opened.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public JournalEntry this[int index]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfNegative(index);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, count);
            return places.Read(index);
        }
    }

    /// <summary>The hash at a place, without reading it from the disk.</summary>
    public string HashAt(int place)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(place, count);
        return places.HashAt(place);
    }

    /// <summary>These and further ones, which are on disk.</summary>
    public StoredEntries With(IReadOnlyList<JournalEntry> entries, IReadOnlyList<int> lengths)
    {
        places.Add(count, entries, lengths);
        return new(places, count + entries.Count);
    }

    /// <inheritdoc/>
    /// <remarks>Whoever goes through all reads many at once, and does not drive out of the memory what pages need.</remarks>
    public IEnumerator<JournalEntry> GetEnumerator()
    {
        for (var from = 0; from < count; from += ReadAtOnce)
        {
            foreach (var entry in places.Read(from, Math.Min(count, from + ReadAtOnce)))
            {
                yield return entry;
            }
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
