using System.Security.Cryptography;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Backups;

/// <summary>Makes a data folder of a backup: in a folder that is empty or not there yet, under another name until it is whole.
/// Every file is read back.</summary>
public sealed class Restore
{
    private readonly BackupFolder _from;
    private readonly string _data;
    private readonly IDurable _durable;

    /// <summary>A restoring.</summary>
    /// <param name="from">The folder of the backup; nothing in it is written.</param>
    /// <param name="dataFolder">The data folder to be.</param>
    public Restore(string from, string dataFolder)
        : this(from, dataFolder, new Durable())
    {
    }

    internal Restore(string from, string dataFolder, IDurable durable)
    {
        _from = new(Path.TrimEndingDirectorySeparator(Path.GetFullPath(from)), durable);
        _data = Path.TrimEndingDirectorySeparator(Path.GetFullPath(dataFolder));
        _durable = durable;
    }

    private string Making => _data + ".restoring";

    /// <summary>Says of which backup it is made.</summary>
    private string Mark => Path.Combine(Making, ".of");

    /// <summary>Restores. What an earlier try that was broken off had done already is not done again.</summary>
    /// <param name="progress">Is told how far it is.</param>
    /// <param name="stop">Gives it up.</param>
    /// <exception cref="BackupRefusedException">There is no backup, or the data folder holds something.</exception>
    /// <exception cref="IOException">Something could not be read or written.</exception>
    public RestoreOutcome Run(IProgress<BackupProgress>? progress = null, CancellationToken stop = default)
    {
        var manifest = ReadManifest();
        if (File.Exists(_data) || (Directory.Exists(_data) && Directory.EnumerateFileSystemEntries(_data).Any()))
        {
            throw new BackupRefusedException($"{_data} holds something already. A backup is restored only into a folder that is empty or not there yet.");
        }

        var problems = new List<string>();
        var (done, of) = (0L, manifest.Files.Sum(file => file.Bytes));
        try
        {
            Begin(manifest);
            foreach (var file in manifest.Files)
            {
                stop.ThrowIfCancellationRequested();
                problems.AddRange(Copied(file) is { } problem ? [problem] : Array.Empty<string>());
                progress?.Report(new(done += file.Bytes, of));
            }

            TakePlace();
        }
        catch (IOException full) when (LatchWords.IsDiskFull(full))
        {
            throw new IOException($"The disk of {_data} is full. Free some space and restore again: it goes on where it was. The backup is untouched.", full);
        }
        catch (UnauthorizedAccessException denied)
        {
            throw new IOException($"The backup could not be restored: {denied.Message}", denied);
        }

        return new(manifest, problems);
    }

    /// <summary>Goes on with what an earlier try has made of this very backup; of another one, nothing stays.</summary>
    private void Begin(BackupManifest manifest)
    {
        var id = Convert.ToHexStringLower(SHA256.HashData(manifest.Write()));
        if (Directory.Exists(Making) && (!File.Exists(Mark) || File.ReadAllText(Mark) != id))
        {
            Directory.Delete(Making, recursive: true);
        }

        Directory.CreateDirectory(Making);
        File.WriteAllText(Mark, id);
    }

    private BackupManifest ReadManifest()
    {
        try
        {
            return _from.Manifest()
                ?? throw new BackupRefusedException($"There is no backup in {_from.Root}: it has no list of its files ({BackupManifest.FileName}), or none was ever completed.");
        }
        catch (FormatException damage)
        {
            throw new BackupRefusedException($"The list of the backup in {_from.Root} is damaged: {damage.Message}. The journals and photos beside it are plain files: look at them with inspectlog verify, and copy them by hand.");
        }
    }

    /// <summary>Copies a file; gives what is wrong with it in the backup, or null. One that is damaged is copied all the same: a
    /// damaged journal still has its sound entries.</summary>
    private string? Copied(BackedUpFile file)
    {
        if (_from.PlaceOf(file.Path) is not { } place)
        {
            return $"{file.Path} is missing in the backup.";
        }

        var sha256 = BackupFolder.HashAfresh(place);
        var into = Path.Combine(Making, file.Path.Replace('/', Path.DirectorySeparatorChar));
        if (!File.Exists(into) || BackupFolder.HashAfresh(into) != sha256)
        {
            Copy(place, into, sha256);
        }

        return sha256 == file.Sha256 ? null : $"{file.Path} of the backup is damaged, and restored as it is.";
    }

    private void Copy(string place, string into, string sha256)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(into)!);
        using (var from = File.OpenRead(place))
        using (var to = new FileStream(into, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            from.CopyTo(to);
            to.Flush();
            _durable.Sync(to.SafeFileHandle);
        }

        if (BackupFolder.HashAfresh(into) != sha256)
        {
            throw new IOException($"The disk of {_data} did not keep what was written: what was read back is something else. Use another disk.");
        }
    }

    private void TakePlace()
    {
        File.Delete(Mark);
        foreach (var folder in Directory.EnumerateDirectories(Making, "*", SearchOption.AllDirectories).Prepend(Making))
        {
            _durable.SyncFolder(folder);
        }

        if (Directory.Exists(_data))
        {
            Directory.Delete(_data);
        }

        Directory.Move(Making, _data);
        _durable.SyncFolder(Path.GetDirectoryName(_data)!);
    }
}

/// <summary>What came of restoring.</summary>
/// <param name="Backup">What the backup holds.</param>
/// <param name="Problems">What is missing or damaged in it, each in a sentence; none where all is as it was.</param>
public sealed record RestoreOutcome(BackupManifest Backup, IReadOnlyList<string> Problems);
