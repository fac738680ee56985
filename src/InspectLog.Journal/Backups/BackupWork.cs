using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Backups;

/// <summary>Takes file after file into a backup. What fits already stays; what does not is copied and read back.</summary>
/// <param name="from">The data folder.</param>
/// <param name="folder">The backup.</param>
/// <param name="list">What is to be backed up.</param>
/// <param name="turn">Which part is read back of the files that were there before and never change; null for all.</param>
/// <param name="progress">Is told how far it is.</param>
/// <param name="stop">Gives it up.</param>
internal sealed class BackupWork(
    string from, BackupFolder folder, BackupList list, int? turn, IProgress<BackupProgress>? progress, CancellationToken stop)
{
    private readonly Dictionary<string, BackedUpFile> _before =
        (list.Before?.Files ?? []).DistinctBy(file => file.Path).ToDictionary(file => file.Path, StringComparer.Ordinal);
    private readonly Dictionary<string, BackedUpFile> _files = new(StringComparer.Ordinal);
    private readonly List<(string From, string To)> _staged = [];
    private readonly List<string> _problems = [];
    private readonly List<string> _repaired = list.ManifestProblem is { } problem ? [problem] : [];
    private long _done;

    public IEnumerable<BackedUpFile> Files => _files.Values;

    /// <summary>What was written aside, and where it belongs.</summary>
    public IReadOnlyList<(string From, string To)> Staged => _staged;

    public IReadOnlyList<string> Problems => _problems;

    public IReadOnlyList<string> Repaired => _repaired;

    /// <summary>How many files were read back.</summary>
    public int ReadBack { get; private set; }

    /// <summary>What the backup has and was erased in the data folder since: recordings and photos, and with them what was set
    /// aside and is not there any more.</summary>
    public IReadOnlyList<string> Erased =>
    [
        .. list.Journals.SelectMany(journal => journal.Erased).Distinct().Select(sha256 => $"media/{sha256[..2]}/{sha256}")
            .Concat(list.Journals.Any(journal => journal.IsErasedSince) ? _before.Keys.Where(IsPassing) : [])
            .Where(path => !_files.ContainsKey(path) && folder.PlaceOf(path) is not null),
    ];

    public int Copied { get; private set; }

    public long CopiedBytes { get; private set; }

    /// <summary>Takes a journal, as far as it was when it was looked at.</summary>
    public void Take(JournalToBackUp journal)
    {
        if (journal.Damage is { } damage)
        {
            _problems.Add(damage);
            Keep(journal.Path);
            return;
        }

        Take(new(journal.Path, journal.Bytes, journal.Sha256), () => new MemoryStream(ReadOnlyScan.Read(At(journal.Path)), 0, (int)journal.Bytes));
    }

    /// <summary>Takes another file.</summary>
    public void Take(string path)
    {
        try
        {
            var length = new FileInfo(At(path)).Length;
            Take(new(path, length, DataFiles.NamedBy(path) ?? BackupFolder.HashAfresh(At(path))), () => Read(At(path)));
        }
        catch (Exception gone) when (gone is FileNotFoundException or DirectoryNotFoundException)
        {
            // It was taken away since it was listed.
        }
        catch (InvalidDataException damage)
        {
            _problems.Add(damage.InnerException is { } cause ? $"{path} of the data folder cannot be read: {cause.Message}"
                : DataFiles.NamedBy(path) is null ? $"{path} changed while it was being copied. Back up again."
                : $"{path} of the data folder is damaged: its bytes are not those it is named by. {(IsWholeThere(path) ? "The backup has it whole: restore it from there." : "The backup is without it.")}");
            Keep(path);
        }
    }

    /// <summary>What the backup has and the data folder has not any more, keys that were not asked for among it, stays as it is.
    /// </summary>
    public void KeepWhatIsThere()
    {
        foreach (var path in _before.Keys.Where(path => DataFiles.IsKey(path) && !_files.ContainsKey(path)))
        {
            Keep(path);
        }
    }

    private void Take(BackedUpFile file, Func<Stream> open)
    {
        stop.ThrowIfCancellationRequested();
        var (place, before) = (folder.PlaceOf(file.Path), ReadBack);
        if (place is null || new FileInfo(place).Length != file.Bytes || (IsToBeRead(file) && BackupFolder.HashAfresh(place) != file.Sha256))
        {
            if (place is not null && IsDamage(file, place))
            {
                _repaired.Add($"{file.Path} of the backup was damaged and is made good.");
            }

            Copy(file, open);
            ReadBack = before + 1; // what is written is always read back
        }

        _files[file.Path] = file;
        progress?.Report(new(_done += file.Bytes, Math.Max(list.Bytes, _done)));
    }

    /// <summary>Whether a file that is there is read back: one that never changes only when it is its turn, or when the backup
    /// does not know it yet.</summary>
    private bool IsToBeRead(BackedUpFile file)
    {
        var isToBeRead = turn is not { } part || DataFiles.NamedBy(file.Path) is null || _before.GetValueOrDefault(file.Path) != file || BackupManifest.IsOfTurn(file, part);
        ReadBack += isToBeRead ? 1 : 0;
        return isToBeRead;
    }

    private void Copy(BackedUpFile file, Func<Stream> open)
    {
        using var content = open();
        var staged = folder.Add(content, file.Bytes, file.Sha256);
        if (DataFiles.NamedBy(file.Path) is not null)
        {
            folder.Place(staged, file.Path);
        }
        else
        {
            _staged.Add((staged, file.Path));
        }

        Copied++;
        CopiedBytes += file.Bytes;
    }

    /// <summary>Whether what is there is not what the backup put there; else the file has changed since.</summary>
    private bool IsDamage(BackedUpFile file, string place) =>
        DataFiles.NamedBy(file.Path) is not null || (_before.GetValueOrDefault(file.Path) is { } before && BackupFolder.HashAfresh(place) != before.Sha256);

    private bool IsWholeThere(string path) =>
        folder.PlaceOf(path) is { } place && BackupFolder.HashAfresh(place) == DataFiles.NamedBy(path);

    private static bool IsPassing(string path) =>
        path.StartsWith("set-aside/", StringComparison.Ordinal) || path.EndsWith("/" + Storage.WithheldMediaList.FileName, StringComparison.Ordinal);

    private void Keep(string path)
    {
        if (_before.GetValueOrDefault(path) is { } before)
        {
            _files[path] = before;
        }
    }

    private string At(string path) => Path.Combine(from, path.Replace('/', Path.DirectorySeparatorChar));

    private static FileStream Read(string path) =>
        new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, 1, FileOptions.SequentialScan);
}
