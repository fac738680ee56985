using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>Verifies journals by reading only, as <see cref="ReadOnlyScan"/> does.</summary>
public static class JournalVerifier
{
    /// <summary>Verifies a data folder, a vehicle's folder or a single journal file.</summary>
    /// <param name="path">Which.</param>
    /// <exception cref="FileNotFoundException">There is no journal at the path.</exception>
    /// <exception cref="IOException">Something there cannot be read.</exception>
    public static VerificationReport Verify(string path)
    {
        var journals = JournalsAt(Path.GetFullPath(path));
        return journals.Count == 0
            ? throw new FileNotFoundException(
                $"There is no journal at {path}. Give a data folder, a vehicle's folder or a journal file.")
            : new VerificationReport([.. journals.Select(VerifyJournal)]);
    }

    private static List<string> JournalsAt(string path)
    {
        if (File.Exists(path))
        {
            return [path];
        }

        var own = Path.Combine(path, DataFolder.JournalName);
        if (File.Exists(own))
        {
            return [own];
        }

        var folder = new DataFolder(path);
        var vehicles = Directory.Exists(folder.Vehicles)
            ? Directory.GetDirectories(folder.Vehicles).Select(Path.GetFileName).OfType<string>().Where(VehicleIds.IsId)
            : [];
        return
        [
            .. new[] { folder.Workshop }.Where(File.Exists),
            .. vehicles.Order(StringComparer.Ordinal).Select(folder.Journal),
        ];
    }

    private static JournalReport VerifyJournal(string file)
    {
        var scan = ReadOnlyScan.Of(file);
        return new(
            file,
            scan.Entries.Count,
            scan.Entries.Count(entry => entry.IsWithheld),
            scan.Entries.Count(entry => entry.UnreadBody is not null),
            scan.Entries.IsEmpty ? "" : scan.Entries[^1].Hash,
            scan.Broken,
            MediaFolderFor(file) is { } media ? CheckMedia(new MediaFiles(media), scan.Entries) : null);
    }

    /// <summary>The media folder beside the journal, or the one of the data folder that a vehicle's journal stands
    /// in; null when there is neither.</summary>
    private static string? MediaFolderFor(string file)
    {
        var own = Path.GetDirectoryName(file)!;
        var above = Path.GetDirectoryName(own);
        var root = Path.GetFileName(above) == DataFolder.VehiclesName ? Path.GetDirectoryName(above) : null;
        return new[] { own, root }.OfType<string>()
            .Select(folder => new DataFolder(folder).Media)
            .FirstOrDefault(Directory.Exists);
    }

    private static List<MediaReport> CheckMedia(MediaFiles files, IEnumerable<JournalEntry> entries) =>
    [
        .. entries.Select(entry => (entry.Sequence, File: NamedBy(entry.Body)))
            .Where(named => named.File is not null)
            .DistinctBy(named => named.File)
            .Select(named => new MediaReport(named.Sequence, named.File!, files.Check(named.File!))),
    ];

    private static MediaFile? NamedBy(EntryBody? body) => body switch
    {
        RecordingKept recording => recording.Media,
        PhotoKept photo => photo.Media,
        VehiclePictured picture => picture.Media,
        _ => null,
    };
}
