using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using LiteDB;

namespace InspectLog.Journal.Index;

/// <summary>Lists, search and the work queue, kept in a LiteDB file that can be deleted at any time.</summary>
/// <remarks>LiteDB 5.0.21 does not sync its commits and keeps no checksum of them, so the file is trusted only when it
/// was closed in good order and stands exactly where the journals stand; otherwise it is made again. All use of it is
/// one at a time, which its concurrent readers and writers need to be safe.</remarks>
internal sealed class GarageIndex : IDisposable
{
    private readonly Lock _gate = new();
    private readonly string _path;
    private readonly Func<IEnumerable<IndexedJournal>> _journals;
    private LiteDatabase _database;
    private IndexDocuments _documents;

    /// <summary>Opens the index, and makes it again when it is not that of the journals.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="journals">Gives the vehicles' journals as they are when called.</param>
    public GarageIndex(string path, Func<IEnumerable<IndexedJournal>> journals)
    {
        _path = path;
        _journals = journals;
        (_database, _documents) = OpenTrusted() ?? Make();
    }

    /// <summary>What is wrong with the index; null when all is well.</summary>
    public GarageProblem? Problem { get; private set; }

    /// <summary>Journals that no longer hold what they held when the index was last closed. A journal cut short at a
    /// line's end looks sound by itself; this is the one place where it shows.</summary>
    public IReadOnlyList<GarageProblem> Lost { get; private set; } = [];

    private string LogPath => Path.ChangeExtension(_path, null) + "-log" + Path.GetExtension(_path);

    /// <summary>Deletes the index and makes it again from the journals.</summary>
    public void Rebuild()
    {
        lock (_gate)
        {
            MakeAgain();
        }
    }

    /// <summary>Brings new entries of a journal in.</summary>
    public void Add(VehicleState state, IReadOnlyList<JournalEntry> entries) => Use(documents =>
    {
        _database.BeginTrans();
        IndexWriter.Write(documents, state, entries);
        return _database.Commit();
    });

    /// <summary>All vehicles, those last worked on first.</summary>
    public IReadOnlyList<VehicleSummary> Vehicles() => Use<IReadOnlyList<VehicleSummary>>(documents =>
    [
        .. documents.Vehicles.FindAll()
            .Select(v => new VehicleSummary(v.Id, v.Name, v.Description, v.Picture, v.LastChanged))
            .OrderByDescending(v => v.LastChanged).ThenBy(v => v.Id, StringComparer.Ordinal),
    ]);

    /// <summary>Recordings that have no transcript yet, oldest first.</summary>
    public IReadOnlyList<WaitingRecording> Waiting() => Use<IReadOnlyList<WaitingRecording>>(documents =>
    [
        .. documents.Waiting.FindAll()
            .Select(w => new WaitingRecording(w.Vehicle, w.Recording, w.Inspection, w.Kept))
            .OrderBy(w => w.Kept).ThenBy(w => w.Recording).ThenBy(w => w.VehicleId, StringComparer.Ordinal),
    ]);

    /// <summary>Entries that hold every one of some words, or words that begin so; newest first.</summary>
    public IReadOnlyList<SearchHit> Search(string words, int atMost)
    {
        var wanted = Words.Of(words);
        return wanted.Count == 0 ? [] : Use<IReadOnlyList<SearchHit>>(documents =>
        {
            var names = documents.Vehicles.FindAll().ToDictionary(vehicle => vehicle.Id, vehicle => vehicle.Name);
            var query = documents.Texts.Query();
            foreach (var word in wanted)
            {
                query = query.Where("$.Words[*] ANY LIKE @0", word + "%");
            }

            return
            [
                .. query.ToEnumerable()
                    .OrderByDescending(text => text.Time).ThenByDescending(text => text.Sequence).ThenBy(text => text.Vehicle, StringComparer.Ordinal)
                    .Take(atMost)
                    .Select(t => new SearchHit(t.Vehicle, names[t.Vehicle], t.Inspection, t.Sequence, t.Time, t.Text)),
            ];
        });
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
        {
            _database.Dispose();
        }
    }

