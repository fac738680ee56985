using System.Globalization;
using InspectLog.App.Reports;
using InspectLog.Journal.Backups;

namespace InspectLog.App.Backups;

/// <summary>What backups say to people. Pure.</summary>
internal static class BackupWords
{
    /// <summary>What a backup holds, and what was copied this time.</summary>
    public static string Of(BackupOutcome outcome) =>
        $"{Files(outcome.Files)}, {Megabytes(outcome.Bytes)}; copied this time: {outcome.Copied.ToString(CultureInfo.InvariantCulture)}, {Megabytes(outcome.CopiedBytes)}";

    /// <summary>Whether the private keys are in it; null where there are none.</summary>
    public static string? Keys(BackupOutcome outcome) =>
        outcome.HasKeys ? "The private keys are in it: keep it where nobody else gets at it."
        : outcome.LeavesKeysOut ? "Left out: the private keys of seals and certificates (--with-keys takes them along). The recovery sheet brings the key of the seals back."
        : null;

    /// <summary>A number of files.</summary>
    public static string Files(int count) => Phrases.Count(count, "file");

    /// <summary>When, for people.</summary>
    public static string Moment(DateTimeOffset time) => time.UtcDateTime.ToString("yyyy-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture);

    private static string Megabytes(long bytes) => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.0} MB");
}
