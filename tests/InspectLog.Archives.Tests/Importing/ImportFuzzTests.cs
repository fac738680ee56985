using System.Diagnostics;
using System.Globalization;
using CsCheck;
using InspectLog.Archives.Making;
using InspectLog.Archives.Tests.Support;
using InspectLog.Archives.Zip;

namespace InspectLog.Archives.Tests.Importing;

/// <summary>Archives changed at random: each is refused or is the archive it was. <c>INSPECTLOG_FUZZ=1000000</c> for a long run.
/// </summary>
public sealed class ImportFuzzTests : IDisposable
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    private readonly TempFolder _garage = new();
    private readonly TempFolder _out = new();

    private static long Runs => long.Parse(Environment.GetEnvironmentVariable("INSPECTLOG_FUZZ") ?? "400", CultureInfo.InvariantCulture);

    public void Dispose()
    {
        _garage.Dispose();
        _out.Dispose();
    }

    [Fact]
    public async Task Changed_archive_is_refused_or_is_the_one_it_was_and_nothing_crashes_or_hangs()
    {
        var vehicle = SomeGarage.Make(_garage.Path);
        var stop = TestContext.Current.CancellationToken;
        var ours = await File.ReadAllBytesAsync(await SomeArchive.ZipAsync(_garage.Path, vehicle, _out.Path, ArchiveProfiles.Buyer, stop), stop);
        await SomeArchive.FolderAsync(_garage.Path, vehicle, _out.At("in"), ArchiveProfiles.Buyer, stop);
        await System.IO.Compression.ZipFile.CreateFromDirectoryAsync(_out.At("in"), _out.At("packed.zip"), stop);
        var packed = await File.ReadAllBytesAsync(_out.At("packed.zip"), stop);
        var head = Head(ours);
        Assert.Equal(head, Head(packed));

        var changes = Gen.Select(Gen.Bool, Change.Array[1, 6]);
        changes.Sample(
            one =>
            {
                var bytes = one.Item2.Aggregate(one.Item1 ? ours : packed, (now, change) => change.On(now));
                var clock = Stopwatch.GetTimestamp();
                var found = Head(bytes);
                Assert.True(Stopwatch.GetElapsedTime(clock) < Longest * 5, "It took too long."); // wall clock, on a busy machine
                Assert.True(found is null || found == head);
            },
            iter: Runs);
    }

    private static Gen<Changed> Change { get; } = Gen.Select(
        Gen.Int[0, 5], Gen.Double.Unit, Gen.Double.Unit, Gen.Byte, (how, at, length, value) => new Changed(how, at, length, value));

    /// <summary>The hash of the archive's last entry; null where it is refused.</summary>
    private static string? Head(byte[] zip)
    {
        using var tree = ZipTree.Of(new MemoryStream(zip));
        var found = SomeArchive.Check.Check(tree);
        return found.IsIntact ? found.Facts!.Head : null;
    }

    private sealed record Changed(int How, double At, double Length, byte Value)
    {
        public byte[] On(byte[] bytes)
        {
            if (bytes.Length == 0)
            {
                return [Value];
            }

            var at = (int)(At * (bytes.Length - 1));
            var end = Math.Min(bytes.Length, at + 1 + (int)(Length * Length * 200));
            return How switch
            {
                0 => [.. bytes[..at], Value, .. bytes[(at + 1)..]],
                1 => [.. bytes[..at], (byte)(bytes[at] ^ (1 << (Value % 8))), .. bytes[(at + 1)..]],
                2 => bytes[..at],
                3 => [.. bytes[..at], .. bytes[end..]],
                4 => [.. bytes[..end], .. bytes[at..]],
                _ => [.. bytes[..at], .. Enumerable.Repeat(Value, end - at), .. bytes[end..]],
            };
        }
    }
}
