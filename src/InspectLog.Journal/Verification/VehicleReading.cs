using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>The record of one vehicle at one moment, for a program that only looks: no lock is taken and nothing is written,
/// so that it works on a folder in use. What follows in the journal meanwhile is not in it.</summary>
public sealed class VehicleReading
{
    private readonly string _journal;
    private readonly MediaFiles _media;

    private VehicleReading(DataFolder folder, string id, JournalScan scan)
    {
        Id = id;
        DataFolder = folder.Root;
        Entries = scan.Entries;
        Broken = scan.Broken is { IsUnfinished: false } broken ? broken : null;
        SoundBytes = scan.SoundBytes;
        Withheld = WithheldMediaList.In(folder.Vehicle(id));
        Sheets = SheetStore.ForReading(folder.Sheets);
        _journal = folder.Journal(id);
        _media = new MediaFiles(folder.Media);
    }

    /// <summary>The vehicle's id.</summary>
    public string Id { get; }

    /// <summary>The data folder.</summary>
    public string DataFolder { get; }

    /// <summary>Its entries, oldest first.</summary>
    public ImmutableList<JournalEntry> Entries { get; }

    /// <summary>The first line that is damaged; null when none is. The remains of a write that never finished are none.</summary>
    public BrokenLine? Broken { get; }

    /// <summary>Length of the journal's sound part, bytes.</summary>
    public long SoundBytes { get; }

    /// <summary>What this copy of the journal came without.</summary>
    public IReadOnlyList<WithheldMedia> Withheld { get; }

    /// <summary>The check sheets kept in the data folder. Nothing can be kept by way of it.</summary>
    public SheetStore Sheets { get; }

    /// <summary>Ids of the vehicles in a data folder.</summary>
    /// <param name="dataFolder">The folder.</param>
    /// <exception cref="DirectoryNotFoundException">It is no data folder.</exception>
    public static IReadOnlyList<string> VehiclesIn(string dataFolder)
    {
        var folder = new DataFolder(Path.GetFullPath(dataFolder));
        return Directory.Exists(folder.Vehicles)
            ? [.. Directory.GetDirectories(folder.Vehicles).Select(Path.GetFileName).OfType<string>().Where(VehicleIds.IsId).Order(StringComparer.Ordinal)]
            : throw new DirectoryNotFoundException($"{dataFolder} is no data folder: it has no vehicles.");
    }

    /// <summary>Reads a vehicle's record.</summary>
    /// <param name="dataFolder">The data folder.</param>
    /// <param name="vehicleId">The vehicle.</param>
    /// <exception cref="UnknownVehicleException">There is no such vehicle.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static VehicleReading Of(string dataFolder, string vehicleId)
    {
        var folder = new DataFolder(Path.GetFullPath(dataFolder));
        return VehicleIds.IsId(vehicleId) && File.Exists(folder.Journal(vehicleId))
            ? new(folder, vehicleId, ReadOnlyScan.Of(folder.Journal(vehicleId)))
            : throw new UnknownVehicleException(vehicleId);
    }

    /// <summary>The lines of the sound part, one after the other, without their ends.</summary>
    /// <exception cref="IOException">They cannot be read.</exception>
    public IEnumerable<ReadOnlyMemory<byte>> Lines()
    {
        using var file = new FileStream(_journal, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var lines = new LineReader(file);
        for (var left = Entries.Count; left > 0; left--)
        {
            yield return lines.Next();
        }
    }

    /// <summary>Whether a recording or photo is there; never of what is no name.</summary>
    public bool Has(string sha256) => _media.PathOf(sha256) is not null;

    /// <summary>Opens a recording or photo; null when it is not there, or when the name is none.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public Task<Stream?> OpenAsync(string sha256, CancellationToken stop) => Task.FromResult(_media.Open(sha256));

    /// <summary>Reads a recording or photo through and compares it with its name and length.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public MediaCondition Check(MediaFile file) => _media.Check(file);
}
