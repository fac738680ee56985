using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Index;

/// <summary>Whether an index file that is there is the one of the journals as they stand.</summary>
internal static class IndexTrust
{
    /// <summary>Opens an index file; null where it is none that can be trusted, and then it is closed again.</summary>
    /// <param name="path">The file.</param>
    /// <param name="wording">The version of the wording that its texts must be of.</param>
    /// <param name="journals">Gives the journals as they are when called.</param>
    /// <returns>The database, and how far the journals were that no longer hold that.</returns>
    public static (IndexDatabase? Database, IReadOnlyList<NotedJournal> Lost) Open(
        string path, string wording, Func<IEnumerable<IndexedJournal>> journals)
    {
        IReadOnlyList<NotedJournal> lost = [];
        if (!IndexFiles.WereClosed(path))
        {
            return (null, lost);
        }

        IndexDatabase? database = null;
        try
        {
            database = IndexDatabase.InFile(path);
            var stood = database.Positions.FindAll().ToArray();
            var now = journals().ToDictionary(journal => journal.State.Id);
            lost = [.. stood.Where(row => !HoldsStill(now, row)).Select(row => new NotedJournal(row.Id, row.Sequence, row.Hash))];
            if (database.Wording == wording && stood.Length == now.Count && stood.All(row => StandsAt(now, row)))
            {
                return (database, lost);
            }
        }
        catch (Exception)
        {
            // It is of no use, whatever it is.
        }

        Abandon(database);
        return (null, lost);
    }

    /// <summary>Closes a database that is given up; that it cannot even be closed is no news.</summary>
    public static void Abandon(IndexDatabase? database)
    {
        try
        {
            database?.Dispose();
        }
        catch (Exception)
        {
            // As said.
        }
    }

    private static bool HoldsStill(Dictionary<string, IndexedJournal> journals, PositionRow row) =>
        journals.TryGetValue(row.Id, out var journal) && journal.HashAt(row.Sequence) == row.Hash;

    private static bool StandsAt(Dictionary<string, IndexedJournal> journals, PositionRow row) =>
        HoldsStill(journals, row) && journals[row.Id].Entries.Count == row.Sequence;
}

/// <summary>A vehicle's journal as the index needs it.</summary>
/// <param name="State">The vehicle.</param>
/// <param name="Entries">All its sound entries; never none.</param>
internal sealed record IndexedJournal(VehicleState State, IReadOnlyList<JournalEntry> Entries)
{
    /// <summary>The hash of an entry; null when there is none of that sequence.</summary>
    public string? HashAt(long sequence) => Entries.HashOf(sequence);
}
