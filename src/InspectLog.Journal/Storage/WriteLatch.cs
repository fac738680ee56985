namespace InspectLog.Journal.Storage;

/// <summary>Closes the whole garage to writing: at the first write or sync that fails, until the program is started
/// again, and when the garage itself is closed.</summary>
/// <remarks>Trying again would be wrong: after a failed fsync the system may have dropped the bytes, and the next
/// fsync succeeds without them. Only reading the disk afresh, as the next start does, tells what is there.</remarks>
/// <param name="closed">Why nothing can be written from the beginning; null where it can.</param>
internal sealed class WriteLatch(GarageProblem? closed = null)
{
    // ENOSPC and EDQUOT on Linux, EDQUOT on macOS, ERROR_HANDLE_DISK_FULL and ERROR_DISK_FULL on Windows
    private static readonly int[] DiskFull = [28, 122, 69, unchecked((int)0x80070027), unchecked((int)0x80070070)];

    private volatile GarageProblem? _problem = closed;
    private volatile bool _closed;

    /// <summary>Why nothing can be written; null when all is well.</summary>
    public GarageProblem? Problem => _problem;

    /// <summary>Lets nothing more be written, because the garage is being closed.</summary>
    public void Close() => _closed = true;

    /// <summary>Does something that has to reach the disk.</summary>
    /// <exception cref="JournalReadOnlyException">It did not, or something before it did not.</exception>
    /// <exception cref="ObjectDisposedException">The garage was closed.</exception>
    public void Guard(Action write) => Guard(0, _ => write());

    /// <summary>Does something with bytes that have to reach the disk.</summary>
    /// <exception cref="JournalReadOnlyException">They did not, or something before them did not.</exception>
    public void Guard<T>(T bytes, Action<T> write)
        where T : allows ref struct
    {
        ThrowIfClosed();
        try
        {
            write(bytes);
        }
        catch (Exception cause) when (cause is IOException and not JournalReadOnlyException or UnauthorizedAccessException)
        {
            var message = MessageFor(cause);
            _problem = new GarageProblem(ReadOnly: true, message);
            throw new JournalReadOnlyException(message, cause);
        }
    }

    private void ThrowIfClosed()
    {
        ObjectDisposedException.ThrowIf(_closed, typeof(Garage));
        if (_problem is { } problem)
        {
            throw new JournalReadOnlyException(problem.Message);
        }
    }

    /// <summary>Whether something failed because a disk is full.</summary>
    public static bool IsDiskFull(Exception cause) => DiskFull.Contains(cause.HResult);

    private static string MessageFor(Exception cause) => IsDiskFull(cause)
        ? "The disk is full. What you did last was not kept, and nothing more can be kept until you free some space "
            + "and start InspectLog again."
        : $"Writing to the disk failed ({cause.Message}). What you did last was not kept, and nothing more can be "
            + "kept. Check the disk, make a copy of the data folder, and start InspectLog again.";
}
