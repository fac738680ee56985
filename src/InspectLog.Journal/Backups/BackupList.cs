namespace InspectLog.Journal.Backups;

/// <summary>What is to be backed up, looked through before anything is written. The journals come first: what they name was
/// there before them, and so is found after them.</summary>
internal sealed class BackupList
{
    private readonly List<string> _refusals = [];

    public BackupList(string from, BackupFolder folder, bool withKeys)
    {
        Before = ReadManifest(folder, out var problem);
        ManifestProblem = problem;
        Journals = [.. JournalsOf(from).Select(path => JournalToBackUp.Of(path, Path.Combine(from, path), folder.PlaceOf(path)))];
        Others = [.. DataFiles.Of(from, withKeys).Where(path => !DataFiles.IsJournal(path))];
        _refusals.AddRange(Journals.Select(journal => journal.Refusal).OfType<string>());
        _refusals.AddRange((Before?.Files ?? [])
            .Where(file => DataFiles.IsJournal(file.Path) && !Journals.Any(journal => journal.Path == file.Path))
            .Select(file => $"{file.Path} is in the backup, and not in the data folder any more. Restore it from the backup, or back up into another folder."));
        Bytes = Journals.Sum(journal => journal.Bytes) + Others.Sum(path => Length(Path.Combine(from, path)));
    }

    /// <summary>The backup that is there; null where there is none.</summary>
    public BackupManifest? Before { get; }

    /// <summary>Why the list of the backup that is there cannot be read; null where it can.</summary>
    public string? ManifestProblem { get; }

    public IReadOnlyList<JournalToBackUp> Journals { get; }

    public IReadOnlyList<string> Others { get; }

    /// <summary>All there is to read.</summary>
    public long Bytes { get; }

    /// <summary>Refuses a data folder that cannot follow what was backed up before.</summary>
    /// <exception cref="BackupRefusedException">It cannot.</exception>
    public void ThrowIfRefused()
    {
        if (_refusals.Count > 0)
        {
            throw new BackupRefusedException($"Not backed up: the backup there stays as it was. {string.Join(" ", _refusals)}");
        }
    }

    /// <summary>That of the workshop first: it notes how far the others are, and they may have gone on since.</summary>
    private static IEnumerable<string> JournalsOf(string from) =>
        DataFiles.Of(from, withKeys: false).Where(DataFiles.IsJournal).OrderByDescending(path => path == DataFiles.Workshop);

    private static BackupManifest? ReadManifest(BackupFolder folder, out string? problem)
    {
        try
        {
            problem = null;
            return folder.Manifest();
        }
        catch (FormatException damage)
        {
            problem = $"The list of the backup was damaged ({damage.Message}) and is made anew.";
            return null;
        }
    }

    private static long Length(string path) => new FileInfo(path) is { Exists: true } file ? file.Length : 0;
}
