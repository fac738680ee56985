using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Index;

/// <summary>Lists, search and the work queue, kept in a LiteDB file that can be deleted at any time.</summary>
/// <remarks>LiteDB 5.0.21 does not sync its commits and keeps no checksum of them, so the file is trusted only when it
/// was closed in good order and stands exactly where the journals stand; otherwise it is made again. All use of it is
/// one at a time, which its concurrent readers and writers need to be safe. It has nothing that is not in the journals,
/// so whatever goes wrong with it must not stop the work: then it is made again in memory.</remarks>
internal sealed class GarageIndex : IDisposable
{
    private readonly Lock _gate = new();
    private readonly string _path;
    private readonly Func<IEnumerable<IndexedJournal>> _journals;
    private readonly IProgress<GarageOpening>? _progress;
    private IndexDatabase _database;
    private bool _closed;

    /// <summary>Opens the index, and makes it again when it is not that of the journals.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="journals">Gives the vehicles' journals as they are when called.</param>
    /// <param name="progress">Is told how far it is when the index is made again.</param>
    public GarageIndex(
        string path, Func<IEnumerable<IndexedJournal>> journals, IProgress<GarageOpening>? progress = null)
    {
        _path = path;
        _journals = journals;
        _progress = progress;
        _database = OpenTrusted() ?? Make();
    }

    /// <summary>What is wrong with the index; null when all is well.</summary>
    public GarageProblem? Problem { get; private set; }

    /// <summary>Journals that no longer hold what they held when the index was last closed. A journal cut short at a
    /// line's end looks sound by itself; this is the one place where it shows.</summary>
    public IReadOnlyList<GarageProblem> Lost { get; private set; } = [];

    /// <summary>Deletes the index and makes it again from the journals.</summary>
    public void Rebuild()
    {
        lock (_gate)
        {
            ObjectDisposedException.ThrowIf(_closed, typeof(Garage));
            Abandon(_database);
            _database = Make();
        }
    }

    /// <summary>Brings new entries of a journal in.</summary>
    public void Add(VehicleState state, IReadOnlyList<JournalEntry> entries) => Use(index =>
    {
        index.Add(state, entries);
        return true;
    });

    /// <summary>All vehicles, those last worked on first.</summary>
    public IReadOnlyList<VehicleSummary> Vehicles() => Use<IReadOnlyList<VehicleSummary>>(index =>
    [
        .. index.Vehicles.FindAll()
            .OrderByDescending(row => row.LastChanged).ThenBy(row => row.Id, StringComparer.Ordinal)
            .Select(row => new VehicleSummary(row.Id, row.Name, row.Description, row.Picture, row.LastChanged)),
    ]);

    /// <summary>Recordings that have no transcript yet, oldest first.</summary>
    public IReadOnlyList<WaitingRecording> Waiting() => Use<IReadOnlyList<WaitingRecording>>(index =>
    [
        .. index.Waiting.FindAll()
            .OrderBy(row => row.Kept).ThenBy(row => row.Vehicle, StringComparer.Ordinal).ThenBy(row => row.Recording)
            .Select(row => new WaitingRecording(row.Vehicle, row.Recording, row.Inspection, row.Kept)),
    ]);

    /// <summary>Entries that hold every one of some words, or words that begin so; newest first.</summary>
    public IReadOnlyList<SearchHit> Search(string words, int atMost)
    {
        var wanted = Words.Of(words);
        return wanted.Count == 0 ? [] : Use<IReadOnlyList<SearchHit>>(index =>
        {
            var names = index.Vehicles.FindAll().ToDictionary(row => row.Id, row => row.Name);
            var found = wanted.Aggregate(index.Texts.Query(), (query, word) => query.Where("$.Words[*] ANY LIKE @0", word + "%"));
            return
            [
                .. found.ToEnumerable()
                    .OrderByDescending(row => row.Time)
                    .ThenBy(row => row.Vehicle, StringComparer.Ordinal)
                    .ThenByDescending(row => row.Sequence)
                    .Take(atMost)
                    .Select(row => new SearchHit(
                        row.Vehicle, names[row.Vehicle], row.Inspection, row.Sequence, row.Time, row.Text)),
            ];
        });
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
        {
            _closed = true;
            _database.Dispose();
        }
    }

    private T Use<T>(Func<IndexDatabase, T> use)
    {
        lock (_gate)
        {
            ObjectDisposedException.ThrowIf(_closed, typeof(Garage));
            try
            {
                return use(_database);
            }
            catch (Exception problem) // a damaged LiteDB file fails in many ways
            {
                Abandon(_database);
                _database = MakeInMemory(problem);
                return use(_database);
            }
        }
    }

    private IndexDatabase? OpenTrusted()
    {
        if (!IndexDatabase.WasClosed(_path))
        {
            return null;
        }

        IndexDatabase? database = null;
        try
        {
            database = IndexDatabase.InFile(_path);
            var stood = database.Positions.FindAll().ToArray();
            var journals = _journals().ToDictionary(journal => journal.State.Id);
            Lost = [.. stood.Where(row => !HoldsStill(journals, row)).Select(LostProblem)];
            if (stood.Length == journals.Count && stood.All(row => StandsAt(journals, row)))
            {
                return database;
            }
        }
        catch (Exception)
        {
            // It is of no use, whatever it is.
        }

        Abandon(database);
        return null;
    }

    private IndexDatabase Make()
    {
        IndexDatabase? database = null;
        try
        {
            IndexDatabase.Delete(_path);
            database = IndexDatabase.InFile(_path);
            Fill(database);
            Problem = null;
            return database;
        }
        catch (Exception problem)
        {
            Abandon(database);
            return MakeInMemory(problem);
        }
    }

    private IndexDatabase MakeInMemory(Exception problem)
    {
        Problem = new GarageProblem(ReadOnly: false,
            $"The file of lists and search failed ({problem.Message}). They work from memory until the next start. "
            + "Nothing in the journals is lost.");
        var database = IndexDatabase.InMemory();
        Fill(database);
        return database;
    }

    private void Fill(IndexDatabase database)
    {
        var journals = _journals().ToList();
        foreach (var (at, journal) in journals.Index())
        {
            database.Add(journal.State, journal.Entries);
            _progress?.Report(new(OpeningStep.MakingLists, at + 1, journals.Count));
        }
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

    /// <summary>Closes a database that is given up; that it cannot even be closed is no news.</summary>
    private static void Abandon(IndexDatabase? database)
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
}

/// <summary>A vehicle's journal as the index needs it.</summary>
/// <param name="State">The vehicle.</param>
/// <param name="Entries">All its entries; never none.</param>
internal sealed record IndexedJournal(VehicleState State, IReadOnlyList<JournalEntry> Entries)
{
    /// <summary>The hash of an entry; null when there is none of that sequence.</summary>
    public string? HashAt(long sequence) => sequence <= Entries.Count ? Entries[(int)sequence - 1].Hash : null;
}
