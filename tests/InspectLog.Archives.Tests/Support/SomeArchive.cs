using System.Text;
using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;
using InspectLog.Archives.Making;
using InspectLog.Archives.Zip;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Tests.Support;

/// <summary>Archives of <see cref="SomeGarage"/>, with invented reports and copies.</summary>
internal static class SomeArchive
{
    public static ArchiveCheck Check { get; } = new(_ => null);

    public static Task<string> FolderAsync(string garage, string vehicle, string into, ArchiveProfile? profile = null, CancellationToken stop = default) =>
        MakeAsync(garage, vehicle, profile, (name, _) => new FolderTarget(into, name), stop);

    public static Task<string> ZipAsync(string garage, string vehicle, string into, ArchiveProfile? profile = null, CancellationToken stop = default) =>
        MakeAsync(garage, vehicle, profile, (name, day) => new ZipTarget(into, name, day), stop);

    public static Task<string> MakeAsync(
        string garage, string vehicle, ArchiveProfile? profile, Func<string, DateOnly, IBagTarget> begin, CancellationToken stop = default) =>
        new ArchiveMaker(new Readable(), new Copies(), _ => null, SomeGarage.Clock)
            .MakeAsync(VehicleReading.Of(garage, vehicle), profile ?? ArchiveProfiles.Everything, begin, stop: stop);

    public static Task<string> SealedAsync(
        string garage, string vehicle, ArchiveProfile? profile, Func<string, DateOnly, IBagTarget> begin, SealKey key, CancellationToken stop = default) =>
        new ArchiveMaker(new Readable(), new Copies(), _ => null, SomeGarage.Clock).MakeAsync(
            VehicleReading.Of(garage, vehicle), profile ?? ArchiveProfiles.Everything, begin, new(new Sealer(SomeGarage.Clock, "InspectLog"), key), stop: stop);

    public static IFileTree Open(string path) => File.Exists(path) ? ZipTree.Of(path) : FolderTree.Of(path);

    public static CheckedArchive Checked(string path)
    {
        using var tree = Open(path);
        return Check.Check(tree);
    }

    /// <summary>All that is wrong with an archive, its container included.</summary>
    public static IReadOnlyList<BagFault> Faults(IFileTree tree)
    {
        var found = Check.Check(tree);
        return found.Facts is { } facts && ArchiveCheck.FaultOfContainer(tree, facts.Info) is { } container ? [.. found.Faults, container] : found.Faults;
    }

    /// <summary>Every file of a folder with its bytes, by its path.</summary>
    public static SortedDictionary<string, byte[]> Files(string folder) => new(
        Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            .ToDictionary(file => Path.GetRelativePath(folder, file).Replace('\\', '/'), File.ReadAllBytes),
        StringComparer.Ordinal);

    private sealed class Readable : IReadableParts
    {
        public IEnumerable<ReadablePart> Of(ReadableRecord record)
        {
            yield return new(ArchiveLayout.Readings, (to, stop) => to.WriteAsync(Encoding.UTF8.GetBytes(CsvText.Line(["inspection", "value"])), stop).AsTask());
            foreach (var inspection in record.Vehicle.Inspections.Where(one => one.IsClosed))
            {
                yield return new(ArchiveLayout.Report(inspection.Started, inspection.Number), (to, stop) => ReportAsync(record, to, stop));
            }
        }

        private static async Task ReportAsync(ReadableRecord record, Stream to, CancellationToken stop)
        {
            foreach (var photo in record.Vehicle.Inspections[0].Photos)
            {
                await to.WriteAsync(await record.PictureOf(photo.Photo.Media.Sha256, stop) ?? "no picture"u8.ToArray(), stop);
            }
        }
    }

    private sealed class Copies : ICleanCopies
    {
        public async Task<byte[]?> OfAsync(Stream original, CancellationToken stop)
        {
            var start = new byte[20];
            var length = await original.ReadAtLeastAsync(start, start.Length, throwOnEndOfStream: false, stop);
            return [.. "clean copy of "u8, .. start.AsSpan(0, length)];
        }
    }
}
