namespace InspectLog.Journal.Record;

/// <summary>Finds entries in a journal by their number. A damaged journal lacks some, so that the number is not always the
/// place.</summary>
public static class EntryList
{
    /// <summary>The entry of a sequence; null when there is none.</summary>
    /// <param name="entries">Entries by rising sequence.</param>
    /// <param name="sequence">The sequence.</param>
    public static JournalEntry? At(this IReadOnlyList<JournalEntry> entries, long sequence)
    {
        var place = entries.CountUpTo(sequence) - 1;
        return place >= 0 && entries[place].Sequence == sequence ? entries[place] : null;
    }

    /// <summary>How many entries have a sequence no higher than this.</summary>
    /// <param name="entries">Entries by rising sequence.</param>
    /// <param name="sequence">The sequence.</param>
    public static int CountUpTo(this IReadOnlyList<JournalEntry> entries, long sequence)
    {
        var (from, to) = (0, entries.Count);
        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            (from, to) = entries[middle].Sequence <= sequence ? (middle + 1, to) : (from, middle);
        }

        return from;
    }

    /// <summary>Whether an entry follows from the one before it, as far as the two can tell.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="before">The sound entry before it; null where it is the first.</param>
    public static bool Follows(this JournalEntry entry, JournalEntry? before) =>
        entry.Sequence == (before?.Sequence ?? 0) + 1 && entry.Previous == (before?.Hash ?? EntryLine.NoPrevious);
}
