namespace InspectLog.Journal.Storage;

/// <summary>Writes a file so that under its name it is there whole or not at all, and what was there before stays where that
/// fails. It is its owner's alone.</summary>
internal static class WholeFile
{
    private const UnixFileMode OwnerFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Writes a file; when this returns its bytes and its name are on disk.</summary>
    /// <param name="durable">Writes and syncs.</param>
    /// <param name="path">Its place; the folder is there.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="overwrite">Whether a file that is there is replaced; else it is an error.</param>
    /// <exception cref="IOException">It could not be written.</exception>
    public static void Write(IDurable durable, string path, ReadOnlySpan<byte> bytes, bool overwrite = true)
    {
        // A name of its own each time: two that write the same place at once must not write into one file.
        var fresh = $"{path}.{Path.GetRandomFileName()}";
        try
        {
            using (var file = Create(fresh))
            {
                durable.Write(file.SafeFileHandle, bytes, 0);
                durable.Sync(file.SafeFileHandle);
            }

            File.Move(fresh, path, overwrite);
            durable.SyncFolder(Path.GetDirectoryName(path)!);
        }
        finally
        {
            File.Delete(fresh); // does nothing where it got its place; gives the space back when the disk is full
        }
    }

    private static FileStream Create(string path)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 0 };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = OwnerFile;
        }

        return new FileStream(path, options);
    }
}
