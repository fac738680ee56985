using System.Collections.Concurrent;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <summary>The data folder opened: every vehicle's journal, the workshop's own, the media store and the index.
/// Safe for use by many threads; appends to one journal are made one after the other.</summary>
public sealed partial class Garage : IDisposable
{
    private readonly DataFolder _folder;
    private readonly TimeProvider _time;
    private readonly IDurable _durable;
    private readonly IEntryRules _rules;
    private readonly FileStream? _lock;
    private readonly WriteLatches _latches;
    private readonly Lock _adding = new();
    private readonly ConcurrentDictionary<string, OpenJournal<VehicleState>> _vehicles = new(StringComparer.Ordinal);
    private readonly OpenJournal<WorkshopState> _workshop;
    private readonly GarageIndex _index;
    private readonly EntryCache _cache = new();
    private readonly ContentCache _contents = new();
    private readonly IReadOnlyList<GarageProblem> _foundAtOpening;

    /// <summary>The data folder.</summary>
    public string Folder => _folder.Root;

    /// <summary>Recordings and photos.</summary>
    public IMediaStore Media { get; }

    /// <summary>The check sheets that inspections pin.</summary>
    public SheetStore Sheets { get; }

    /// <summary>What is wrong with the garage, for a banner on every page; empty when all is well.</summary>
    public IReadOnlyList<GarageProblem> Problems =>
    [
        .. _latches.Problems,
        .. _vehicles.Values.Select(journal => journal.FailedWrite).OfType<GarageProblem>(),
        .. new[] { _index.Problem }.OfType<GarageProblem>(),
        .. _foundAtOpening,
        .. LossesInWords(),
    ];

    /// <summary>Adds a vehicle and returns its id, made from its name.</summary>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public string AddVehicle(Author author, VehicleAdded vehicle, params IReadOnlyList<EntryBody> further)
    {
        if (string.IsNullOrWhiteSpace(vehicle.Name))
        {
            throw new ArgumentException("A vehicle needs a name.", nameof(vehicle));
        }

        lock (_adding)
        {
            var id = VehicleIds.New(vehicle.Name, id => Directory.Exists(_folder.Vehicle(id)));
            _latches.Adding.Guard(() => MakeVehicle(id, author, [vehicle, .. further]));
            var journal = OpenVehicle(id);
            _vehicles[id] = journal;
            _index.Add(journal.Now.State, journal.Now.Entries);
            NoteVehicles();
            return id;
        }
    }

    /// <summary>Appends entries to a vehicle's journal. They are on disk when this returns.</summary>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="author">Who makes them, and with what.</param>
    /// <param name="decide">Called with the vehicle's state while no other append can happen; gives the bodies to
    /// append, in order; none appends nothing. The first gets sequence <see cref="VehicleState.NextSequence"/>.</param>
    /// <returns>The vehicle's state after the append.</returns>
    /// <exception cref="UnknownVehicleException">There is no such vehicle.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written to it at present: the disk is full, an earlier
    /// write to it failed, or it is damaged. Nothing was acknowledged.</exception>
    /// <exception cref="EntryRefusedException">The rules do not allow one of the entries; none was written.</exception>
    public VehicleState Append(string vehicleId, Author author, Func<VehicleState, IReadOnlyList<EntryBody>> decide)
    {
        var closed = false;
        var after = Journal(vehicleId).Append(
            author,
            state => WithWorkshopNoted(Admitted(state, decide(state))),
            (now, entries) =>
            {
                _index.Add(now.State, entries);
                closed = entries.Any(entry => entry.Body is InspectionClosed);
            });
        if (closed)
        {
            NoteVehicles();
        }

        return after;
    }

    /// <summary>Appends entries to the workshop's journal.</summary>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public WorkshopState AppendToWorkshop(Author author, params IReadOnlyList<EntryBody> bodies) =>
        _workshop.Append(author, _ => bodies, (_, _) => { });

    /// <summary>The workshop: its instruments and its own words. Of a damaged journal no device is let in: that it was
    /// turned away since may stand in what cannot be read.</summary>
    public WorkshopState Workshop => _workshop.Damage is null ? _workshop.Now.State : _workshop.Now.State with { Accesses = [] };

    /// <summary>The state of a vehicle, or null when there is none with this id.</summary>
    public VehicleState? FindVehicle(string vehicleId) => _vehicles.GetValueOrDefault(vehicleId)?.Now.State;

    /// <summary>All sound entries of a vehicle's journal, by rising sequence. Of a damaged one some numbers are missing.
    /// </summary>
    /// <exception cref="UnknownVehicleException">There is no such vehicle.</exception>
    public IReadOnlyList<JournalEntry> Entries(string vehicleId) => Journal(vehicleId).Now.Entries;

