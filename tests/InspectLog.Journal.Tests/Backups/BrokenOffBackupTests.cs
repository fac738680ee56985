using InspectLog.Journal.Backups;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Backups;

/// <summary>Backups that are broken off: by a disk that fails or is full at any act, and by a kill.</summary>
public sealed class BrokenOffBackupTests : IDisposable
{
    private readonly TempFolder _folder = new();

    private string Data => _folder.At("garage");

    private string To => _folder.At("backup");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("{")]
    [InlineData("""[{"From":"../kept.txt","To":""}]""")]
    [InlineData("""[{"From":"backup.json","To":"../kept.txt"}]""")]
    public void List_that_is_damaged_or_leads_elsewhere_is_not_followed(string list)
    {
        SomeBackup.Grow(Data, 1);
        SomeBackup.Run(Data, To);
        File.WriteAllText(_folder.At("kept.txt"), "not of the backup");
        File.WriteAllText(Path.Combine(To, "switch.json"), list);

        Assert.Contains("Back up into another folder", Assert.Throws<IOException>(() => SomeBackup.Run(Data, To)).Message, StringComparison.Ordinal);

        Assert.Equal("not of the backup", File.ReadAllText(_folder.At("kept.txt")));
        Assert.True(File.Exists(Path.Combine(To, "backup.json")));
    }

    [Theory]
    [InlineData(FaultyDisk.NoSpace, false)]
    [InlineData(FaultyDisk.InputOutputError, true)]
    public void Disk_that_is_full_or_fails_at_any_act_leaves_a_backup_that_is_whole(int error, bool forGood)
    {
        SomeBackup.Grow(Data, 2);
        SomeBackup.Run(Data, To);
        var earlier = SomeBackup.Restored(To);
        SomeBackup.Grow(Data, 2, seed: 1);
        var newer = SomeBackup.Files(Data);
        for (var act = 1; ; act++)
        {
            Copy(To, _folder.At("tried"));
            var disk = forGood ? new FaultyDisk().ArmForGood(act, 0.5) : new FaultyDisk().Arm(act, error);
            var failed = Xunit.Record.Exception(() => SomeBackup.Run(Data, _folder.At("tried"), disk));
            if (failed is null)
            {
                Assert.True(act > 20);
                break;
            }

            Assert.IsType<IOException>(failed);
            Assert.True(forGood || failed.Message.Contains("is full", StringComparison.Ordinal), failed.Message);
            var there = SomeBackup.Restored(_folder.At("tried"));
            Assert.True(there.SequenceEqual(earlier) || there.SequenceEqual(newer), $"after act {act}");
            SomeBackup.Run(Data, _folder.At("tried"));
            Assert.Equal(newer, SomeBackup.Restored(_folder.At("tried")));
            Directory.Delete(_folder.At("tried"), recursive: true);
        }
    }

    [Fact]
    [Trait("Takes", "long")]
    public async Task Twenty_kills_leave_a_backup_that_is_whole_and_the_next_run_completes_it()
    {
        const int Photos = 150;
        SomeBackup.Grow(Data, 2);
        SomeBackup.Run(Data, To);
        SomeBackup.Grow(Data, Photos, seed: 1);
        var random = new Random(20261201);
        for (var kill = 0; kill < 20; kill++)
        {
            await KillAfterAsync(random.Next(Photos + 10));
            Assert.NotEmpty(SomeBackup.Restored(To));
            if (kill % 5 == 4)
            {
                SomeBackup.Grow(Data, Photos / 3, seed: kill + 2);
            }
        }

        var outcome = SomeBackup.Run(Data, To);

        Assert.True(outcome.IsWhole);
        Assert.Equal(SomeBackup.Files(Data), SomeBackup.Restored(To));
    }

    [Fact]
    public void Backup_that_is_stopped_leaves_the_earlier_one_and_nothing_else()
    {
        SomeBackup.Grow(Data, 2);
        SomeBackup.Run(Data, To);
        var earlier = SomeBackup.Restored(To);
        SomeBackup.Grow(Data, 3, seed: 1);
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.Throws<OperationCanceledException>(() => new Backup(Data, To, Some.Clock(), "InspectLog").Run(stop: stop.Token));

        Assert.Equal(earlier, SomeBackup.Restored(To));
        Assert.False(Directory.Exists(_folder.At("backup", "incoming")));
    }

    private async Task KillAfterAsync(int lines)
    {
        using var process = OtherProcess.Start("back-up-until-killed", _folder.Path);
        for (var n = 0; n < lines && await process.StandardOutput.ReadLineAsync(Stop) is not null; n++)
        {
            // As far as it was to get.
        }

        process.Kill();
        await process.WaitForExitAsync(Stop);
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            var place = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(place)!);
            File.Copy(file, place);
        }
    }
}
