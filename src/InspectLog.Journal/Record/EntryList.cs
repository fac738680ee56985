namespace InspectLog.Journal.Record;

/// <summary>Finds entries in a journal by their number. A damaged journal lacks some, so that the number is not always the
/// place.</summary>
public static class EntryList
{
    /// <summary>The entry of a sequence; null when there is none.</summary>
    /// <param name="entries">Entries by rising sequence.</param>
    /// <param name="sequence">The sequence.</param>
    public static JournalEntry? At(this IReadOnlyList<JournalEntry> entries, long sequence) =>
        entries.PlaceOf(sequence) is { } place ? entries[place] : null;

    /// <summary>Whether there is an entry of a sequence. Reads none from the disk.</summary>
    /// <param name="entries">Entries by rising sequence.</param>
    /// <param name="sequence">The sequence.</param>
    public static bool Has(this IReadOnlyList<JournalEntry> entries, long sequence) => entries.PlaceOf(sequence) is not null;

    /// <summary>The hash of the entry of a sequence, lower-case hex; null when there is none. Reads none from the disk.</summary>
    /// <param name="entries">Entries by rising sequence.</param>
    /// <param name="sequence">The sequence.</param>
    public static string? HashOf(this IReadOnlyList<JournalEntry> entries, long sequence) =>
        entries.PlaceOf(sequence) is { } place ? entries.HashAt(place) : null;

    /// <summary>The hash at a place, lower-case hex. Reads no entry from the disk.</summary>
    /// <param name="entries">Entries by rising sequence.</param>
    /// <param name="place">The place, from 0.</param>
    public static string HashAt(this IReadOnlyList<JournalEntry> entries, int place) =>
        entries is StoredEntries stored ? stored.HashAt(place) : entries[place].Hash;

    /// <summary>The sequence of the last entry; 0 where there is none. Reads no entry from the disk.</summary>
    /// <param name="entries">Entries by rising sequence.</param>
    public static long LastSequence(this IReadOnlyList<JournalEntry> entries) =>
        entries.Count == 0 ? 0 : entries.SequenceAt(entries.Count - 1);

    /// <summary>How many entries have a sequence no higher than this. Reads none from the disk.</summary>
    /// <param name="entries">Entries by rising sequence.</param>
    /// <param name="sequence">The sequence.</param>
    public static int CountUpTo(this IReadOnlyList<JournalEntry> entries, long sequence)
    {
        var (from, to) = (0, entries.Count);
        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            (from, to) = entries.SequenceAt(middle) <= sequence ? (middle + 1, to) : (from, middle);
        }

        return from;
    }

    /// <summary>Whether an entry follows from the one before it, as far as the two can tell.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="before">The sound entry before it; null where it is the first.</param>
    public static bool Follows(this JournalEntry entry, JournalEntry? before) =>
        entry.Sequence == (before?.Sequence ?? 0) + 1 && entry.Previous == (before?.Hash ?? EntryLine.NoPrevious);

    private static int? PlaceOf(this IReadOnlyList<JournalEntry> entries, long sequence) =>
        entries.CountUpTo(sequence) - 1 is >= 0 and var place && entries.SequenceAt(place) == sequence ? place : null;

    // Of a sound journal the number is the place.
    private static long SequenceAt(this IReadOnlyList<JournalEntry> entries, int place) =>
        entries is StoredEntries ? place + 1 : entries[place].Sequence;
}