    /// <summary>What is wrong with a vehicle's journal, for its own page; none when all is well.</summary>
    public IReadOnlyList<BrokenLine> DamagedLines(string vehicleId) =>
        _vehicles.GetValueOrDefault(vehicleId)?.Damage?.Lines ?? [];

    /// <summary>All vehicles, those last worked on first; at the end those of which nothing could be read.</summary>
    public IReadOnlyList<VehicleSummary> Vehicles() =>
    [
        .. _index.Vehicles(),
        .. _vehicles.Values.Select(journal => journal.Now).Where(now => now.Entries.Count == 0)
            .OrderBy(now => now.State.Id, StringComparer.Ordinal)
            .Select(now => new VehicleSummary(now.State.Id, now.State.Name, "", PictureSha256: null, LastChanged: null)),
    ];

    /// <summary>Finds entries by words said, written or recorded, and by who made them; each word must occur. What
    /// counts comes before what was withdrawn or put right since, words that stand together before words that are
    /// scattered, and then the newest first. Case and accents do not matter, the beginning of a word is enough, and a
    /// number is found with a comma or a point.</summary>
    public IReadOnlyList<SearchHit> Search(string words) => Ranking.Of(_index.Search(words), words, FindVehicle);

    /// <summary>Recordings that have no transcript yet and whose journal can take one, oldest first. Those that came in from
    /// elsewhere are not among them until somebody asks: read in two garages, the two journals would part.</summary>
    public IReadOnlyList<WaitingRecording> WaitingRecordings() =>
        [.. _index.Waiting().Where(one => !IsLookedAtOnly && _vehicles.GetValueOrDefault(one.VehicleId) is { Damage: null, FailedWrite: null } journal && IsToBeRead(journal.Now.State, one))];

    /// <summary>Deletes the index and makes it again from the journals.</summary>
    public void RebuildIndex() => _index.Rebuild();

    /// <inheritdoc/>
    public void Dispose()
    {
        NoteVehicles();
        lock (_adding)
        {
            _latches.Gate.Close();
        }

        _workshop.WaitForAppend();
        foreach (var journal in _vehicles.Values)
        {
            journal.WaitForAppend();
        }

        _index.Dispose();
        _lock?.Dispose();
    }

    private static bool IsToBeRead(VehicleState vehicle, WaitingRecording one) =>
        vehicle.Inspection(one.Inspection)?.FindVoiceNote(one.Recording) is not { AwaitsAsking: true };

    private IReadOnlyList<EntryBody> Admitted(VehicleState vehicle, IReadOnlyList<EntryBody> bodies) =>
        bodies.Select(body => _rules.Refusal(vehicle, body)).FirstOrDefault(reason => reason is not null) is { } refusal
            ? throw new EntryRefusedException(refusal)
            : bodies;

    private OpenJournal<VehicleState> Journal(string vehicleId) =>
        _vehicles.GetValueOrDefault(vehicleId) ?? throw new UnknownVehicleException(vehicleId);

    private OpenJournal<VehicleState> OpenVehicle(string id) => new(
        new JournalFile(_folder.Journal(id), _durable, _latches.OfVehicle(id, () => FindVehicle(id)?.Name ?? id)),
        Before(id),
        (state, entry) => state.Apply(entry),
        _time,
        mustHoldEntries: true,
        _cache,
        (state, places) => state with { Shelf = new InspectionShelf(places, _contents) },
        anew: () => Before(id));

    private VehicleState Before(string id) => VehicleState.Before(id) with { CameIn = CameIn.In(_folder.Vehicle(id)) };

    /// <summary>The journal of a vehicle that has no place yet.</summary>
    private JournalFile NewFile(string folder) => new(Path.Combine(folder, DataFolder.JournalName), _durable, _latches.Adding);

    private IEnumerable<IndexedJournal> JournalsForIndex() => _vehicles.Values
        .Select(journal => journal.Now)
        .Where(now => now.Entries.Count > 0)
        .Select(now => new IndexedJournal(now.State, now.Entries));

    /// <summary>Makes a vehicle's folder whole under another name, so that it appears with its first entries on disk
    /// or not at all.</summary>
    private void MakeVehicle(string id, Author author, IReadOnlyList<EntryBody> bodies)
    {
        var folder = _folder.VehicleInTheMaking(id);
        Directory.CreateDirectory(folder);
        var record = NewEntries.Of(author, bodies, [], _time.GetLocalNow());
        NewFile(folder).Append(record.Bytes);
        Directory.Move(folder, _folder.Vehicle(id));
        try
        {
            _durable.SyncFolder(_folder.Vehicles);
        }
        catch (IOException)
        {
            // It is refused, so it must not be there at the next start, which sets aside what was being added.
            Directory.Move(_folder.Vehicle(id), folder);
            throw;
        }
    }
}
