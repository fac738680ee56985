namespace InspectLog.Journal.Backups;

/// <summary>How far a backup or a restoring is.</summary>
/// <param name="Done">Bytes that were looked at or copied.</param>
/// <param name="Of">Bytes there are.</param>
public readonly record struct BackupProgress(long Done, long Of);

/// <summary>What came of a backup.</summary>
/// <param name="Time">When it was completed.</param>
/// <param name="Files">How many files it holds.</param>
/// <param name="Bytes">Their bytes together.</param>
/// <param name="Copied">How many were copied this time.</param>
/// <param name="CopiedBytes">Their bytes together.</param>
public sealed record BackupOutcome(DateTimeOffset Time, int Files, long Bytes, int Copied, long CopiedBytes)
{
    /// <summary>What of the data folder is damaged or cannot be read, and so not in it as it should be, each in a sentence.</summary>
    public IReadOnlyList<string> Problems { get; init; } = [];

    /// <summary>Files of the backup that were damaged and are made good.</summary>
    public IReadOnlyList<string> Repaired { get; init; } = [];

    /// <summary>How many of its files were read back this time: all that were copied, and of the others all or a tenth.</summary>
    public int ReadBack { get; init; }

    /// <summary>What was erased in the data folder since and was taken out of the backup, in files.</summary>
    public int Erased { get; init; }

    /// <summary>Whether the keys are in it.</summary>
    public bool HasKeys { get; init; }

    /// <summary>Whether there are keys, and they are not in it.</summary>
    public bool LeavesKeysOut { get; init; }

    /// <summary>Whether all there is is in it.</summary>
    public bool IsWhole => Problems.Count == 0;
}

/// <summary>No backup is made, or none restored: the message says why and what to do. Nothing was changed.</summary>
public sealed class BackupRefusedException(string message) : Exception(message);
