using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>A journal read from its file only: no lock is taken and nothing is written, so that it works on a folder in
/// use and on a copy that cannot be written.</summary>
internal static class ReadOnlyScan
{
    private static readonly TimeSpan WriteInProgress = TimeSpan.FromMilliseconds(200);

    /// <summary>Reads a journal. A last line without its end may be one that is being written at this moment; a second
    /// look tells.</summary>
    /// <exception cref="IOException">The file cannot be read.</exception>
    public static JournalScan Of(string file) => Of(file, () => Thread.Sleep(WriteInProgress));

    /// <summary>Reads a journal as <see cref="Of(string)"/> does, with another wait before the second look.</summary>
    /// <exception cref="IOException">The file cannot be read.</exception>
    internal static JournalScan Of(string file, Action wait)
    {
        var scan = JournalScan.Of(Read(file));
        if (scan.Broken is not { IsUnfinished: true })
        {
            return scan;
        }

        wait();
        return JournalScan.Of(Read(file));
    }

    /// <summary>Reads a file that another process may be writing to.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    internal static byte[] Read(string file)
    {
        using var stream = new FileStream(
            file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0, FileOptions.SequentialScan);
        var bytes = new byte[stream.Length]; // what is appended meanwhile is none of this look's
        stream.ReadExactly(bytes);
        return bytes;
    }
}
