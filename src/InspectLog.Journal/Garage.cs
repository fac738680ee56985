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
    private Garage(string folder) => Folder = folder;

    /// <summary>Opens a data folder, creating it when missing, and takes its lock for the life of the object.
    /// Torn last lines are set aside and noted; an index that does not match the journals is made again.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="time">Clock and local offset of the entries.</param>
    /// <exception cref="DataFolderInUseException">Another process has it open.</exception>
    /// <exception cref="IOException">The folder cannot be read or written.</exception>
    public static Garage Open(string folder, TimeProvider time) => throw new NotSupportedException("Journal room");

    /// <summary>The data folder.</summary>
    public string Folder { get; }

    /// <summary>Recordings and photos.</summary>
    public MediaStore Media => throw new NotSupportedException("Journal room");

    /// <summary>What is wrong with the garage, for a banner on every page; empty when all is well.</summary>
    public IReadOnlyList<GarageProblem> Problems => throw new NotSupportedException("Journal room");

    /// <summary>Adds a vehicle and returns its id, made from its name.</summary>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public string AddVehicle(string actor, VehicleAdded vehicle, params IReadOnlyList<EntryBody> further) =>
        throw new NotSupportedException("Journal room");

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
        throw new NotSupportedException("Journal room");

    /// <summary>Appends entries to the workshop's journal.</summary>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public WorkshopState AppendToWorkshop(string actor, params IReadOnlyList<EntryBody> bodies) =>
        throw new NotSupportedException("Journal room");

    /// <summary>The workshop: its instruments.</summary>
    public WorkshopState Workshop => throw new NotSupportedException("Journal room");

    /// <summary>The state of a vehicle, or null when there is none with this id.</summary>
    public VehicleState? FindVehicle(string vehicleId) => throw new NotSupportedException("Journal room");

    /// <summary>All entries of a vehicle's journal, oldest first.</summary>
    /// <exception cref="UnknownVehicleException">There is no such vehicle.</exception>
    public IReadOnlyList<JournalEntry> Entries(string vehicleId) => throw new NotSupportedException("Journal room");

    /// <summary>All vehicles, those last worked on first.</summary>
    public IReadOnlyList<VehicleSummary> Vehicles() => throw new NotSupportedException("Journal room");

    /// <summary>Finds entries by words said, written or recorded; each word must occur. At most 100, newest first.</summary>
    public IReadOnlyList<SearchHit> Search(string words) => throw new NotSupportedException("Journal room");

    /// <summary>Recordings that have no transcript yet, oldest first.</summary>
    public IReadOnlyList<WaitingRecording> WaitingRecordings() => throw new NotSupportedException("Journal room");

    /// <inheritdoc/>
    public void Dispose() => GC.SuppressFinalize(this);
}

/// <summary>Something wrong with the garage.</summary>
/// <param name="ReadOnly">Whether nothing can be written because of it.</param>
/// <param name="Message">What it is and what to do.</param>
public sealed record GarageProblem(bool ReadOnly, string Message);

/// <summary>Nothing can be written at present.</summary>
public sealed class JournalReadOnlyException(string message, Exception? inner = null) : IOException(message, inner);

/// <summary>Another process has the data folder open.</summary>
public sealed class DataFolderInUseException(string message, Exception? inner = null) : IOException(message, inner);

/// <summary>There is no vehicle with this id.</summary>
public sealed class UnknownVehicleException(string vehicleId)
    : Exception($"There is no vehicle \"{vehicleId}\" in this garage.");
