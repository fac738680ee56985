using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>What there is to verify at a path.</summary>
/// <param name="Journals">The journal files, that of the workshop first.</param>
/// <param name="Folder">The data folder, where the path is one; null otherwise.</param>
internal sealed record VerifiedPlace(IReadOnlyList<string> Journals, DataFolder? Folder)
{
    /// <summary>Looks what a path is.</summary>
    /// <param name="path">A data folder, a vehicle's folder or a journal file; a full path.</param>
    /// <exception cref="IOException">The folder cannot be read.</exception>
    public static VerifiedPlace Of(string path)
    {
        var own = Path.Combine(path, DataFolder.JournalName);
        return File.Exists(path) ? new([path], Folder: null)
            : File.Exists(own) ? new([own], Folder: null)
            : OfFolder(new DataFolder(path));
    }

    private static VerifiedPlace OfFolder(DataFolder folder)
    {
        var vehicles = Directory.Exists(folder.Vehicles)
            ? Directory.GetDirectories(folder.Vehicles).Select(Path.GetFileName).OfType<string>().Where(VehicleIds.IsId)
            : [];
        return new(
            [
                .. new[] { folder.Workshop }.Where(File.Exists),
                .. vehicles.Order(StringComparer.Ordinal).Select(folder.Journal),
            ],
            folder);
    }
}
