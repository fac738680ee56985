using InspectLog.Journal.Backups;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests.Backups;

public sealed class BackupTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public BackupTests() => SomeBackup.Grow(Data, 6);

    private string Data => _folder.At("garage");

    private string To => _folder.At("backup");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Restored_garage_is_the_one_that_was_backed_up_byte_for_byte_and_verifies()
    {
        var outcome = SomeBackup.Run(Data, To);

        Assert.True(outcome.IsWhole);
        Assert.Equal(outcome.Files, outcome.Copied);
        Assert.Equal(SomeBackup.Files(Data), SomeBackup.Restored(To));
        Assert.True(JournalVerifier.Verify(To, _ => true).IsIntact);
    }

    [Fact]
    public void What_is_there_with_the_right_hash_is_not_copied_again()
    {
        SomeBackup.Run(Data, To);

        Assert.Equal(0, SomeBackup.Run(Data, To).Copied);
        SomeBackup.Grow(Data, 1, seed: 1);
        var outcome = SomeBackup.Run(Data, To);

        Assert.Equal(3, outcome.Copied); // the photo, its vehicle's journal and that of the workshop
        Assert.Equal(SomeBackup.Files(Data), SomeBackup.Restored(To));
    }

    [Fact]
    public void Garage_may_be_in_use_and_what_comes_meanwhile_is_in_the_next_one()
    {
        using var garage = Garage.Open(Data, Some.Clock());
        var before = garage.Entries("marigold").Count;
        var progress = new Told(() => garage.Note("marigold", "Meanwhile"));

        new Backup(Data, To, Some.Clock(), "InspectLog").Run(progress: progress, stop: TestContext.Current.CancellationToken);

        Assert.True(progress.Times > 5);
        Assert.Equal(before, VehicleReading.Of(To, "marigold").Entries.Count);
        Assert.True(JournalVerifier.Verify(To, _ => true).IsIntact);
        Assert.Equal(progress.Last.Of, progress.Last.Done);
    }

    [Theory]
    [InlineData("cut")]
    [InlineData("forked")]
    [InlineData("gone")]
    public void Journal_that_is_not_what_was_backed_up_is_refused_and_the_backup_stays(string how)
    {
        SomeBackup.Run(Data, To);
        var kept = SomeBackup.Restored(To);
        var journal = _folder.At("garage", "vehicles", "marigold", "journal.jsonl");
        switch (how)
        {
            case "cut":
                File.WriteAllText(journal, string.Join('\n', File.ReadAllLines(journal)[..^1]) + "\n");
                break;
            case "forked":
                SomeBackup.Grow(_folder.At("other"), 6);
                File.Copy(_folder.At("other", "vehicles", "marigold", "journal.jsonl"), journal, overwrite: true);
                break;
            default:
                Directory.Delete(Path.GetDirectoryName(journal)!, recursive: true);
                break;
        }

        var refused = Assert.Throws<BackupRefusedException>(() => SomeBackup.Run(Data, To));

        Assert.Contains("vehicles/marigold/journal.jsonl", refused.Message, StringComparison.Ordinal);
        Assert.Contains("into another folder", refused.Message, StringComparison.Ordinal);
        Assert.Equal(kept, SomeBackup.Restored(To));
    }

    [Fact]
    public void Erased_body_is_no_other_journal()
    {
        using (var garage = Garage.Open(Data, Some.Clock()))
        {
            garage.Append("marigold", Some.Technician, _ => [new PrivateFactsNoted("Ana", "", "")]);
        }

        SomeBackup.Run(Data, To);
        var journal = _folder.At("garage", "vehicles", "marigold", "journal.jsonl");
        var lines = File.ReadAllLines(journal);
        lines[^1] = System.Text.Encoding.UTF8.GetString(Journal.Record.JournalLines.WithoutBody(System.Text.Encoding.UTF8.GetBytes(lines[^1])));
        File.WriteAllText(journal, string.Join('\n', lines) + "\n");

        SomeBackup.Run(Data, To);

        Assert.DoesNotContain("Ana", File.ReadAllText(_folder.At("backup", "vehicles", "marigold", "journal.jsonl")), StringComparison.Ordinal);
    }

    [Fact]
    public void Damaged_file_of_the_backup_is_found_told_and_made_good()
    {
        SomeBackup.Run(Data, To);
        foreach (var file in new[] { Photo(To), _folder.At("backup", "vehicles", "teasel", "journal.jsonl"), _folder.At("backup", "workshop.jsonl") })
        {
            Spoil(file);
            Assert.Contains(new Restore(To, _folder.At("spoilt-" + Path.GetFileName(file))).Run(stop: TestContext.Current.CancellationToken).Problems, problem => problem.Contains("is damaged", StringComparison.Ordinal));

            var outcome = SomeBackup.Run(Data, To, all: true);

            Assert.Contains(Path.GetFileName(file), Assert.Single(outcome.Repaired), StringComparison.Ordinal);
            Assert.Equal(SomeBackup.Files(Data), SomeBackup.Restored(To));
        }
    }

    [Fact]
    public void What_is_there_is_read_back_by_tenths_in_turn_and_ten_runs_find_every_damage()
    {
        SomeBackup.Grow(Data, 60, seed: 3);
        var first = SomeBackup.Run(Data, To);
        Assert.Equal(first.Files, first.ReadBack);
        foreach (var photo in Directory.GetFiles(_folder.At("backup", "media"), "*", SearchOption.AllDirectories))
        {
            Spoil(photo);
        }

        var runs = Enumerable.Range(0, BackupManifest.Turns).Select(_ => SomeBackup.Run(Data, To)).ToList();

        Assert.All(runs, run => Assert.InRange(run.ReadBack, run.Files - 67, 40));
        Assert.Equal(66, runs.Sum(run => run.Repaired.Count));
        Assert.Equal(SomeBackup.Files(Data), SomeBackup.Restored(To));
        Assert.Equal(first.Files, SomeBackup.Run(Data, To, all: true).ReadBack);
    }

    [Fact]
    public void Damaged_journal_or_photo_of_the_garage_costs_itself_and_takes_nothing_from_the_backup()
    {
        SomeBackup.Run(Data, To);
        var kept = SomeBackup.Files(To).Where(file => file.Key.Contains("teasel", StringComparison.Ordinal));
        SomeBackup.Grow(Data, 4, seed: 2);
        Spoil(_folder.At("garage", "vehicles", "teasel", "journal.jsonl"));
        File.WriteAllBytes(NewPhoto(), new byte[7]);

        var outcome = SomeBackup.Run(Data, To);

        Assert.Contains(outcome.Problems, problem => problem.StartsWith("vehicles/teasel/journal.jsonl is damaged at line", StringComparison.Ordinal));
        Assert.Contains(outcome.Problems, problem => problem.Contains("The backup is without it", StringComparison.Ordinal));
        Assert.Equal(kept, SomeBackup.Files(To).Where(file => file.Key.Contains("teasel", StringComparison.Ordinal)));
        Assert.True(VehicleReading.Of(To, "marigold").Entries.Count > 5);
    }

    [Fact]
    public void Keys_are_left_out_unless_asked_for_and_stay_once_they_are_in_it()
    {
        Directory.CreateDirectory(_folder.At("garage", "keys"));
        File.WriteAllText(_folder.At("garage", "keys", "seal.pem"), "secret");

        var without = SomeBackup.Run(Data, To);
        Assert.Equal((true, false), (without.LeavesKeysOut, without.HasKeys));
        Assert.False(Directory.Exists(_folder.At("backup", "keys")));
        Assert.True(SomeBackup.Run(Data, To, withKeys: true).HasKeys);
        Assert.True(SomeBackup.Run(Data, To).HasKeys);

        new Restore(To, _folder.At("back")).Run(stop: TestContext.Current.CancellationToken);
        Assert.Equal("secret", File.ReadAllText(_folder.At("back", "keys", "seal.pem")));
    }

    [Fact]
    public void Folder_that_is_not_fit_is_refused()
    {
        Directory.CreateDirectory(_folder.At("full"));
        File.WriteAllText(_folder.At("full", "letter.txt"), "Dear Ana");

        Assert.Contains("holds something else", Refused(Data, _folder.At("full")), StringComparison.Ordinal);
        Assert.Contains("lies in the other", Refused(Data, _folder.At("garage", "backup")), StringComparison.Ordinal);
        Assert.Contains("lies in the other", Refused(Data, _folder.Path), StringComparison.Ordinal);
        Assert.Contains("no data folder", Refused(_folder.At("nothing"), To), StringComparison.Ordinal);
        SomeBackup.Run(Data, To);
        using var other = new FileStream(_folder.At("backup", "inspectlog-backup.lock"), FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        Assert.Contains("under way", Assert.Throws<IOException>(() => SomeBackup.Run(Data, To)).Message, StringComparison.Ordinal);
    }

    private static string Refused(string from, string to) => Assert.Throws<BackupRefusedException>(() => SomeBackup.Run(from, to)).Message;

    private static string Photo(string folder) => Directory.GetFiles(Path.Combine(folder, "media"), "*", SearchOption.AllDirectories).Order().First();

    private string NewPhoto() => Directory.GetFiles(_folder.At("garage", "media"), "*", SearchOption.AllDirectories)
        .First(file => !File.Exists(file.Replace(_folder.At("garage"), _folder.At("backup"), StringComparison.Ordinal)));

    private static void Spoil(string file)
    {
        var bytes = File.ReadAllBytes(file);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(file, bytes);
    }

    private sealed class Told(Action act) : IProgress<BackupProgress>
    {
        public int Times { get; private set; }

        public BackupProgress Last { get; private set; }

        public void Report(BackupProgress value)
        {
            (Times, Last) = (Times + 1, value);
            act();
        }
    }
}
