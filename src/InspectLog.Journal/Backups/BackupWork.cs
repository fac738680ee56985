using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Backups;

/// <summary>Takes file after file into a backup. What fits already stays; what does not is copied and read back.</summary>
internal sealed class BackupWork(string from, BackupFolder folder, BackupList list, IProgress<BackupProgress>? progress, CancellationToken stop)
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
        var place = folder.PlaceOf(file.Path);
        if (place is null || new FileInfo(place).Length != file.Bytes || BackupFolder.HashAfresh(place) != file.Sha256)
        {
            if (place is not null && IsDamage(file, place))
            {
                _repaired.Add($"{file.Path} of the backup was damaged and is made good.");
            }

            Copy(file, open);
        }

        _files[file.Path] = file;
        progress?.Report(new(_done += file.Bytes, Math.Max(list.Bytes, _done)));
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
