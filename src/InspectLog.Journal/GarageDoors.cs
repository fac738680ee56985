using InspectLog.Journal.Index;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <content>How a data folder is opened.</content>
public sealed partial class Garage
{
    private Garage(
        DataFolder folder,
        TimeProvider time,
        IDurable durable,
        Func<SheetStore, IEntryRules>? rules,
        Func<SheetStore, IEntryWording>? wording,
        FileStream? @lock,
        IProgress<GarageOpening>? progress)
    {
        _folder = folder;
        _time = time;
        _durable = durable;
        _lock = @lock;
        _latches = new WriteLatches(IsLookedAtOnly ? LookedAtOnly : null);
        var erasure = EndErasure(folder, durable, IsLookedAtOnly);
        var media = new MediaStore(folder.Media, durable, _latches.Media);
        Media = media;
        Sheets = new SheetStore(folder.Sheets, durable, _latches.Sheets);
        _rules = rules?.Invoke(Sheets) ?? new NoEntryRules();
        var recovery = new Recovery(folder, time, isAllowedToWrite: !IsLookedAtOnly);
        if (!IsLookedAtOnly)
        {
            media.RemoveUnfinished();
            Sheets.RemoveUnfinished();
            recovery.CloseToOthers();
            recovery.SetUnfinishedVehiclesAside();
        }

        _workshop = new(new JournalFile(folder.Workshop, durable, _latches.Workshop), WorkshopState.Empty, (state, entry) => state.Apply(entry), time, cache: _cache);
        recovery.Recover(_workshop, "workshop", "the workshop", vehicleId: null);
        var ids = VehicleFolders();
        foreach (var (id, journal) in ids.Zip(JournalReading.Read(ids, OpenVehicle, progress)))
        {
            _vehicles[id] = journal;
            recovery.Recover(journal, id, journal.Now.State.Name, vehicleId: id);
            Remember(WithheldMediaList.In(folder.Vehicle(id)));
        }

        _index = new GarageIndex(IsLookedAtOnly ? null : folder.Index, wording?.Invoke(Sheets) ?? new PlainWording(), JournalsForIndex, progress);
        _foundAtOpening = erasure is null ? recovery.Found : [erasure, .. recovery.Found];
        KeepNoted(_index.Lost);
        _losses = FindLosses();
        NoteVehicles();
    }

    /// <summary>Whether the folder is only looked at: nothing in it is ever written.</summary>
    public bool IsLookedAtOnly => _lock is null;

    private static GarageProblem LookedAtOnly => new(
        ReadOnly: true,
        "This data folder was opened to be looked at only (--read-only). Start InspectLog on it without that to work in it.");

    /// <summary>Opens a data folder to look at it only, as on a medium that cannot be written: no lock is taken and nothing
    /// is written, not even an index. Every append is refused.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="time">The clock.</param>
    /// <param name="progress">Is told how far it is; may be called by several threads at once.</param>
    /// <param name="wording">What entries say to people, for search; null takes them as they stand in the journal.</param>
    /// <exception cref="DirectoryNotFoundException">There is no data folder.</exception>
    /// <exception cref="IOException">The folder cannot be read.</exception>
    public static Garage OpenToLook(
        string folder,
        TimeProvider time,
        IProgress<GarageOpening>? progress = null,
        Func<SheetStore, IEntryWording>? wording = null)
    {
        var places = new DataFolder(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        if (!Directory.Exists(places.Vehicles) && !File.Exists(places.Workshop))
        {
            throw new DirectoryNotFoundException($"There is no data folder at {folder}: it has neither vehicles nor a workshop's journal.");
        }

        try
        {
            return new Garage(places, time, new Durable(), rules: null, wording, @lock: null, progress);
        }
        catch (Exception cause) when (cause is UnauthorizedAccessException or NotSupportedException)
        {
            throw new IOException($"The folder {places.Root} cannot be read: {cause.Message}", cause);
        }
    }

    /// <summary>Opens a data folder, creating it when missing, and takes its lock for the life of the object.
    /// Torn last lines are set aside and noted; an index that does not match the journals is made again.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="time">Clock and local offset of the entries.</param>
    /// <param name="progress">Is told how far it is; may be called by several threads at once.</param>
    /// <param name="rules">What may be recorded, made from the sheets kept in the folder; null lets everything in.</param>
    /// <param name="wording">What entries say to people, for search, made from the sheets kept in the folder; null takes
    /// them as they stand in the journal.</param>
    /// <exception cref="DataFolderInUseException">Another process has it open.</exception>
    /// <exception cref="IOException">The folder cannot be read or written.</exception>
    public static Garage Open(
        string folder,
        TimeProvider time,
        IProgress<GarageOpening>? progress = null,
        Func<SheetStore, IEntryRules>? rules = null,
        Func<SheetStore, IEntryWording>? wording = null) =>
        Open(folder, time, new Durable(), progress, rules, wording);

    internal static Garage Open(
        string folder,
        TimeProvider time,
        IDurable durable,
        IProgress<GarageOpening>? progress = null,
        Func<SheetStore, IEntryRules>? rules = null,
        Func<SheetStore, IEntryWording>? wording = null)
    {
        var places = new DataFolder(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        FileStream? @lock = null;
        try
        {
            places.CreateRoot(durable);
            @lock = places.TakeLock();
            places.CreateParts(durable);
            return new Garage(places, time, durable, rules, wording, @lock, progress);
        }
        catch (Exception cause) when (cause is UnauthorizedAccessException or NotSupportedException)
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

    private IReadOnlyList<string> VehicleFolders() => !Directory.Exists(_folder.Vehicles) ? [] :
    [
        .. Directory.EnumerateDirectories(_folder.Vehicles)
            .Select(folder => Path.GetFileName(folder))
            .Where(VehicleIds.IsId)
            .Order(StringComparer.Ordinal),
    ];
}
