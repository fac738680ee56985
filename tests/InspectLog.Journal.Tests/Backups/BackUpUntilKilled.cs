using InspectLog.Journal.Backups;

namespace InspectLog.Journal.Tests.Backups;

/// <summary>The process that is killed while it backs up: it says a line after each file.</summary>
internal static class BackUpUntilKilled
{
    public static int Run(string folder)
    {
        new Backup(Path.Combine(folder, "garage"), Path.Combine(folder, "backup"), TimeProvider.System, "InspectLog").Run(progress: new Said());
        Console.WriteLine("done");
        Thread.Sleep(Timeout.Infinite);
        return 0;
    }

    private sealed class Said : IProgress<BackupProgress>
    {
        public void Report(BackupProgress value) => Console.WriteLine(value.Done);
    }
}
