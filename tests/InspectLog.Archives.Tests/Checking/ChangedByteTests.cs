using InspectLog.Archives.Making;
using InspectLog.Archives.Tests.Support;
using InspectLog.Archives.Zip;

namespace InspectLog.Archives.Tests.Checking;

/// <summary>Whatever byte of an archive is changed, it is found.</summary>
public sealed class ChangedByteTests : IDisposable
{
    private readonly TempFolder _garage = new();
    private readonly TempFolder _out = new();
    private readonly string _vehicle;

    public ChangedByteTests() => _vehicle = SomeGarage.Make(_garage.Path);

    public void Dispose()
    {
        _garage.Dispose();
        _out.Dispose();
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Changed_byte_of_a_zip_is_found_in_every_header_and_at_a_thousand_places() =>
        Assert.Empty(await UnfoundAsync(ArchiveProfiles.Buyer, (at, length, isHeader) => isHeader || at % (length / 1000) == 0));

    [Theory]
    [InlineData("everything")]
    [InlineData("buyer")]
    [Trait("Takes", "long")]
    public async Task Every_single_byte_of_a_zip_counts(string profile) =>
        Assert.Empty(await UnfoundAsync(ArchiveProfiles.Find(profile)!, (_, _, _) => true));

    [Fact]
    public async Task Zip_that_is_cut_or_has_something_added_is_found_wherever_that_is()
    {
        var zip = await File.ReadAllBytesAsync(await SomeArchive.ZipAsync(_garage.Path, _vehicle, _out.Path, stop: Stop), Stop);

        for (var at = 0; at < zip.Length; at += 397)
        {
            Assert.NotEmpty(Faults(zip[..at]));
            Assert.NotEmpty(Faults([.. zip[..at], 0, .. zip[at..]]));
        }

        Assert.NotEmpty(Faults([.. zip, 0]));
    }

    [Fact]
    public async Task Every_file_of_a_folder_that_is_changed_missing_or_added_is_named()
    {
        var archive = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, ArchiveProfiles.Buyer, Stop);
        foreach (var (path, bytes) in SomeArchive.Files(archive))
        {
            var place = Path.Combine(archive, path);
            foreach (var at in new[] { 0, bytes.Length / 2, bytes.Length - 1 })
            {
                var changed = (byte[])bytes.Clone();
                changed[at] ^= 1;
                await File.WriteAllBytesAsync(place, changed, Stop);
                Assert.Contains(SomeArchive.Checked(archive).Faults, fault => fault.Path == path || path == "tagmanifest-sha256.txt");
            }

            File.Delete(place);
            Assert.Contains(SomeArchive.Checked(archive).Faults, fault => fault.Path == path && fault.Words.Contains("is missing", StringComparison.Ordinal));
            await File.WriteAllBytesAsync(place, bytes, Stop);
            await File.WriteAllBytesAsync(place + "2", bytes, Stop);
            Assert.NotEmpty(SomeArchive.Checked(archive).Faults);
            File.Delete(place + "2");
        }

        Assert.Empty(SomeArchive.Checked(archive).Faults);
    }

    [Fact]
    public async Task Zip_that_was_packed_anew_says_to_unpack_it_and_the_folder_is_intact()
    {
        var folder = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.At("in"), stop: Stop);
        var zip = _out.At("again.zip");
        await System.IO.Compression.ZipFile.CreateFromDirectoryAsync(_out.At("in"), zip, Stop);

        using var tree = ZipTree.Of(zip);
        var faults = SomeArchive.Faults(tree);
        Assert.Contains("unpack it and verify the folder", Assert.Single(faults).Words, StringComparison.Ordinal);
        Assert.True(SomeArchive.Checked(folder).IsIntact);
    }

    [Fact]
    public async Task Body_or_photo_taken_out_by_somebody_else_is_not_passed_as_withheld()
    {
        var folder = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop);
        var journal = Path.Combine(folder, "data", "journal.jsonl");
        var lines = await File.ReadAllLinesAsync(journal, Stop);
        lines[^3] = System.Text.Encoding.UTF8.GetString(InspectLog.Journal.Record.JournalLines.WithoutBody(System.Text.Encoding.UTF8.GetBytes(lines[^3])));
        await File.WriteAllTextAsync(journal, string.Join('\n', lines) + "\n", Stop);
        File.Delete(Directory.GetFiles(Path.Combine(folder, "data", "media"))[0]);
        ForgedBag.MakeAnew(folder);

        var faults = SomeArchive.Checked(folder).Faults.Select(fault => fault.Words).ToList();

        Assert.Contains(faults, words => words.Contains("nothing says that it was withheld", StringComparison.Ordinal));
        Assert.Contains(faults, words => words.Contains("lists other entries as withheld", StringComparison.Ordinal));
    }

    [Fact]
    public async Task File_that_nothing_names_is_found_though_the_manifest_names_it()
    {
        var folder = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop);
        await File.WriteAllTextAsync(Path.Combine(folder, "data", "extra.html"), "<script>", Stop);
        ForgedBag.MakeAnew(folder);

        Assert.Contains(SomeArchive.Checked(folder).Faults, fault => fault.Path == "data/extra.html" && fault.Words.Contains("nothing in the journal names it", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Archive_of_a_later_version_is_not_guessed_at()
    {
        var folder = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop);
        var info = Path.Combine(folder, "bag-info.txt");
        await File.WriteAllTextAsync(info, (await File.ReadAllTextAsync(info, Stop)).Replace("Archive-Version: 1", "Archive-Version: 2", StringComparison.Ordinal), Stop);
        ForgedBag.MakeAnew(folder);

        Assert.Contains(SomeArchive.Checked(folder).Faults, fault => fault.Words.Contains("version 2 of the archive, which is not known here", StringComparison.Ordinal));
    }

    /// <summary>Places at which one changed bit is not found.</summary>
    private async Task<List<int>> UnfoundAsync(ArchiveProfile profile, Func<int, int, bool, bool> isTried)
    {
        var zip = await File.ReadAllBytesAsync(await SomeArchive.ZipAsync(_garage.Path, _vehicle, _out.Path, profile, Stop), Stop);
        Assert.Empty(Faults(zip));
        var isHeader = HeadersOf(zip);
        var tried = Enumerable.Range(0, zip.Length).Where(at => isTried(at, zip.Length, isHeader[at])).ToList();
        Assert.True(tried.Count > 1000);
        var unfound = new List<int>();
        foreach (var at in tried)
        {
            zip[at] ^= (byte)(1 << (at % 8));
            if (Faults(zip).Count == 0)
            {
                unfound.Add(at);
            }

            zip[at] ^= (byte)(1 << (at % 8));
        }

        return unfound;
    }

    /// <summary>Which bytes of a ZIP are those of no file: all that stands between the files, and after them.</summary>
    private static bool[] HeadersOf(byte[] zip)
    {
        var isHeader = Enumerable.Repeat(true, zip.Length).ToArray();
        for (var at = 0; BitConverter.ToUInt32(zip, at) == 0x04034b50;)
        {
            var begin = at + 30 + BitConverter.ToUInt16(zip, at + 26) + BitConverter.ToUInt16(zip, at + 28);
            at = begin + BitConverter.ToInt32(zip, at + 18);
            Array.Fill(isHeader, false, begin, at - begin);
        }

        return isHeader;
    }

    private static IReadOnlyList<Archives.BagIt.BagFault> Faults(byte[] zip)
    {
        using var tree = ZipTree.Of(new MemoryStream(zip));
        return SomeArchive.Faults(tree);
    }
}
