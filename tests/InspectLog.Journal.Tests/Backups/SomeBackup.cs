using InspectLog.Journal.Backups;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Backups;

/// <summary>A garage to be backed up, and what became of it in a backup.</summary>
internal static class SomeBackup
{
    /// <summary>Makes a garage of two vehicles with so many photos, or goes on with it.</summary>
    public static void Grow(string folder, int photos, int seed = 0)
    {
        using var garage = Garage.Open(folder, Some.Clock());
        if (garage.FindVehicle("marigold") is null)
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle());
            garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
            garage.Sheets.Keep("""{"invented":"sheet"}"""u8);
        }

        for (var n = 0; n < photos; n++)
        {
            var bytes = new byte[2000];
            new Random((seed * 10_000) + n).NextBytes(bytes);
            var photo = garage.Media.Keep(bytes, "image/jpeg");
            garage.Append(n % 2 == 0 ? "marigold" : "teasel", Some.Technician, _ => [new VehiclePictured(photo)]);
        }
    }

    public static BackupOutcome Run(string from, string to, bool withKeys = false, bool all = false) =>
        new Backup(from, to, Some.Clock(), "InspectLog 1.0").Run(withKeys, all, stop: TestContext.Current.CancellationToken);

    public static BackupOutcome Run(string from, string to, IDurable disk) =>
        new Backup(from, to, Some.Clock(), "InspectLog 1.0", disk).Run(stop: TestContext.Current.CancellationToken);

    /// <summary>All files of a data folder that a backup has to hold, with their bytes.</summary>
    public static SortedDictionary<string, string> Files(string folder) => new(
        Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
            .Where(file => file is not ("index.db" or "index-log.db" or "index.sha256" or "inspectlog.lock" or "last-backup.json" or "backup-settings.json") && !file.StartsWith("keys/", StringComparison.Ordinal))
            .ToDictionary(file => file, file => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(Path.Combine(folder, file))))),
        StringComparer.Ordinal);

    /// <summary>What a backup gives back.</summary>
    public static SortedDictionary<string, string> Restored(string backup)
    {
        using var folder = new TempFolder();
        Assert.Empty(new Restore(backup, folder.At("data")).Run(stop: TestContext.Current.CancellationToken).Problems);
        Assert.True(InspectLog.Journal.Verification.JournalVerifier.Verify(folder.At("data"), _ => true).IsIntact);
        return Files(folder.At("data"));
    }
}
