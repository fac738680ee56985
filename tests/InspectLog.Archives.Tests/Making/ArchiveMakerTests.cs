using System.Text;
using InspectLog.Archives.Making;
using InspectLog.Archives.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Tests.Making;

public sealed class ArchiveMakerTests : IDisposable
{
    private readonly TempFolder _garage = new();
    private readonly TempFolder _out = new();
    private readonly string _vehicle;

    public ArchiveMakerTests() => _vehicle = SomeGarage.Make(_garage.Path);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        _garage.Dispose();
        _out.Dispose();
    }

    [Fact]
    public async Task Everything_is_the_journal_byte_for_byte_with_all_it_names()
    {
        var archive = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop);

        var files = SomeArchive.Files(archive);
        Assert.Equal("marigold-2026-11-25", Path.GetFileName(archive));
        Assert.Equal(await File.ReadAllBytesAsync(_garage.At("vehicles", _vehicle, "journal.jsonl"), Stop), files["data/journal.jsonl"]);
        Assert.Equal(5, files.Keys.Count(path => path.StartsWith("data/media/", StringComparison.Ordinal)));
        Assert.Equal(SomeGarage.SheetText, Encoding.UTF8.GetString(files.Single(file => file.Key.StartsWith("data/sheets/", StringComparison.Ordinal)).Value));
        Assert.Contains("data/reports/2026-11-25-inspection-4.html", files.Keys);
        Assert.DoesNotContain("data/withheld.json", files.Keys);
        Assert.Empty(SomeArchive.Checked(archive).Faults);
    }

    [Fact]
    public async Task Manifests_are_checked_by_the_systems_own_sha256sum()
    {
        var archive = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, ArchiveProfiles.Buyer, Stop);

        var run = await Outside.RunAsync("sha256sum", archive, "-c", "--strict", "manifest-sha256.txt", "tagmanifest-sha256.txt");

        Assert.Equal(0, run.ExitCode);
        Assert.DoesNotContain("FAILED", run.Out, StringComparison.Ordinal);
        Assert.Equal(SomeArchive.Files(archive).Count - 1, run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public async Task Zip_holds_the_same_bytes_as_the_folder_and_other_tools_read_it()
    {
        var folder = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop);
        var zip = await SomeArchive.ZipAsync(_garage.Path, _vehicle, _out.At("zipped"), stop: Stop);

        await System.IO.Compression.ZipFile.ExtractToDirectoryAsync(zip, _out.At("unpacked"), Stop);

        Assert.Equal(SomeArchive.Files(folder), SomeArchive.Files(_out.At("unpacked", Path.GetFileName(folder))));
    }

    [Fact]
    public async Task Bag_is_read_back_by_a_reader_that_shares_no_code()
    {
        var archive = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, ArchiveProfiles.Buyer, Stop);

        Assert.Empty(IndependentBagReader.Faults(archive));
    }

    [Fact]
    public async Task Name_that_is_taken_is_not_overwritten()
    {
        var first = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop);
        var second = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop);
        var zips = new[] { await SomeArchive.ZipAsync(_garage.Path, _vehicle, _out.Path, stop: Stop), await SomeArchive.ZipAsync(_garage.Path, _vehicle, _out.Path, stop: Stop) };

        Assert.Equal("marigold-2026-11-25-2", Path.GetFileName(second));
        Assert.Equal(["marigold-2026-11-25.zip", "marigold-2026-11-25-2.zip"], zips.Select(Path.GetFileName));
        Assert.Equal(SomeArchive.Files(first), SomeArchive.Files(second));
    }

    [Fact]
    public async Task Nothing_half_made_is_left_wherever_it_is_stopped()
    {
        for (var writes = 0; ; writes++)
        {
            var (folder, zip) = (Stopping(writes, name => new FolderTarget(_out.Path, name)), Stopping(writes, name => new ZipTarget(_out.Path, name, default)));
            if (await folder is { } made)
            {
                Assert.True(writes > 10);
                Assert.Empty(SomeArchive.Checked(made).Faults);
                break;
            }

            Assert.Null(await zip);
            Assert.Empty(Directory.GetFileSystemEntries(_out.Path));
        }
    }

    [Fact]
    public async Task Missing_or_damaged_photo_is_named_and_no_archive_is_made()
    {
        var photo = Directory.GetFiles(_garage.At("media"), "*", SearchOption.AllDirectories)[0];
        var bytes = await File.ReadAllBytesAsync(photo, Stop);
        await File.WriteAllBytesAsync(photo, [.. bytes[..^1], 7], Stop);

        var damaged = await Assert.ThrowsAsync<ArchiveRefusedException>(() => SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop));
        File.Delete(photo);
        var missing = await Assert.ThrowsAsync<ArchiveRefusedException>(() => SomeArchive.ZipAsync(_garage.Path, _vehicle, _out.Path, stop: Stop));

        Assert.All([damaged.Message, missing.Message], message => Assert.Contains(Path.GetFileName(photo), message, StringComparison.Ordinal));
        Assert.Empty(Directory.GetFileSystemEntries(_out.Path));
    }

    [Fact]
    public async Task Missing_sheet_or_damaged_journal_is_refused_in_words()
    {
        File.Delete(Directory.GetFiles(_garage.At("sheets"), "*.json")[0]);
        var sheet = await Assert.ThrowsAsync<ArchiveRefusedException>(() => SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop));
        var journal = _garage.At("vehicles", _vehicle, "journal.jsonl");
        var text = await File.ReadAllTextAsync(journal, Stop);
        await File.WriteAllTextAsync(journal, text.Replace(SomeGarage.OpenNote, "Rotor fine", StringComparison.Ordinal), Stop);
        var damaged = await Assert.ThrowsAsync<ArchiveRefusedException>(() => SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop));

        Assert.Contains("The check sheet invented, version 1", sheet.Message, StringComparison.Ordinal);
        Assert.Contains("is damaged at line 15", damaged.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Garage_may_be_in_use_and_what_comes_meanwhile_is_not_in_it()
    {
        using var garage = SomeGarage.Open(_garage.Path);
        var before = VehicleReading.Of(_garage.Path, _vehicle);
        garage.Append(_vehicle, SomeGarage.Technician, state => [new Journal.Entries.NoteWritten(state.Inspections[0].Number, null, "One more")]);

        var archive = await SomeArchive.MakeAsync(_garage.Path, _vehicle, null, (name, _) => new FolderTarget(_out.Path, name), Stop);
        var older = await new ArchiveMaker(new NothingReadable(), new NoCopies(), _ => null, SomeGarage.Clock).MakeAsync(
            before, ArchiveProfiles.Everything, (name, _) => new FolderTarget(_out.Path, name), stop: Stop);

        Assert.Equal(before.Entries.Count, SomeArchive.Checked(older).Facts!.Entries.Count);
        Assert.Equal(before.Entries.Count + 1, SomeArchive.Checked(archive).Facts!.Entries.Count);
    }

    /// <summary>Makes an archive that is stopped at a write; null where it was stopped.</summary>
    private async Task<string?> Stopping(int writes, Func<string, IBagTarget> begin)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        try
        {
            return await SomeArchive.MakeAsync(_garage.Path, _vehicle, null, (name, _) => new StoppedTarget(begin(name), writes, stop), stop.Token);
        }
        catch (OperationCanceledException)
        {
            return null;
        }
    }
}
