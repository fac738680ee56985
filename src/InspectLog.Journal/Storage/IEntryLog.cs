namespace InspectLog.Journal.Storage;

/// <summary>Where the entries of one journal are kept: it grows by whole records, each of which is kept for good once
/// <see cref="Append"/> returns. It gives streams and never paths.</summary>
/// <remarks>Appending is synchronous: appends to one journal are made one after the other, under a lock that cannot be held
/// over an await, and end with fsync, which has no asynchronous form. An asynchronous call would wrap a thread that waits in
/// another that waits.</remarks>
internal interface IEntryLog
{
    /// <summary>What it is called where people have to look for it.</summary>
    string Place { get; }

    /// <summary>Closes it, and what stands beside it, to writing.</summary>
    WriteLatch Latch { get; }

    /// <summary>Opens it for reading, as it is kept and not as somebody remembers having been asked to keep it; empty where
    /// nothing is. What is there then is what the next append goes on from.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    Stream OpenAfresh();

    /// <summary>Reads what is kept.</summary>
    /// <param name="bytes">Takes what is there; all of it must be.</param>
    /// <param name="at">Where it begins, bytes.</param>
    /// <exception cref="IOException">It cannot be read, or there is less.</exception>
    void Read(Span<byte> bytes, long at);

    /// <summary>Appends a record. Of one that fails nothing stays.</summary>
    /// <exception cref="JournalReadOnlyException">It may not be kept; nothing more can be written.</exception>
    void Append(ReadOnlyMemory<byte> record);

    /// <summary>Adds many lines at once, all or none.</summary>
    /// <exception cref="JournalReadOnlyException">They may not be kept; nothing more can be written.</exception>
    void Continue(ReadOnlySpan<byte> lines);

    /// <summary>Sets what follows the sound part aside, and cuts it off once that is kept.</summary>
    /// <param name="soundBytes">Length of the sound part.</param>
    /// <param name="into">What takes the bytes.</param>
    /// <returns>How many bytes that was.</returns>
    /// <exception cref="JournalReadOnlyException">They could not be set aside; they are still in place.</exception>
    long SetAside(long soundBytes, string into);
}
