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

    /// <summary>How many of its files were read back.</summary>
    public static string ReadBack(int readBack, int files) => readBack >= files
        ? $"All {Files(files)} were read back."
        : $"Read back: what was new and a tenth of the rest, another one each time: {readBack.ToString(CultureInfo.InvariantCulture)} of {Files(files)}. inspectlog backup --all reads all of them.";

    /// <summary>What was taken out of it because it was erased here; null where nothing was.</summary>
    public static string? Erased(BackupOutcome outcome) => outcome.Erased == 0 ? null
        : $"Taken out of the backup, as it was erased here: {Files(outcome.Erased)}.";

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
