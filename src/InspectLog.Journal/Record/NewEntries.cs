using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Record;

/// <summary>Entries about to be appended together.</summary>
/// <param name="Bytes">Their lines.</param>
/// <param name="Lengths">The lengths of the lines without their ends, bytes.</param>
/// <param name="Entries">The entries as they will be read back from those lines.</param>
internal sealed record NewEntries(byte[] Bytes, IReadOnlyList<int> Lengths, IReadOnlyList<JournalEntry> Entries)
{
    /// <summary>Entries that follow the ones already in a journal.</summary>
    /// <exception cref="ArgumentException">A body holds a number that is not finite.</exception>
    public static NewEntries Of(
        Author author, IReadOnlyList<EntryBody> bodies, IReadOnlyList<JournalEntry> before, DateTimeOffset now)
    {
        using var bytes = new MemoryStream();
        var (entries, lengths) = (new List<JournalEntry>(bodies.Count), new List<int>(bodies.Count));
        var previous = before.Count == 0 ? EntryLine.NoPrevious : before.HashAt(before.Count - 1);
        foreach (var body in bodies)
        {
            var sequence = before.Count + entries.Count + 1;
            var line = EntryLine.Write(sequence, now, author, body, previous, EntryLine.NewSalt());
            entries.Add(EntryLine.Read(line));
            lengths.Add(line.Length);
            previous = entries[^1].Hash;
            bytes.Write(line);
            bytes.WriteByte((byte)'\n');
        }

        return new(bytes.ToArray(), lengths, entries);
    }
}
