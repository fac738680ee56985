namespace InspectLog.Journal.Storage;

/// <summary>Closes one thing that is written to (a journal, the media, the sheets) at its first write or sync that fails,
/// until the program is started again. What else is written goes on, each judged by its own writes.</summary>
/// <remarks>Trying again would be wrong: after a failed fsync the system may have dropped the bytes, and the next
/// fsync succeeds without them. Only reading the disk afresh, as the next start does, tells what is there. That holds for
/// the file whose sync failed and for no other: the system reports an error of a file to whoever syncs that file, and where
/// a whole disk fails, the next sync of every other file fails too, before anything is acknowledged.</remarks>
/// <param name="gate">Closes all latches of the garage.</param>
/// <param name="words">What is told of a failure.</param>
internal sealed class WriteLatch(WriteGate gate, LatchWords words)
{
    private volatile GarageProblem? _problem;

    /// <summary>Which write failed; null while none did. Why the garage as a whole is closed is told by the gate.</summary>
    public GarageProblem? Problem => _problem;

    /// <summary>Does something that has to reach the disk.</summary>
    /// <exception cref="JournalReadOnlyException">It did not, or something before it did not.</exception>
    /// <exception cref="ObjectDisposedException">The garage was closed.</exception>
    public void Guard(Action write) => Guard(0, _ => write());

    /// <summary>Does something with bytes that have to reach the disk.</summary>
    /// <exception cref="JournalReadOnlyException">They did not, or something before them did not.</exception>
    public void Guard<T>(T bytes, Action<T> write)
        where T : allows ref struct
    {
        gate.ThrowIfClosed();
        if (_problem is { } before)
        {
            throw new JournalReadOnlyException(before.Message);
        }

        try
        {
            write(bytes);
        }
        catch (Exception cause) when (DiskFailure.Is(cause) && cause is not JournalReadOnlyException)
        {
            _problem = words.ProblemOf(cause);
            throw new JournalReadOnlyException(_problem.Message, cause);
        }
    }
}