    /// <summary>Uses the index, and makes it again should it fail. It has nothing that is not in the journals, so
    /// whatever went wrong with it must not stop the work.</summary>
    private T Use<T>(Func<IndexDocuments, T> use)
    {
        lock (_gate)
        {
            try
            {
                return use(_documents);
            }
            catch (Exception problem) when (problem is LiteException or IOException or InvalidOperationException)
            {
                MakeAgain();
                return use(_documents);
            }
        }
    }

    private (LiteDatabase, IndexDocuments)? OpenTrusted()
    {
        if (!File.Exists(_path) || File.Exists(LogPath))
        {
            return null;
        }

        LiteDatabase? database = null;
        try
        {
            database = new LiteDatabase(Connection(), OwnMapper());
            var documents = new IndexDocuments(database);
            var stood = documents.Positions.FindAll().ToArray();
            var journals = _journals().ToDictionary(journal => journal.State.Id);
            Lost = [.. stood.Where(row => !HoldsStill(journals, row)).Select(LostProblem)];
            if (stood.Length == journals.Count && stood.All(row => StandsAt(journals, row)))
            {
                return (database, documents);
            }
        }
        catch (Exception problem) when (problem is LiteException or IOException or InvalidOperationException)
        {
            // It is of no use, and is made again below.
        }

        database?.Dispose();
        return null;
    }

    private static bool HoldsStill(Dictionary<string, IndexedJournal> journals, PositionRow row) =>
        journals.TryGetValue(row.Id, out var journal) && journal.HashAt(row.Sequence) == row.Hash;

    private static bool StandsAt(Dictionary<string, IndexedJournal> journals, PositionRow row) =>
        HoldsStill(journals, row) && journals[row.Id].Entries.Count == row.Sequence;

    private static GarageProblem LostProblem(PositionRow row) => new(ReadOnly: false,
        $"The journal of the vehicle \"{row.Id}\" held {row.Sequence} entries when InspectLog was last closed, and no "
        + "longer holds the last of them. If you did not put an older copy in its place, look for a newer one.")
    {
        VehicleId = row.Id,
    };

    private void MakeAgain()
    {
        Quietly(_database.Dispose);
        (_database, _documents) = Make();
    }

    private (LiteDatabase, IndexDocuments) Make()
    {
        LiteDatabase? database = null;
        try
        {
            File.Delete(_path);
            File.Delete(LogPath);
            database = new LiteDatabase(Connection(), OwnMapper());
            var made = (database, Fill(database));
            Problem = null;
            return made;
        }
        catch (Exception problem) when (problem is LiteException or IOException or UnauthorizedAccessException)
        {
            Quietly(() => database?.Dispose());
            Problem = new GarageProblem(ReadOnly: false,
                $"The index could not be written ({problem.Message}). Lists and search work from memory until the next "
                + "start. Nothing in the journals is lost.");
            var inMemory = new LiteDatabase(new MemoryStream(), OwnMapper());
            return (inMemory, Fill(inMemory));
        }
    }

    private IndexDocuments Fill(LiteDatabase database)
    {
        database.UtcDate = true;
        var documents = new IndexDocuments(database);
        foreach (var journal in _journals())
        {
            database.BeginTrans();
            IndexWriter.Write(documents, journal.State, journal.Entries);
            database.Commit();
        }

        return documents;
    }

    private ConnectionString Connection() => new()
    {
        Filename = _path, Connection = ConnectionType.Direct, Collation = Collation.Binary,
    };

    /// <summary>A mapper that keeps text as it is; the default one trims it and drops what is empty.</summary>
    private static BsonMapper OwnMapper() => new() { TrimWhitespace = false, EmptyStringToNull = false };

    private static void Quietly(Action act)
    {
        try
        {
            act();
        }
        catch (Exception problem) when (problem is LiteException or IOException or InvalidOperationException)
        {
            // The index is being given up.
        }
    }
}

/// <summary>A vehicle's journal as the index needs it.</summary>
/// <param name="State">The vehicle.</param>
/// <param name="Entries">All its entries.</param>
internal sealed record IndexedJournal(VehicleState State, IReadOnlyList<JournalEntry> Entries)
{
    /// <summary>The hash of an entry; null when there is none of that sequence.</summary>
    public string? HashAt(long sequence) => sequence <= Entries.Count ? Entries[(int)sequence - 1].Hash : null;
}
