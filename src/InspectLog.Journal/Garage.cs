using System.Collections.Concurrent;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <summary>The data folder opened: every vehicle's journal, the workshop's own, the media store and the index.
/// Safe for use by many threads; appends to one journal are made one after the other.</summary>
public sealed class Garage : IDisposable
{
    private const int MostHits = 100;

    private readonly DataFolder _folder;
    private readonly TimeProvider _time;
    private readonly IDurable _durable;
    private readonly FileStream _lock;
    private readonly WriteLatch _latch = new();
    private readonly Lock _adding = new();
    private readonly ConcurrentDictionary<string, OpenJournal<VehicleState>> _vehicles = new(StringComparer.Ordinal);
    private readonly OpenJournal<WorkshopState> _workshop;
    private readonly GarageIndex _index;
    private readonly IReadOnlyList<GarageProblem> _foundAtOpening;

    private Garage(
        DataFolder folder, TimeProvider time, IDurable durable, FileStream @lock, IProgress<GarageOpening>? progress)
    {
        _folder = folder;
        _time = time;
        _durable = durable;
        _lock = @lock;
        Media = new MediaStore(folder.Media, durable, _latch);
        Media.RemoveUnfinished();
        var recovery = new Recovery(folder, time);
        recovery.SetUnfinishedVehiclesAside();
        _workshop = new(FileAt(folder.Workshop), WorkshopState.Empty, (state, entry) => state.Apply(entry), time);
        recovery.Recover(_workshop, "workshop", "the workshop", vehicleId: null);
        var ids = VehicleFolders();
        foreach (var (id, journal) in ids.Zip(JournalReading.Read(ids, OpenVehicle, progress)))
        {
            recovery.Recover(journal, id, journal.Now.State.Name, vehicleId: id);
            if (recovery.HoldsAnything(journal, id))
            {
                _vehicles[id] = journal;
            }
        }

        _index = new GarageIndex(folder.Index, JournalsForIndex, progress);
        _foundAtOpening = [.. recovery.Found, .. _index.Lost.ExceptBy(recovery.Found.Select(At), At)];
    }

    /// <summary>Opens a data folder, creating it when missing, and takes its lock for the life of the object.
    /// Torn last lines are set aside and noted; an index that does not match the journals is made again.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="time">Clock and local offset of the entries.</param>
    /// <param name="progress">Is told how far it is; may be called by several threads at once.</param>
    /// <exception cref="DataFolderInUseException">Another process has it open.</exception>
    /// <exception cref="IOException">The folder cannot be read or written.</exception>
    public static Garage Open(string folder, TimeProvider time, IProgress<GarageOpening>? progress = null) =>
        Open(folder, time, new Durable(), progress);

