using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;
using InspectLog.Archives.Zip;
using InspectLog.Checks;

namespace InspectLog.App.Archiving;

/// <summary>Archives as files and folders of this computer.</summary>
internal static class ArchiveFiles
{
    private static ReadOnlySpan<byte> ZipStart => "PK"u8;

    /// <summary>Checks archives; what claims to be a check sheet is read as one.</summary>
    public static ArchiveCheck Check { get; } = new(FaultOfSheet);

    /// <summary>Whether there is anything at a path.</summary>
    public static bool IsThere(string path) => File.Exists(path) || Directory.Exists(path);

    /// <summary>Whether what is at a path is meant as an archive: a ZIP, or a folder with what makes a bag. One that lost some of
    /// it is still meant as one.</summary>
    public static bool IsArchive(string path) => Directory.Exists(path)
        ? File.Exists(Path.Combine(path, BagDeclaration.FileName))
            || Directory.EnumerateFiles(path, "manifest-*.txt").Any()
            || Directory.EnumerateFiles(path, "tagmanifest-*.txt").Any()
        : path.EndsWith(".zip", StringComparison.OrdinalIgnoreCase) ? File.Exists(path) : IsZip(path);

    /// <summary>Opens an archive for reading.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static IFileTree Open(string path) => File.Exists(path) ? ZipTree.Of(path) : FolderTree.Of(path);

    /// <summary>Bytes that are free on the disk of a folder.</summary>
    public static long FreeSpace(string folder) => new DriveInfo(folder).AvailableFreeSpace;

    private static bool IsZip(string path)
    {
        if (!File.Exists(path))
        {
            return false;
        }

        using var file = File.OpenRead(path);
        Span<byte> start = stackalloc byte[2];
        return file.ReadAtLeast(start, 2, throwOnEndOfStream: false) == 2 && start.SequenceEqual(ZipStart);
    }

    private static string? FaultOfSheet(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            _ = CheckSheetFile.Parse(bytes);
            return null;
        }
        catch (CheckSheetFormatException problem)
        {
            return problem.Message;
        }
    }
}
