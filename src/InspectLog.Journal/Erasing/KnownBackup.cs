using InspectLog.Journal.Backups;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Erasing;

/// <summary>Whether a backup holds what is erased.</summary>
public enum BackupHolding
{
    /// <summary>It is not there at the moment, as a stick that is not plugged in; it may hold it.</summary>
    NotReachable,

    /// <summary>It holds it.</summary>
    Holds,

    /// <summary>It does not.</summary>
    HoldsNothing,
}

/// <summary>A folder that this data folder is known to have been backed up to.</summary>
/// <param name="Folder">The folder.</param>
/// <param name="Holding">Whether what is erased is in it.</param>
public sealed record KnownBackup(string Folder, BackupHolding Holding)
{
    /// <summary>What is to be done about it, in a sentence.</summary>
    public string WhatToDo => Holding switch
    {
        BackupHolding.Holds => $"The backup in {Folder} holds it until the next backup into that folder, which takes it out there too: back up again now.",
        BackupHolding.NotReachable => $"The backup in {Folder} is not reachable now and may hold it: plug the disk in and back up into that folder again, which takes it out there too, or destroy that backup.",
        _ => $"The backup in {Folder} does not hold it.",
    };

    /// <summary>The backups that a data folder knows of.</summary>
    internal static IReadOnlyList<KnownBackup> Of(string dataFolder, IReadOnlyList<(string Path, IReadOnlyList<long> Bodies)> journals, IReadOnlyList<string> media)
    {
        var record = new BackupRecord(dataFolder);
        return
        [
            .. new[] { record.Settings.Folder, record.Last.To }.OfType<string>()
                .Select(folder => Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)))
                .Distinct(StringComparer.Ordinal)
                .Select(folder => new KnownBackup(folder, Look(folder, journals, media))),
        ];
    }

    private static BackupHolding Look(string folder, IReadOnlyList<(string Path, IReadOnlyList<long> Bodies)> journals, IReadOnlyList<string> media)
    {
        try
        {
            return !Backup.IsIn(folder) ? BackupHolding.NotReachable
                : media.Any(sha256 => new MediaFiles(Path.Combine(folder, "media")).PathOf(sha256) is not null) || journals.Any(journal => Holds(folder, journal.Path, journal.Bodies))
                    ? BackupHolding.Holds
                    : BackupHolding.HoldsNothing;
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return BackupHolding.NotReachable;
        }
    }

    private static bool Holds(string folder, string journal, IReadOnlyList<long> bodies)
    {
        var file = Path.Combine(folder, journal.Replace('/', Path.DirectorySeparatorChar));
        return File.Exists(file) && JournalScan.Of(ReadOnlyScan.Read(file)).Entries is var there
            && bodies.Any(sequence => there.At(sequence) is { IsWithheld: false });
    }
}