    internal static Garage Open(
        string folder, TimeProvider time, IDurable durable, IProgress<GarageOpening>? progress = null)
    {
        var places = new DataFolder(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        FileStream? @lock = null;
        try
        {
            places.CreateRoot(durable);
            @lock = places.TakeLock();
            places.CreateParts(durable);
            return new Garage(places, time, durable, @lock, progress);
        }
        catch (UnauthorizedAccessException cause)
        {
            @lock?.Dispose();
            throw new IOException($"The folder {places.Root} cannot be used: {cause.Message}", cause);
        }
        catch
        {
            @lock?.Dispose();
            throw;
        }
    }

    /// <summary>The data folder.</summary>
    public string Folder => _folder.Root;

    /// <summary>Recordings and photos.</summary>
    public MediaStore Media { get; }

    /// <summary>What is wrong with the garage, for a banner on every page; empty when all is well.</summary>
    public IReadOnlyList<GarageProblem> Problems =>
        [.. new[] { _latch.Problem, _index.Problem }.OfType<GarageProblem>(), .. _foundAtOpening];

    /// <summary>Adds a vehicle and returns its id, made from its name.</summary>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public string AddVehicle(string actor, VehicleAdded vehicle, params IReadOnlyList<EntryBody> further)
    {
        if (string.IsNullOrWhiteSpace(vehicle.Name))
        {
            throw new ArgumentException("A vehicle needs a name.", nameof(vehicle));
        }

        lock (_adding)
        {
            var id = VehicleIds.New(vehicle.Name, id => Directory.Exists(_folder.Vehicle(id)));
            _latch.Guard(() => MakeVehicle(id, actor, [vehicle, .. further]));
            var journal = OpenVehicle(id);
            _vehicles[id] = journal;
            _index.Add(journal.Now.State, journal.Now.Entries);
            return id;
        }
    }

    /// <summary>Appends entries to a vehicle's journal. They are on disk when this returns.</summary>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="actor">Who makes them.</param>
    /// <param name="decide">Called with the vehicle's state while no other append can happen; gives the bodies to
    /// append, in order; none appends nothing. The first gets sequence <see cref="VehicleState.NextSequence"/>.</param>
    /// <returns>The vehicle's state after the append.</returns>
    /// <exception cref="UnknownVehicleException">There is no such vehicle.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present: the disk is full, an earlier
    /// write failed, or the journal is damaged. Nothing was acknowledged.</exception>
    public VehicleState Append(
        string vehicleId, string actor, Func<VehicleState, IReadOnlyList<EntryBody>> decide) =>
        Journal(vehicleId).Append(actor, decide, (now, entries) => _index.Add(now.State, entries));

    /// <summary>Appends entries to the workshop's journal.</summary>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public WorkshopState AppendToWorkshop(string actor, params IReadOnlyList<EntryBody> bodies) =>
        _workshop.Append(actor, _ => bodies, (_, _) => { });

    /// <summary>The workshop: its instruments and its own words.</summary>
    public WorkshopState Workshop => _workshop.Now.State;

    /// <summary>The state of a vehicle, or null when there is none with this id.</summary>
    public VehicleState? FindVehicle(string vehicleId) => _vehicles.GetValueOrDefault(vehicleId)?.Now.State;

    /// <summary>All entries of a vehicle's journal, oldest first.</summary>
    /// <exception cref="UnknownVehicleException">There is no such vehicle.</exception>
    public IReadOnlyList<JournalEntry> Entries(string vehicleId) => Journal(vehicleId).Now.Entries;

    /// <summary>All vehicles, those last worked on first.</summary>
    public IReadOnlyList<VehicleSummary> Vehicles() => _index.Vehicles();

    /// <summary>Finds entries by words said, written or recorded; each word must occur. At most 100, newest first.
    /// Case and accents do not matter, and the beginning of a word is enough.</summary>
    public IReadOnlyList<SearchHit> Search(string words) => _index.Search(words, MostHits);

    /// <summary>Recordings that have no transcript yet, oldest first.</summary>
    public IReadOnlyList<WaitingRecording> WaitingRecordings() => _index.Waiting();

    /// <summary>Deletes the index and makes it again from the journals.</summary>
    public void RebuildIndex() => _index.Rebuild();

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_adding)
        {
            _latch.Close();
        }

        _workshop.WaitForAppend();
        foreach (var journal in _vehicles.Values)
        {
            journal.WaitForAppend();
        }

        _index.Dispose();
        _lock.Dispose();
    }

    private static string? At(GarageProblem problem) => problem.VehicleId;

    private OpenJournal<VehicleState> Journal(string vehicleId) =>
        _vehicles.GetValueOrDefault(vehicleId) ?? throw new UnknownVehicleException(vehicleId);

    private OpenJournal<VehicleState> OpenVehicle(string id) => new(
        FileAt(_folder.Journal(id)), VehicleState.Before(id), (state, entry) => state.Apply(entry), _time);

    private JournalFile FileAt(string path) => new(path, _durable, _latch);

    private IReadOnlyList<string> VehicleFolders() =>
    [
        .. Directory.EnumerateDirectories(_folder.Vehicles)
            .Select(folder => Path.GetFileName(folder))
            .Where(VehicleIds.IsId)
            .Order(StringComparer.Ordinal),
    ];

    private IEnumerable<IndexedJournal> JournalsForIndex() => _vehicles.Values
        .Select(journal => journal.Now)
        .Select(now => new IndexedJournal(now.State, now.Entries));

    /// <summary>Makes a vehicle's folder whole under another name, so that it appears with its first entries on disk
    /// or not at all.</summary>
    private void MakeVehicle(string id, string actor, IReadOnlyList<EntryBody> bodies)
    {
        var folder = _folder.VehicleInTheMaking(id);
        Directory.CreateDirectory(folder);
        var record = NewEntries.Of(actor, bodies, [], _time.GetLocalNow());
        FileAt(Path.Combine(folder, DataFolder.JournalName)).Append(record.Bytes);
        Directory.Move(folder, _folder.Vehicle(id));
        _durable.SyncFolder(_folder.Vehicles);
    }
}
