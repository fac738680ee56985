using InspectLog.Journal;
using InspectLog.Journal.Backups;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Tests.Commands;

/// <summary>Backups on the command line.</summary>
public sealed class BackupVerbTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public BackupVerbTests()
    {
        using var garage = Garage.Open(Data, TimeProvider.System);
        garage.AddVehicle("Tess Okafor", new VehicleAdded("Marigold", "", null), new NoteWritten(0, null, "One"));
    }

    private string Data => At("garage");

    private string To => At("backup");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Garage_is_backed_up_while_it_is_open_restored_elsewhere_and_verifies()
    {
        using var garage = Garage.Open(Data, TimeProvider.System);
        using (SealKey key = new SealKeyFile(Data).ReadOrMake(null))
        {
            Assert.NotNull(key);
        }

        var backup = await CommandRun.OfAsync("backup", "--data", Data, "--to", To);
        var again = await CommandRun.OfAsync("backup", "--data", Data, "--to", To);
        var restore = await CommandRun.OfAsync("restore", "--from", To, "--data", At("back"));
        var verify = await CommandRun.OfAsync("verify", At("back"));

        Assert.Equal((0, "", 0, 0, 0), (backup.ExitCode, backup.Error, again.ExitCode, restore.ExitCode, verify.ExitCode));
        Assert.Contains("Left out: the private keys", backup.Out, StringComparison.Ordinal);
        Assert.Contains("copied this time: 0,", again.Out, StringComparison.Ordinal);
        Assert.Contains("There were no private keys in the backup", restore.Out, StringComparison.Ordinal);
        Assert.Equal(Path.GetFullPath(To), new BackupRecord(Data).Last.To);
        Assert.Null(new BackupRecord(At("back")).Last.Done);
    }

    [Fact]
    public async Task Keys_are_taken_along_where_that_is_asked()
    {
        new SealKeyFile(Data).ReadOrMake(null).Dispose();

        var backup = await CommandRun.OfAsync("backup", "--data", Data, "--to", To, "--with-keys");
        await CommandRun.OfAsync("restore", "--from", To, "--data", At("back"));

        Assert.Contains("The private keys are in it", backup.Out, StringComparison.Ordinal);
        Assert.True(new SealKeyFile(At("back")).Exists);
    }

    [Fact]
    public async Task What_cannot_be_backed_up_or_restored_is_said_with_its_reason()
    {
        await CommandRun.OfAsync("backup", "--data", Data, "--to", To);
        var journal = At("garage", "vehicles", "marigold", "journal.jsonl");
        await File.WriteAllTextAsync(journal, (await File.ReadAllLinesAsync(journal, TestContext.Current.CancellationToken))[0] + "\n", TestContext.Current.CancellationToken);

        var cut = await CommandRun.OfAsync("backup", "--data", Data, "--to", To);
        var full = await CommandRun.OfAsync("restore", "--from", To, "--data", Data);
        var none = await CommandRun.OfAsync("restore", "--from", Data, "--data", At("back"));

        Assert.Equal((1, 1, 1), (cut.ExitCode, full.ExitCode, none.ExitCode));
        Assert.Contains("it was cut since", cut.Error, StringComparison.Ordinal);
        Assert.Contains("holds something already", full.Error, StringComparison.Ordinal);
        Assert.Contains("There is no backup in", none.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Damage_is_told_and_answered_with_no()
    {
        var journal = At("garage", "vehicles", "marigold", "journal.jsonl");
        await File.WriteAllTextAsync(journal, (await File.ReadAllTextAsync(journal, TestContext.Current.CancellationToken)).Replace("One", "Two", StringComparison.Ordinal), TestContext.Current.CancellationToken);

        var backup = await CommandRun.OfAsync("backup", "--data", Data, "--to", To);

        Assert.Equal(1, backup.ExitCode);
        Assert.Contains("NOT WHOLE: vehicles/marigold/journal.jsonl is damaged at line 2", backup.Out, StringComparison.Ordinal);
    }

    private string At(params string[] parts) => Path.Combine([_folder.FullName, .. parts]);
}
