namespace InspectLog.Journal.Storage;

/// <summary>Closes everything in a garage to writing: when the garage is closed, and from the beginning where it is only
/// looked at.</summary>
/// <param name="closed">Why nothing can be written from the beginning; null where it can.</param>
internal sealed class WriteGate(GarageProblem? closed = null)
{
    private volatile bool _closed;

    /// <summary>Why nothing can be written from the beginning; null where it can.</summary>
    public GarageProblem? Problem => closed;

    /// <summary>Lets nothing more be written, because the garage is being closed.</summary>
    public void Close() => _closed = true;

    /// <summary>Throws where nothing can be written.</summary>
    /// <exception cref="JournalReadOnlyException">The garage is only looked at.</exception>
    /// <exception cref="ObjectDisposedException">The garage was closed.</exception>
    public void ThrowIfClosed()
    {
        ObjectDisposedException.ThrowIf(_closed, typeof(Garage));
        if (closed is not null)
        {
            throw new JournalReadOnlyException(closed.Message);
        }
    }
}
