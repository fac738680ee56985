using System.Security.Cryptography;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Backups;

/// <summary>Copies a data folder into another folder, so that it can be put back. Only what is not there with the right hash is
/// copied and read back; of what was there already a tenth is read, another one each time, or all. The data folder may be in use meanwhile: nothing in it is written.</summary>
public sealed class Backup
{
    private readonly string _from;
    private readonly TimeProvider _time;
    private readonly string _program;
    private readonly BackupFolder _folder;

    /// <summary>A backup of a data folder.</summary>
    /// <param name="dataFolder">The data folder.</param>
    /// <param name="to">The folder of the backup; made when missing.</param>
    /// <param name="time">The clock.</param>
    /// <param name="program">The program and its version, as the backup names it.</param>
    public Backup(string dataFolder, string to, TimeProvider time, string program)
        : this(dataFolder, to, time, program, new Durable())
    {
    }

    internal Backup(string dataFolder, string to, TimeProvider time, string program, IDurable durable)
    {
        _from = Path.TrimEndingDirectorySeparator(Path.GetFullPath(dataFolder));
        _folder = new(Path.TrimEndingDirectorySeparator(Path.GetFullPath(to)), durable);
        (_time, _program) = (time, program);
    }

    /// <summary>Whether a backup that was completed is in a folder.</summary>
    public static bool IsIn(string folder) => File.Exists(Path.Combine(folder, BackupManifest.FileName));

    /// <summary>Makes the backup, or brings the one that is there up to date.</summary>
    /// <param name="withKeys">Whether the keys of seals and certificates go into it. Those that are in it stay.</param>
    /// <param name="all">Whether all that is there is read back; else what is new and a tenth of the rest, in turn.</param>
    /// <param name="progress">Is told how far it is.</param>
    /// <param name="stop">Gives it up; what is there stays as good as it was.</param>
    /// <exception cref="BackupRefusedException">The folder is not fit, or a journal is not what was backed up before. Nothing was
    /// changed.</exception>
    /// <exception cref="IOException">Something could not be read or written; the earlier backup is as good as it was.</exception>
    public BackupOutcome Run(bool withKeys = false, bool all = false, IProgress<BackupProgress>? progress = null, CancellationToken stop = default)
    {
        ThrowIfUnfit();
        using var taken = _folder.Take();
        try
        {
            _folder.TidyUp();
            return Run(new BackupList(_from, _folder, withKeys), all, progress, stop);
        }
        catch (IOException full) when (LatchWords.IsDiskFull(full))
        {
            Clear();
            throw new IOException($"The disk of {_folder.Root} is full. The earlier backup there is as good as it was. Free some space and back up again: what was copied already is not copied again.", full);
        }
        catch (UnauthorizedAccessException denied)
        {
            Clear();
            throw new IOException($"The backup could not be made: {denied.Message}", denied);
        }
        catch
        {
            Clear();
            throw;
        }
    }

    private BackupOutcome Run(BackupList list, bool all, IProgress<BackupProgress>? progress, CancellationToken stop)
    {
        list.ThrowIfRefused();
        var turn = ((list.Before?.Turn ?? 0) + 1) % BackupManifest.Turns;
        var work = new BackupWork(_from, _folder, list, all ? null : turn, progress, stop);
        foreach (var path in list.Others.OrderByDescending(path => DataFiles.NamedBy(path) is not null).ThenBy(path => path, StringComparer.Ordinal))
        {
            work.Take(path);
        }

        foreach (var journal in list.Journals)
        {
            work.Take(journal);
        }

        work.KeepWhatIsThere();
        var (now, erased) = (_time.GetUtcNow(), work.Erased);
        var manifest = new BackupManifest(now, _program, [.. work.Files.OrderBy(file => file.Path, StringComparer.Ordinal)]) { Turn = turn };
        var bytes = manifest.Write();
        stop.ThrowIfCancellationRequested();
        using (var content = new MemoryStream(bytes))
        {
            var staged = _folder.Add(content, bytes.Length, Convert.ToHexStringLower(SHA256.HashData(bytes)));
            _folder.SwitchTo([.. work.Staged, (staged, BackupManifest.FileName), .. erased.Select(path => (path, BackupFolder.Away))]);
        }

        return new(now, manifest.Files.Count, manifest.Files.Sum(file => file.Bytes), work.Copied, work.CopiedBytes)
        {
            Problems = work.Problems,
            Repaired = work.Repaired,
            ReadBack = work.ReadBack,
            Erased = erased.Count,
            HasKeys = manifest.HasKeys,
            LeavesKeysOut = !manifest.HasKeys && DataFiles.Of(_from, withKeys: true).Any(DataFiles.IsKey),
        };
    }

    private void ThrowIfUnfit()
    {
        if (!Directory.Exists(new DataFolder(_from).Vehicles) && !File.Exists(new DataFolder(_from).Workshop))
        {
            throw new BackupRefusedException($"There is no data folder at {_from}: it has neither vehicles nor a workshop's journal.");
        }

        var (from, to) = (_from + Path.DirectorySeparatorChar, _folder.Root + Path.DirectorySeparatorChar);
        if (from.StartsWith(to, StringComparison.Ordinal) || to.StartsWith(from, StringComparison.Ordinal))
        {
            throw new BackupRefusedException("One of the two folders lies in the other. Choose a folder on another disk for the backup.");
        }

        if (File.Exists(_folder.Root) || !_folder.IsFit)
        {
            throw new BackupRefusedException($"{_folder.Root} holds something else than a backup. Choose an empty folder, or one that is not there yet.");
        }
    }

    private void Clear()
    {
        try
        {
            _folder.TidyUp();
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            // The first failure is the one that is told; the next backup clears it.
        }
    }
}
