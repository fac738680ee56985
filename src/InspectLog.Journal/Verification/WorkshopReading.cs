using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>What a workshop's journal says, for a program that only looks.</summary>
/// <param name="State">What its sound entries say.</param>
/// <param name="Broken">The first line that is not sound; null when all are.</param>
public sealed record WorkshopReading(WorkshopState State, BrokenLine? Broken)
{
    /// <summary>Reads the workshop's journal of a data folder, without a lock and without writing. A data folder that has
    /// none yet has an empty workshop.</summary>
    /// <param name="folder">The data folder.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder, or it is no data folder.</exception>
    /// <exception cref="IOException">The journal cannot be read.</exception>
    public static WorkshopReading Of(string folder)
    {
        var places = new DataFolder(Path.GetFullPath(folder));
        if (!Directory.Exists(places.Root))
        {
            throw new DirectoryNotFoundException($"There is no folder {folder}.");
        }

        if (File.Exists(places.Workshop))
        {
            var scan = ReadOnlyScan.Of(places.Workshop);
            return new(scan.Entries.Aggregate(WorkshopState.Empty, (state, entry) => state.Apply(entry)), scan.Broken);
        }

        return Directory.Exists(places.Vehicles)
            ? new(WorkshopState.Empty, null)
            : throw new DirectoryNotFoundException($"{folder} is no data folder: it has neither a workshop's journal nor vehicles.");
    }
}
