using System.IO.Compression;
using InspectLog.Archives.Tests.Support;
using InspectLog.Archives.Zip;

namespace InspectLog.Archives.Tests.Importing;

/// <summary>ZIPs made to do harm. Each is refused in words, and nothing of it is written anywhere.</summary>
public sealed class HostileZipTests
{
    public static TheoryData<string, string> Names => new()
    {
        { "../../outside.txt", "leads out of the archive" },
        { "a/../../outside.txt", "leads out of the archive" },
        { "/etc/passwd", "absolute path" },
        { "C:/Windows/x", "colon" },
        { "a\\..\\b", "backslash" },
        { "a/b//c", "folder without a name" },
        { "a/./b", "leads out of the archive" },
        { "nul.txt", "keep for a device" },
        { "a/b ", "point or space" },
        { "a\u0007b", "does not show" },
        { "x/abcdefghi/abcdefghi/abcdefghi" + "/abcdefghi" + "/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi/abcdefghi", "too long" },
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void Path_that_leads_elsewhere_is_refused(string name, string why) =>
        Refused(zip => zip.CreateEntry(name), why);

    [Fact]
    public void Same_name_twice_or_in_other_capitals_or_as_file_and_folder_is_refused()
    {
        Refused(zip => { zip.CreateEntry("a"); zip.CreateEntry("a"); }, "is there twice");
        Refused(zip => { zip.CreateEntry("data/a"); zip.CreateEntry("data/A"); }, "cannot be told from");
        Refused(zip => { zip.CreateEntry("data/\u00e9"); zip.CreateEntry("data/e\u0301"); }, "cannot be told from");
        Refused(zip => { zip.CreateEntry("x/a"); zip.CreateEntry("x/a/b"); zip.CreateEntry("y"); }, "a file and a folder at once");
    }

    [Fact]
    public void Link_is_refused() =>
        Refused(zip => zip.CreateEntry("link").ExternalAttributes = unchecked((int)0xA1FF0000), "is a link");

    [Fact]
    public void Bomb_is_refused_before_it_is_unpacked() => Refused(
        zip =>
        {
            using var zeros = zip.CreateEntry("zeros", CompressionLevel.SmallestSize).Open();
            zeros.Write(new byte[50_000_000]);
        },
        "200 times as large");

    [Fact]
    public void Too_many_files_are_refused() => Refused(
        zip =>
        {
            for (var n = 0; n < 30; n++)
            {
                zip.CreateEntry($"file-{n}");
            }
        },
        "lists more than 20 files",
        new ZipBounds(20, 1 << 30, 200));

    [Fact]
    public void Files_larger_than_allowed_are_refused() => Refused(
        zip =>
        {
            using var file = zip.CreateEntry("file", CompressionLevel.NoCompression).Open();
            file.Write(new byte[2000]);
        },
        "larger than they can be",
        new ZipBounds(20, 1000, 200));

    [Fact]
    public void Length_that_is_a_lie_stops_the_unpacking_there()
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var file = zip.CreateEntry("data/file", CompressionLevel.SmallestSize).Open();
            file.Write(new byte[5000]);
        }

        // The length in the list of files, said to be 10.
        var zipped = bytes.ToArray();
        var at = zipped.AsSpan().LastIndexOf("PK\u0001\u0002"u8) + 24;
        BitConverter.TryWriteBytes(zipped.AsSpan(at), 10);

        using var tree = ZipTree.Of(new MemoryStream(zipped));
        using var open = tree.Open("data/file");
        Assert.InRange(BytesOf(open), 0, 10);
    }

    [Fact]
    public void What_is_no_zip_is_said_to_be_none()
    {
        foreach (var bytes in new byte[][] { [], [1, 2, 3], "PK"u8.ToArray(), new byte[100_000] })
        {
            using var tree = ZipTree.Of(new MemoryStream(bytes));
            Assert.Contains("no ZIP file", Assert.Single(tree.Faults).Words, StringComparison.Ordinal);
            Assert.False(SomeArchive.Check.Check(tree, stop: TestContext.Current.CancellationToken).IsIntact);
        }
    }

    /// <summary>How many bytes come before it ends or is refused.</summary>
    private static int BytesOf(Stream open)
    {
        var bytes = 0;
        try
        {
            for (; open.ReadByte() >= 0; bytes++)
            {
            }
        }
        catch (InvalidDataException)
        {
            // Refused there.
        }

        return bytes;
    }

    private static void Refused(Action<ZipArchive> make, string why, ZipBounds? bounds = null)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            make(zip);
        }

        using var tree = ZipTree.Of(new MemoryStream(bytes.ToArray()), bounds);
        Assert.Contains(tree.Faults, fault => fault.Words.Contains(why, StringComparison.Ordinal));
        Assert.False(SomeArchive.Check.Check(tree, stop: TestContext.Current.CancellationToken).IsIntact);
    }
}
