using System.Runtime.CompilerServices;

namespace InspectLog.Journal.Record;

/// <summary>Entries that were read lately, of all journals of a garage: a fixed number of slots, each of which holds the last
/// entry that fell into it. Safe for use by many threads.</summary>
internal sealed class EntryCache
{
    private const uint Spread = 2_654_435_761; // 2³² by the golden ratio, Knuth's multiplicative hashing
    private const int Slots = 16_384; // some twenty megabytes when all are filled

    private readonly Slot?[] _slots = new Slot?[Slots];

    /// <summary>An entry; null where it is not held.</summary>
    public JournalEntry? Find(EntryPlaces journal, long sequence) =>
        Volatile.Read(ref _slots[Of(journal, sequence)]) is { } slot && slot.Journal == journal && slot.Entry.Sequence == sequence
            ? slot.Entry
            : null;

    /// <summary>Holds an entry.</summary>
    public void Keep(EntryPlaces journal, JournalEntry entry) =>
        Volatile.Write(ref _slots[Of(journal, entry.Sequence)], new(journal, entry));

    /// <summary>Holds none any more.</summary>
    public void Clear()
    {
        for (var at = 0; at < Slots; at++)
        {
            Volatile.Write(ref _slots[at], null);
        }
    }

    // Entries that are needed together stand close together, or as far apart as inspections are long.
    private static int Of(EntryPlaces journal, long sequence) =>
        unchecked((int)(((((uint)sequence * Spread) ^ (uint)RuntimeHelpers.GetHashCode(journal)) * Spread) >> 18));

    private sealed record Slot(EntryPlaces Journal, JournalEntry Entry);
}
