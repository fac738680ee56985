using InspectLog.App.Ui;
using InspectLog.Journal.Backups;

namespace InspectLog.App.Backups;

/// <summary>What the garage says of backups, where there is something to say. Pure.</summary>
public static class BackupReminder
{
    /// <summary>Entries from which on a record is worth a backup.</summary>
    public const int WorthOne = 20;

    /// <summary>What is to be said, in sentences; none where all is well.</summary>
    /// <param name="last">How the last one went.</param>
    /// <param name="settings">What is wanted.</param>
    /// <param name="entries">How many entries the garage has.</param>
    /// <param name="now">The time here.</param>
    public static IReadOnlyList<string> Of(LastBackup last, BackupSettings settings, int entries, DateTimeOffset now) =>
    [
        .. last.Failure is { } failure ? [$"The last backup failed: {failure}"] : Array.Empty<string>(),
        .. last.Problems.Count > 0 ? [$"The last backup is not whole: {last.Problems[0]}"] : Array.Empty<string>(),
        .. Age(last, settings, entries, now) is { } age ? [age] : Array.Empty<string>(),
    ];

    private static string? Age(LastBackup last, BackupSettings settings, int entries, DateTimeOffset now) => last.Done switch
    {
        null when entries >= WorthOne => "There is no backup yet: what is recorded is on this disk alone.",
        { } done when now - done > TimeSpan.FromDays(settings.RemindAfterDays) =>
            $"The last backup is of {Times.Date(done.ToOffset(now.Offset))}: what came since is on this disk alone.",
        _ => null,
    };
}

/// <summary>Whether this garage is worth a reminder: one that is looked at only, or invented, is not.</summary>
/// <param name="IsWanted">Whether it is.</param>
public sealed record RemindsOfBackups(bool IsWanted);
