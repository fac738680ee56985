using System.Security.Cryptography;
using InspectLog.Archives.BagIt;
using InspectLog.Archives.Importing;
using InspectLog.Archives.Making;
using InspectLog.Archives.Tests.Support;
using InspectLog.Archives.Zip;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Tests.Zip;

/// <summary>ZIPs beyond what the first ZIP could hold: 65,535 files, or four gigabytes (APPNOTE 6.3.10, ZIP64).</summary>
public sealed class LargeZipTests : IDisposable
{
    private const long Large = 4_400_000_000; // more than 2^32
    private const int Many = 65_600; // more than 2^16

    private readonly TempFolder _garage = new();
    private readonly TempFolder _here = new();
    private readonly TempFolder _out = new();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        _garage.Dispose();
        _here.Dispose();
        _out.Dispose();
    }

    /// <summary>An independent maker: the zipfile of Python, which writes the long lengths of ZIP64 for any file when told to.
    /// </summary>
    [Fact]
    public async Task Large_records_of_another_maker_are_read()
    {
        var vehicle = SomeGarage.Make(_garage.Path);
        var folder = await SomeArchive.FolderAsync(_garage.Path, vehicle, _out.Path, stop: Stop);
        var zip = _out.At("python.zip");
        const string Script =
            """
            import os, sys, zipfile
            root, out = sys.argv[1:]
            with zipfile.ZipFile(out, "w", zipfile.ZIP_STORED) as z:
                for folder, _, files in os.walk(root):
                    for name in sorted(files):
                        path = os.path.join(folder, name)
                        with open(path, "rb") as f, z.open(os.path.relpath(path, os.path.dirname(root)), "w", force_zip64=True) as to:
                            to.write(f.read())
            """;
        var (code, _) = await TryPythonAsync("-c", Script, folder, zip);
        Assert.SkipWhen(code is null, "There is no python3 here to make the ZIP.");
        Assert.Equal(0, code);
        Assert.True((await File.ReadAllBytesAsync(zip, Stop)).AsSpan().IndexOf((byte[])[0x01, 0x00, 0x10, 0x00]) > 0, "no record of ZIP64 is in it");

        using var tree = ZipTree.Of(zip);

        Assert.Equal(SomeArchive.Files(folder).ToDictionary(file => file.Key, file => (long)file.Value.Length), tree.Lengths);
        Assert.Empty(SomeArchive.Check.Check(tree, stop: Stop).Faults);
        Assert.Contains("not spelled the way", Assert.Single(SomeArchive.Faults(tree)).Words, StringComparison.Ordinal);
    }

    /// <summary>What we write of ZIP64 is read by the same independent program.</summary>
    [Fact]
    public async Task Many_files_are_read_by_another_reader_and_by_us()
    {
        var zip = _out.At("many.zip");
        using (var target = new ZipTarget(_out.Path, "many", new(2026, 11, 25)))
        {
            for (var n = 0; n < Many; n++)
            {
                await target.AddAsync(FormattableString.Invariant($"data/{n}"), 1, to => to.WriteAsync((byte[])[(byte)n], Stop).AsTask());
            }

            Assert.Equal(zip, target.Complete());
        }

        using (var tree = ZipTree.Of(zip))
        {
            Assert.Empty(tree.Faults);
            Assert.Equal(Many, tree.Lengths.Count);
            await using var last = tree.Open(FormattableString.Invariant($"data/{Many - 1}"));
            Assert.Equal((Many - 1) % 256, last.ReadByte());
            Assert.Null(ZipStrictness.Difference(tree.File, new(new(2026, 11, 25)), tree.Listed));
        }

        var (code, output) = await TryPythonAsync("-c", "import sys, zipfile; z = zipfile.ZipFile(sys.argv[1]); print(len(z.namelist()), z.testzip())", zip);
        Assert.SkipWhen(code is null, "There is no python3 here to read the ZIP.");
        Assert.Equal($"{Many} None", output.Trim());
    }

    /// <summary>Takes a quarter of an hour and thirteen gigabytes of disk, of which the last four are the garage it comes into.
    /// </summary>
    [Fact(Explicit = true)]
    public async Task Archive_of_a_file_of_more_than_four_gigabytes_is_made_verified_and_taken_in() =>
        await RoundTripAsync(async garage =>
        {
            var zeros = new Zeros(Large);
            var sha256 = Convert.ToHexStringLower(await SHA256.HashDataAsync(new Zeros(Large), Stop));
            var file = new MediaFile(sha256, Large, "audio/wav");
            garage.Media.KeepFrom(zeros, file);
            return [new VehiclePictured(file)];
        });

    [Fact(Explicit = true)]
    public async Task Archive_of_more_than_65535_files_is_made_verified_and_taken_in() =>
        await RoundTripAsync(garage => Task.FromResult<IReadOnlyList<EntryBody>>(
            [.. Enumerable.Range(0, Many).Select(n => new VehiclePictured(garage.Media.Keep([0xFF, 0xD8, 0xFF, .. BitConverter.GetBytes(n)], "image/jpeg")))]));

    private async Task RoundTripAsync(Func<Journal.Garage, Task<IReadOnlyList<EntryBody>>> bodies)
    {
        var vehicle = SomeGarage.Make(_garage.Path);
        using (var garage = SomeGarage.Open(_garage.Path))
        {
            var further = await bodies(garage);
            garage.Append(vehicle, SomeGarage.Technician, _ => further);
        }

        var zip = await SomeArchive.ZipAsync(_garage.Path, vehicle, _out.Path, stop: Stop);
        using (var tree = ZipTree.Of(zip))
        using (var garage = SomeGarage.Open(_here.Path))
        {
            Assert.Empty(SomeArchive.Faults(tree));
            var found = SomeArchive.Check.Check(tree, stop: Stop);
            new ArchiveImport(garage, _ => long.MaxValue).Run(tree, found.Facts!, Stop);
        }

        TestContext.Current.SendDiagnosticMessage($"The ZIP has {new FileInfo(zip).Length} bytes.");
        Assert.True(JournalVerifier.Verify(_here.Path).IsIntact);
        var (code, output) = await TryPythonAsync("-c", "import sys, zipfile; print(zipfile.ZipFile(sys.argv[1]).testzip())", zip);
        Assert.True(code is null || output.Trim() == "None", output);
    }

    private async Task<(int? Code, string Out)> TryPythonAsync(params string[] arguments)
    {
        try
        {
            var (code, output) = await Outside.RunAsync("python3", _out.Path, arguments);
            return (code, output);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return (null, ""); // it is not installed
        }
    }

    /// <summary>So many zeros, without room for them.</summary>
    private sealed class Zeros : Stream
    {
        private readonly long _length;
        private long _left;

        public Zeros(long length) => (_length, _left) = (length, length);

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => _length;

        public override long Position { get => _length - _left; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = (int)Math.Min(count, _left);
            Array.Clear(buffer, offset, read);
            _left -= read;
            return read;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
