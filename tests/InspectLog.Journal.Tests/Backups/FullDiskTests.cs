using System.Diagnostics;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Backups;

/// <summary>A backup onto a disk that fills up, on a small file system of its own.</summary>
public sealed class FullDiskTests
{
    [Fact]
    public void Backup_that_does_not_fit_is_told_and_the_earlier_one_is_as_it_was()
    {
        Assert.SkipUnless(Environment.UserName == "root" && OperatingSystem.IsLinux(), "Mounting a small file system needs root.");
        using var folder = new TempFolder();
        var to = Directory.CreateDirectory(folder.At("small")).FullName;
        Run("mount", "-t", "tmpfs", "-o", "size=600k", "tmpfs", to);
        try
        {
            var backup = Path.Combine(to, "backup");
            SomeBackup.Grow(folder.At("garage"), 5);
            SomeBackup.Run(folder.At("garage"), backup);
            var earlier = SomeBackup.Restored(backup);
            SomeBackup.Grow(folder.At("garage"), 400, seed: 1);

            var failed = Assert.Throws<IOException>(() => SomeBackup.Run(folder.At("garage"), backup));

            Assert.Contains("is full. The earlier backup there is as good as it was", failed.Message, StringComparison.Ordinal);
            Assert.Equal(earlier, SomeBackup.Restored(backup));
            Run("mount", "-o", "remount,size=64m", to);
            SomeBackup.Run(folder.At("garage"), backup);
            Assert.Equal(SomeBackup.Files(folder.At("garage")), SomeBackup.Restored(backup));
        }
        finally
        {
            Run("umount", to);
        }
    }

    private static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(program, arguments);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
