using System.Diagnostics;
using System.Security.Cryptography;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>What the operating system really does: locks, failing syncs and full disks.</summary>
public sealed class OperatingSystemTests : IDisposable
{
    private const string Strace = "/usr/bin/strace";

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Second_process_on_the_same_folder_is_refused_until_the_first_has_ended()
    {
        using (var garage = Garage.Open(_folder.Path, TimeProvider.System))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle());
        }

        using var process = OtherProcess.Start("append-until-killed", _folder.Path);
        Assert.Equal(AppendUntilKilled.Opened, await process.StandardOutput.ReadLineAsync(Cancelled));
        var refusal = Assert.Throws<DataFolderInUseException>(() => Garage.Open(_folder.Path, TimeProvider.System));
        process.Kill();
        await process.WaitForExitAsync(Cancelled);

        Assert.Contains(_folder.Path, refusal.Message, StringComparison.Ordinal);
        using var again = Garage.Open(_folder.Path, TimeProvider.System);
        Assert.Contains(again.Vehicles(), vehicle => vehicle.Name == "Marigold");
    }

    /// <summary>The kernel's answer to fsync on the journal is replaced by an error. The runtime's own flush would not
    /// notice (10.0.12): this is the test that the program asks the system itself.</summary>
    [Fact]
    public async Task Sync_that_the_system_fails_is_not_acknowledged()
    {
        NeedsStrace();
        string id;
        using (var garage = Garage.Open(_folder.Path, TimeProvider.System))
        {
            id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        }

        var journal = _folder.At("vehicles", id, "journal.jsonl");
        var said = await OtherProcess.Run(
            "append-once", _folder.Path,
            Strace, "-f", "-o", "/dev/null", "-P", journal, "-e", "trace=fsync", "-e", "inject=fsync:error=EIO");

        var lines = said.TrimEnd('\n').Split('\n');
        Assert.StartsWith("refused: Writing the journal of Marigold failed (fsync: ", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("refused: ", lines[1], StringComparison.Ordinal);
        Assert.Equal("problems: 1", lines[2]);

        // The same without the fault, so that the test cannot pass for another reason.
        said = await OtherProcess.Run("append-once", _folder.Path);
        Assert.Matches(@"^kept \d+\nkept \d+\nproblems: 0\n$", said);
    }

    [Fact]
    public async Task Journal_is_read_from_the_disk_itself_at_the_start()
    {
        NeedsStrace();
        using (var garage = Garage.Open(_folder.Path, TimeProvider.System))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle());
        }

        var trace = _folder.At("trace");
        await OtherProcess.Run(
            "append-once", _folder.Path,
            Strace, "-f", "-y", "-o", trace, "-e", "trace=fadvise64");

        var asked = (await File.ReadAllLinesAsync(trace, Cancelled))
            .Where(line => line.Contains("journal.jsonl", StringComparison.Ordinal) && line.Contains("POSIX_FADV_DONTNEED", StringComparison.Ordinal));
        Assert.EndsWith(" = 0", Assert.Single(asked), StringComparison.Ordinal);
    }

    [Fact]
    public void Full_disk_refuses_what_does_not_fit_and_keeps_what_was_acknowledged()
    {
        using var disk = SmallDisk.Mount(_folder.At("small"), kilobytes: 1024);
        var keptBytes = new List<Entries.MediaFile>();
        var notes = 0L;
        string id;
        using (var garage = Garage.Open(disk.Path, TimeProvider.System))
        {
            id = garage.AddVehicle(Some.Technician, Some.Vehicle());
            var refusal = Assert.Throws<JournalReadOnlyException>(() =>
            {
                for (var n = 0; n < 100; n++)
                {
                    keptBytes.Add(garage.Media.Keep(RandomNumberGenerator.GetBytes(50_000), "audio/wav"));
                    notes = garage.Note(id, new string('n', 3000)).NextSequence - 1;
                }
            });

            Assert.StartsWith("The disk is full.", refusal.Message, StringComparison.Ordinal);
            Assert.True(Assert.Single(garage.Problems, problem => problem.ReadOnly).Message.Length > 0);
            Assert.Throws<JournalReadOnlyException>(() => garage.Media.Keep(RandomNumberGenerator.GetBytes(50_000), "audio/wav"));
            Assert.Equal(notes, garage.Entries(id).Count);
            Assert.Equal("Marigold", Assert.Single(garage.Vehicles()).Name);
        }

        using (var full = Garage.Open(disk.Path, TimeProvider.System))
        {
            Assert.Equal(notes, full.Entries(id).Count(entry => entry.Kind != "tail-set-aside"));
            Assert.All(keptBytes, file => Assert.Equal(MediaCondition.Whole, full.Media.Check(file)));
        }

        File.Delete(Path.Combine(disk.Path, "media", keptBytes[0].Sha256[..2], keptBytes[0].Sha256));
        using var again = Garage.Open(disk.Path, TimeProvider.System);
        Assert.DoesNotContain(again.Problems, problem => problem.ReadOnly);
        Assert.True(again.Note(id, "room again").NextSequence > notes);
    }

    private static void NeedsStrace()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "strace is a Linux program.");
        Assert.True(File.Exists(Strace), "This test needs strace: apt-get install strace");
    }

    private static CancellationToken Cancelled => TestContext.Current.CancellationToken;

    /// <summary>A small file system in memory, as a disk that can be filled. Only root may mount one; FaultTests fills
    /// a pretended disk whoever runs the tests.</summary>
    private sealed class SmallDisk(string path) : IDisposable
    {
        public string Path { get; } = path;

        public static SmallDisk Mount(string path, int kilobytes)
        {
            Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess, "Only root can mount a small disk.");
            Directory.CreateDirectory(path);
            Run("mount", "-t", "tmpfs", "-o", $"size={kilobytes}k", "tmpfs", path);
            return new SmallDisk(path);
        }

        public void Dispose() => Run("umount", Path);

        private static void Run(string program, params string[] arguments)
        {
            using var process = Process.Start(program, arguments);
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"{program} ended with {process.ExitCode}");
        }
    }
}
