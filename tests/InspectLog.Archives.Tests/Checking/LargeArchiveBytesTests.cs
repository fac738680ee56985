using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using InspectLog.Archives.BagIt;
using InspectLog.Archives.Tests.Support;
using InspectLog.Archives.Zip;
using InspectLog.Journal.Entries;

namespace InspectLog.Archives.Tests.Checking;

/// <summary>Whatever byte of an archive of three megabytes is changed, it is found, and the file it is of is named. CI tries some
/// hundred places; <c>INSPECTLOG_BYTES=20000</c> tries so many, and every byte that stands around the files, on all processors.
/// </summary>
public sealed class LargeArchiveBytesTests : IDisposable
{
    private const int Photos = 3;
    private const int PhotoBytes = 960_000;
    private const int Few = 200;

    private readonly TempFolder _garage = new();
    private readonly TempFolder _out = new();

    private static int? Many => Environment.GetEnvironmentVariable("INSPECTLOG_BYTES") is { } count ? int.Parse(count, CultureInfo.InvariantCulture) : null;

    public void Dispose()
    {
        _garage.Dispose();
        _out.Dispose();
    }

    [Fact]
    [Trait("Takes", "long")]
    public async Task Changed_byte_is_found_and_its_file_named()
    {
        var zip = await MakeAsync();
        Assert.True(zip.Length > 3_000_000, $"{zip.Length} bytes");
        Assert.Empty(Faults(zip));
        var files = FilesOf(zip);
        var headers = HeadersOf(zip.Length, files);
        var random = new Random(20261201);
        List<int> tried =
        [
            .. headers.Where((_, at) => Many is not null || at % 20 == 0),
            .. Enumerable.Range(0, Many ?? Few).Select(_ => random.Next(zip.Length)),
        ];
        var missed = new ConcurrentBag<string>();

        Parallel.ForEach(
            Partitioner.Create(0, tried.Count, 16),
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = TestContext.Current.CancellationToken },
            () => (byte[])zip.Clone(), // each thread changes bytes of its own
            (range, _, copy) =>
            {
                for (var one = range.Item1; one < range.Item2; one++)
                {
                    Try(copy, tried[one], files, missed);
                }

                return copy;
            },
            _ => { });

        TestContext.Current.SendDiagnosticMessage($"{tried.Count} bytes of {zip.Length} were changed, {tried.Count - (Many ?? Few)} of them around the files; {missed.Count} were missed");
        Assert.Empty(missed);
    }

    private static void Try(byte[] zip, int at, List<(string Path, int From, int To)> files, ConcurrentBag<string> missed)
    {
        var bit = (byte)(1 << (at % 8));
        zip[at] ^= bit;
        var faults = Faults(zip);
        zip[at] ^= bit;
        var file = files.Find(one => one.From <= at && at < one.To).Path;

        // The list of the other tag files names what it lists, and not itself.
        var isNamed = file is null or "tagmanifest-sha256.txt" || faults.Any(fault => fault.Path == file);
        if (faults.Count == 0 || !isNamed)
        {
            missed.Add($"byte {at} of {file ?? "what stands around the files"}: {string.Join("; ", faults)}");
        }
    }

    private async Task<byte[]> MakeAsync()
    {
        var vehicle = SomeGarage.Make(_garage.Path, notes: 400);
        using (var garage = SomeGarage.Open(_garage.Path))
        {
            for (var n = 0; n < Photos; n++)
            {
                var bytes = new byte[PhotoBytes];
                new Random(n).NextBytes(bytes);
                var photo = garage.Media.Keep([0xFF, 0xD8, 0xFF, .. bytes], "image/jpeg");
                garage.Append(vehicle, SomeGarage.Technician, _ => [new VehiclePictured(photo)]);
            }
        }

        var stop = TestContext.Current.CancellationToken;
        return await File.ReadAllBytesAsync(await SomeArchive.ZipAsync(_garage.Path, vehicle, _out.Path, stop: stop), stop);
    }

    /// <summary>The files of a ZIP, by their paths in the bag, and where their bytes are.</summary>
    private static List<(string Path, int From, int To)> FilesOf(byte[] zip)
    {
        var files = new List<(string, int, int)>();
        for (var at = 0; BitConverter.ToUInt32(zip, at) == 0x04034b50;)
        {
            var name = Encoding.UTF8.GetString(zip, at + 30, BitConverter.ToUInt16(zip, at + 26));
            var from = at + 30 + BitConverter.ToUInt16(zip, at + 26) + BitConverter.ToUInt16(zip, at + 28);
            at = from + BitConverter.ToInt32(zip, at + 18);
            files.Add((name[(name.IndexOf('/', StringComparison.Ordinal) + 1)..], from, at));
        }

        return files;
    }

    private static IEnumerable<int> HeadersOf(int length, List<(string Path, int From, int To)> files)
    {
        var at = 0;
        foreach (var (_, from, to) in files)
        {
            for (; at < from; at++)
            {
                yield return at;
            }

            at = to;
        }

        for (; at < length; at++)
        {
            yield return at;
        }
    }

    private static IReadOnlyList<BagFault> Faults(byte[] zip)
    {
        using var tree = ZipTree.Of(new MemoryStream(zip, writable: false));
        return SomeArchive.Faults(tree);
    }
}
