using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>Verifies journals by reading only, as <see cref="ReadOnlyScan"/> does.</summary>
public static class JournalVerifier
{
    /// <summary>Verifies a data folder, a vehicle's folder or a single journal file.</summary>
    /// <param name="path">Which.</param>
    /// <param name="isBuiltIn">Whether the program itself has the check sheet with a hash; null where it has none.</param>
    /// <exception cref="FileNotFoundException">There is no journal at the path.</exception>
    public static VerificationReport Verify(string path, Func<string, bool>? isBuiltIn = null)
    {
        var place = VerifiedPlace.Of(Path.GetFullPath(path));
        if (place.Journals.Count == 0)
        {
            throw new FileNotFoundException(
                $"There is no journal at {path}. Give a data folder, a vehicle's folder or a journal file.");
        }

        var read = new Dictionary<string, JournalFacts>(StringComparer.Ordinal);
        return new VerificationReport([.. place.Journals.Select(file => VerifyJournal(file, place.Folder, isBuiltIn ?? (_ => false), read))])
        {
            Folder = place.Folder is { } folder ? FolderCheck.Of(folder, read) : null,
        };
    }

    /// <summary>A journal that cannot be read is told of like a damaged one, so that the others get their results.</summary>
    private static JournalReport VerifyJournal(
        string file, DataFolder? folder, Func<string, bool> isBuiltIn, Dictionary<string, JournalFacts> read)
    {
        try
        {
            var facts = QuickScan.Of(ReadOnlyScan.Read(file)) ?? JournalFacts.Of(ReadOnlyScan.Of(file));
            read.Add(file, facts);
            return Report(file, folder, facts, isBuiltIn);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return new(file, 0, [], 0, "", [], Media: null) { Sheets = null, Unreadable = problem.Message };
        }
    }

    private static JournalReport Report(string file, DataFolder? folder, JournalFacts facts, Func<string, bool> isBuiltIn)
    {
        var chain = JournalChain.Of(facts);
        return new(
            file,
            facts.Hashes.Count,
            facts.Withheld,
            facts.Unread,
            facts.Hashes.LastHash,
            facts.Damage,
            (folder?.Media ?? FolderFor(file, found => found.Media)) is { } media ? CheckMedia(new MediaFiles(media), facts.Pointing, WithheldBeside(file)) : null)
        {
            Sheets = PinnedSheets.Check(facts.Pointing, FolderFor(file, found => found.Sheets), isBuiltIn),
            Seals = SealsReport.Of(SealFolder.Beside(file).Read(), chain, VehicleOf(file)),
            Chain = chain,
            Erasures = [.. facts.Tombstones.Select(Tombstone.Of)],
            Erased = facts.ErasedBy,
        };
    }

    /// <summary>The vehicle of a journal, by the folder it stands in; null where it does not stand in a data folder.</summary>
    private static string? VehicleOf(string file) => Path.GetDirectoryName(file) is { } own
        && Path.GetFileName(Path.GetDirectoryName(own)) == DataFolder.VehiclesName ? Path.GetFileName(own) : null;

    /// <summary>A folder beside the journal, or in the data folder that a vehicle's journal stands in; null when there
    /// is neither.</summary>
    private static string? FolderFor(string file, Func<DataFolder, string> which)
    {
        var own = Path.GetDirectoryName(file)!;
        var above = Path.GetDirectoryName(own);
        var root = Path.GetFileName(above) == DataFolder.VehiclesName ? Path.GetDirectoryName(above) : null;
        return new[] { own, root }.OfType<string>()
            .Select(folder => which(new DataFolder(folder)))
            .FirstOrDefault(Directory.Exists);
    }

    private static List<MediaReport> CheckMedia(MediaFiles files, IEnumerable<JournalEntry> entries, IReadOnlySet<MediaFile> withheld) =>
    [
        .. entries.SelectMany(entry => NamedMedia.Of(entry).Select(file => (entry.Sequence, File: file)))
            .DistinctBy(named => named.File)
            .AsParallel().AsOrdered() // each is read through and hashed
            .Select(named => new MediaReport(named.Sequence, named.File!, ConditionOf(named.File!, files, withheld))),
    ];

    private static MediaCondition ConditionOf(MediaFile file, MediaFiles files, IReadOnlySet<MediaFile> withheld)
    {
        try
        {
            return files.Check(file) is var found && found == MediaCondition.Missing && withheld.Contains(file) ? MediaCondition.Withheld : found;
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return MediaCondition.Damaged; // whatever it holds, nobody can see or hear it
        }
    }

    private static HashSet<MediaFile> WithheldBeside(string journal) =>
        [.. WithheldMediaList.In(Path.GetDirectoryName(journal)!).Select(one => one.File)];
}
