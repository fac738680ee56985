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

    /// <summary>Returns when the names in the folder are on disk.</summary>
    /// <exception cref="IOException">The system could not say so.</exception>
    public static void SyncFolder(string folder) => System.SyncFolder(folder);
}
