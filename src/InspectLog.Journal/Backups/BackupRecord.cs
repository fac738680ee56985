using System.Text.Json;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Backups;

/// <summary>What the workshop wants of backups.</summary>
/// <param name="Folder">Where they go; null where none was chosen.</param>
/// <param name="Nightly">Whether one is made each night.</param>
/// <param name="RemindAfterDays">After how many days without one the garage says so; 1 to 365.</param>
public sealed record BackupSettings(string? Folder, bool Nightly, int RemindAfterDays)
{
    /// <summary>What holds until something else is chosen.</summary>
    public static BackupSettings Usual { get; } = new(null, false, 14);
}

/// <summary>How backups went.</summary>
/// <param name="Done">When the last one was completed; null where none was.</param>
/// <param name="To">Where that one is.</param>
/// <param name="Problems">What was damaged in the data folder then.</param>
/// <param name="Tried">When one was last begun by night.</param>
/// <param name="Failure">Why the last one that was begun failed, in words; null where it did not.</param>
public sealed record LastBackup(DateTimeOffset? Done, string? To, IReadOnlyList<string> Problems, DateTimeOffset? Tried, string? Failure)
{
    /// <summary>How many files the last one that was completed holds; null where that was not noted.</summary>
    public int? Files { get; init; }

    /// <summary>How many of them were read back then.</summary>
    public int? ReadBack { get; init; }

    /// <summary>None was ever made.</summary>
    public static LastBackup None { get; } = new(null, null, [], null, null);
}

/// <summary>Two small files of the data folder: what is wanted of backups, and how the last went. They are about this computer
/// and are not backed up.</summary>
/// <param name="dataFolder">The data folder.</param>
public sealed class BackupRecord(string dataFolder)
{
    internal const string SettingsFile = "backup-settings.json";
    internal const string LastFile = "last-backup.json";

    private static readonly JsonSerializerOptions Format = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase, RespectNullableAnnotations = true };

    /// <summary>What is wanted; the usual where nothing was chosen, or the file cannot be read.</summary>
    public BackupSettings Settings => Read<BackupSettings>(SettingsFile) ?? BackupSettings.Usual;

    /// <summary>How the last one went.</summary>
    public LastBackup Last => Read<LastBackup>(LastFile) ?? LastBackup.None;

    /// <summary>Keeps what is wanted.</summary>
    /// <exception cref="IOException">It could not be kept.</exception>
    public void Keep(BackupSettings settings) => Write(SettingsFile, settings);

    /// <summary>Notes a backup that was completed.</summary>
    /// <exception cref="IOException">It could not be noted.</exception>
    public void Completed(BackupOutcome outcome, string to) =>
        Write(LastFile, Last with { Done = outcome.Time, To = Path.GetFullPath(to), Problems = outcome.Problems, Failure = null, Files = outcome.Files, ReadBack = outcome.ReadBack });

    /// <summary>Notes that one is begun by night.</summary>
    /// <exception cref="IOException">It could not be noted.</exception>
    public void Tried(DateTimeOffset time) => Write(LastFile, Last with { Tried = time });

    /// <summary>Notes one that failed.</summary>
    /// <exception cref="IOException">It could not be noted.</exception>
    public void Failed(string why) => Write(LastFile, Last with { Failure = why });

    private T? Read<T>(string name)
        where T : class
    {
        try
        {
            var path = Path.Combine(dataFolder, name);
            return File.Exists(path) ? JsonSerializer.Deserialize<T>(File.ReadAllBytes(path), Format) : null;
        }
        catch (Exception problem) when (DiskFailure.Is(problem) || problem is JsonException)
        {
            return null;
        }
    }

    private void Write<T>(string name, T value) =>
        DurableFiles.WriteWhole(Path.Combine(dataFolder, name), JsonSerializer.SerializeToUtf8Bytes(value, Format));
}
