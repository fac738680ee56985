using System.Collections.Concurrent;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Index;

/// <summary>Lists, search and the work queue, kept in a LiteDB file that can be deleted at any time.</summary>
/// <remarks>LiteDB 5.0.21 does not sync its commits and keeps no checksum of them, so the file is trusted only when it
/// was closed in good order, has not changed by a bit since, and stands exactly where the journals stand; otherwise it is made again. All use of it is
/// one at a time, which its concurrent readers and writers need to be safe. It has nothing that is not in the journals,
/// so whatever goes wrong with it must not stop the work: then it is made again in memory. Whoever appends does not wait for
/// it: what is new is brought in behind, and before whatever is asked of it next.</remarks>
internal sealed class GarageIndex : IDisposable
{
    private readonly Lock _gate = new();
    private readonly string? _path;
    private readonly IEntryWording _wording;
    private readonly Func<IEnumerable<IndexedJournal>> _journals;
    private readonly IProgress<GarageOpening>? _progress;
    private readonly ConcurrentQueue<IndexedJournal> _new = [];
    private IndexDatabase _database;
    private bool _closed;

    /// <summary>Opens the index, and makes it again when it is not that of the journals.</summary>
    /// <param name="path">Its file; null makes it in memory.</param>
    /// <param name="wording">What entries say to people.</param>
    /// <param name="journals">Gives the vehicles' journals as they are when called.</param>
    /// <param name="progress">Is told how far it is when the index is made again.</param>
    public GarageIndex(
        string? path,
        IEntryWording wording,
        Func<IEnumerable<IndexedJournal>> journals,
        IProgress<GarageOpening>? progress = null)
    {
        _path = path;
        _wording = wording;
        _journals = journals;
        _progress = progress;
        _database = OpenTrusted() ?? Make();
    }

    /// <summary>What is wrong with the index; null when all is well.</summary>
    public GarageProblem? Problem { get; private set; }

    /// <summary>How far journals were, when the index was last closed, that no longer hold that. A journal cut short at a
    /// line's end looks sound by itself; the index knows its last entries sooner than the workshop's journal notes them.
    /// </summary>
    public IReadOnlyList<NotedJournal> Lost { get; private set; } = [];

    /// <summary>Deletes the index and makes it again from the journals.</summary>
    public void Rebuild()
    {
        lock (_gate)
        {
            ObjectDisposedException.ThrowIf(_closed, typeof(Garage));
            IndexTrust.Abandon(_database);
            _new.Clear(); // the journals have it, or no longer do
            _database = Make();
        }
    }

    /// <summary>Has new entries of a journal brought in. Those of one journal are given one after the other, in order.</summary>
    public void Add(VehicleState state, IReadOnlyList<JournalEntry> entries)
    {
        _new.Enqueue(new(state, entries));
        ThreadPool.UnsafeQueueUserWorkItem(_ => BringInAll(), null);
    }

    /// <summary>Brings in what waits for it.</summary>
    public void BringInAll()
    {
        lock (_gate)
        {
            if (!_closed)
            {
                BringInNew();
            }
        }
    }

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

    /// <summary>Entries that hold every one of some words, or words that begin so, in no order.</summary>
    public IReadOnlyList<FoundText> Search(string words) => Words.Of(words) is { Count: > 0 } wanted
        ? Use(index => IndexSearch.In(index, wanted))
        : [];

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
        {
            if (!_closed)
            {
                BringInNew();
            }

            _closed = true;
            _database.Dispose();
        }
    }

    private T Use<T>(Func<IndexDatabase, T> use)
    {
        lock (_gate)
        {
            ObjectDisposedException.ThrowIf(_closed, typeof(Garage));
            BringInNew();
            try
            {
                var answer = use(_database);
                _database.ThrowIfNotWritten();
                return answer;
            }
            catch (Exception problem) // a damaged LiteDB file fails in many ways
            {
                IndexTrust.Abandon(_database);
                _database = MakeInMemory(problem);
                return use(_database);
            }
        }
    }

    /// <summary>Brings in what is new. Where that fails the index is made again of the journals, which have it; what of it
    /// still waits then comes in twice, and changes nothing.</summary>
    private void BringInNew()
    {
        while (_new.TryDequeue(out var next))
        {
            try
            {
                _database.Add(next.State, next.Entries, _wording);
                _database.ThrowIfNotWritten();
            }
            catch (Exception problem) // a damaged LiteDB file fails in many ways
            {
                IndexTrust.Abandon(_database);
                _database = MakeInMemory(problem);
            }
        }
    }

    private IndexDatabase? OpenTrusted()
    {
        if (_path is null)
        {
            return null;
        }

        (var database, Lost) = IndexTrust.Open(_path, _wording.Version, _journals);
        return database;
    }

    private IndexDatabase Make()
    {
        if (_path is null)
        {
            return FilledInMemory();
        }

        IndexDatabase? database = null;
        try
        {
            IndexFiles.Delete(_path);
            database = IndexDatabase.InFile(_path);
            Fill(database, journal => database.Add(journal.State, journal.Entries, _wording));
            database.ThrowIfNotWritten();
            Problem = null;
            return database;
        }
        catch (Exception problem)
        {
            IndexTrust.Abandon(database);
            return MakeInMemory(problem);
        }
    }

    private IndexDatabase MakeInMemory(Exception problem)
    {
        Problem = new GarageProblem(ReadOnly: false,
            $"The file of lists and search failed ({problem.Message}). They work from memory until the next start. "
            + "Nothing in the journals is lost.");
        return FilledInMemory();
    }

    private IndexDatabase FilledInMemory()
    {
        var database = IndexDatabase.InMemory();
        Fill(database, journal => AddAsFarAsItCanBeRead(database, journal));
        return database;
    }

    private void Fill(IndexDatabase database, Action<IndexedJournal> add)
    {
        database.Wording = _wording.Version;
        var journals = _journals().ToList();
        foreach (var (at, journal) in journals.Index())
        {
            add(journal);
            _progress?.Report(new(OpeningStep.MakingLists, at + 1, journals.Count));
        }
    }

    /// <summary>Entries are read from the disk, and a disk that fails must not stop the rest: this is the last resort.</summary>
    private void AddAsFarAsItCanBeRead(IndexDatabase database, IndexedJournal journal)
    {
        try
        {
            database.Add(journal.State, journal.Entries, _wording);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            database.TakeBack();
            Problem = new GarageProblem(ReadOnly: false,
                $"The journal of {journal.State.Name} could not be read for lists and search ({problem.Message}). They lack it until the next start.");
        }
    }
}
