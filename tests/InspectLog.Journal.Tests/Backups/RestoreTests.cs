using InspectLog.Journal.Backups;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Backups;

public sealed class RestoreTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public RestoreTests()
    {
        SomeBackup.Grow(_folder.At("garage"), 4);
        SomeBackup.Run(_folder.At("garage"), From);
    }

    private string From => _folder.At("backup");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Empty_folder_takes_it_and_one_that_holds_something_does_not()
    {
        Directory.CreateDirectory(_folder.At("empty"));
        new Restore(From, _folder.At("empty")).Run(stop: Stop);
        Assert.Equal(SomeBackup.Files(_folder.At("garage")), SomeBackup.Files(_folder.At("empty")));

        var refused = Assert.Throws<BackupRefusedException>(() => new Restore(From, _folder.At("empty")).Run(stop: Stop));
        Assert.Contains("holds something already", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Restored_garage_opens_and_is_worked_in()
    {
        new Restore(From, _folder.At("back")).Run(stop: Stop);

        using var garage = Garage.Open(_folder.At("back"), Some.Clock());
        Assert.Empty(garage.Problems);
        garage.Note("marigold", "Gone on with");
    }

    [Fact]
    public void Restoring_that_was_broken_off_is_under_another_name_and_goes_on()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        var first = new StopAfter(3, stop);
        Assert.Throws<OperationCanceledException>(() => new Restore(From, _folder.At("back")).Run(first, stop.Token));
        Assert.False(Directory.Exists(_folder.At("back")));
        var there = Directory.GetFiles(_folder.At("back.restoring"), "*", SearchOption.AllDirectories);
        var written = there.ToDictionary(file => Path.GetRelativePath(_folder.At("back.restoring"), file), File.GetLastWriteTimeUtc);
        written.Remove(".of");
        Assert.Equal(3, written.Count);

        new Restore(From, _folder.At("back")).Run(stop: Stop);

        Assert.All(written, file => Assert.Equal(file.Value, File.GetLastWriteTimeUtc(_folder.At("back", file.Key))));
        Assert.Equal(SomeBackup.Files(_folder.At("garage")), SomeBackup.Files(_folder.At("back")));
    }

    [Fact]
    public void Restoring_of_another_backup_takes_nothing_over_from_the_one_that_was_broken_off()
    {
        SomeBackup.Grow(_folder.At("other"), 1, seed: 5);
        SomeBackup.Run(_folder.At("other"), _folder.At("backup-of-other"));
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        Assert.Throws<OperationCanceledException>(() => new Restore(From, _folder.At("back")).Run(new StopAfter(4, stop), stop.Token));

        new Restore(_folder.At("backup-of-other"), _folder.At("back")).Run(stop: Stop);

        Assert.Equal(SomeBackup.Files(_folder.At("other")), SomeBackup.Files(_folder.At("back")));
    }

    [Fact]
    public void Missing_file_is_told_and_the_rest_is_restored()
    {
        var photo = Directory.GetFiles(_folder.At("backup", "media"), "*", SearchOption.AllDirectories)[0];
        File.Delete(photo);

        var outcome = new Restore(From, _folder.At("back")).Run(stop: Stop);

        Assert.EndsWith($"{Path.GetFileName(photo)} is missing in the backup.", Assert.Single(outcome.Problems), StringComparison.Ordinal);
        Assert.Equal(outcome.Backup.Files.Count - 1, SomeBackup.Files(_folder.At("back")).Count);
    }

    [Theory]
    [InlineData(null, "There is no backup in")]
    [InlineData("{", "it cannot be read")]
    [InlineData("""{"version":2,"time":"2026-11-25T10:30:00Z","program":"","files":[]}""", "version 2")]
    [InlineData("""{"version":1,"time":"2026-11-25T10:30:00Z","program":"","files":[{"path":"../out","bytes":1,"sha256":""}]}""", "leads elsewhere")]
    public void List_that_is_missing_or_none_is_told(string? list, string said)
    {
        File.Delete(_folder.At("backup", "backup.json"));
        if (list is not null)
        {
            File.WriteAllText(_folder.At("backup", "backup.json"), list);
        }

        var refused = Assert.Throws<BackupRefusedException>(() => new Restore(From, _folder.At("back")).Run(stop: Stop));

        Assert.Contains(said, refused.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder.At("back.restoring")));
    }

    [Fact]
    public void List_of_the_backup_that_was_damaged_is_made_anew_by_the_next_one()
    {
        File.WriteAllText(_folder.At("backup", "backup.json"), "{");

        var outcome = SomeBackup.Run(_folder.At("garage"), From);

        Assert.Contains("made anew", Assert.Single(outcome.Repaired), StringComparison.Ordinal);
        Assert.Equal(SomeBackup.Files(_folder.At("garage")), SomeBackup.Restored(From));
    }

    private sealed class StopAfter(int files, CancellationTokenSource stop) : IProgress<BackupProgress>
    {
        private int _left = files;

        public void Report(BackupProgress value)
        {
            if (--_left == 0)
            {
                stop.Cancel();
            }
        }
    }
}
