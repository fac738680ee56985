using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Storage;

/// <summary>Brings to the disk what other rooms write to files of their own, and says when that failed.</summary>
public static class DurableFiles
{
    private static readonly Durable System = new();

    /// <summary>Returns when what was written to the file is on disk.</summary>
    /// <exception cref="IOException">The system could not say so; the bytes may be lost.</exception>
    public static void Sync(SafeFileHandle file) => System.Sync(file);

    /// <summary>Returns when what was written to the file is on disk.</summary>
    /// <exception cref="IOException">The system could not say so; the bytes may be lost.</exception>
    public static void Sync(string path)
    {
        using var file = File.OpenHandle(path, FileMode.Open, FileAccess.ReadWrite);
        System.Sync(file);
    }

    /// <summary>Writes a file whole or not at all, its owner's alone; when this returns it is on disk.</summary>
    /// <param name="path">Its place; the folder is there.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <exception cref="IOException">It could not be written; what was there before stays.</exception>
    public static void WriteWhole(string path, ReadOnlySpan<byte> bytes) => WholeFile.Write(System, Path.GetFullPath(path), bytes);

    /// <summary>Returns when the names in the folder are on disk.</summary>
    /// <exception cref="IOException">The system could not say so.</exception>
    public static void SyncFolder(string folder) => System.SyncFolder(folder);
}
