using InspectLog.Journal.Storage;
using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Tests.Support;

/// <summary>A disk that fails at one chosen act and works otherwise.</summary>
/// <param name="failAt">Number of the act that fails, from 1; 0 for none.</param>
/// <param name="error">The error number of the system.</param>
/// <param name="written">How much of a write that fails reaches the file, 0 to 1.</param>
internal sealed class FaultyDisk(int failAt = 0, int error = FaultyDisk.InputOutputError, double written = 0.5) : IDurable
{
    public const int InputOutputError = 5; // EIO
    public const int NoSpace = 28; // ENOSPC

    private readonly Durable _real = new();

    /// <summary>How many acts there were.</summary>
    public int Acts { get; private set; }

    /// <summary>Number of the act that fails.</summary>
    public int FailAt { get; set; } = failAt;

    public void Write(SafeFileHandle file, ReadOnlySpan<byte> bytes, long at)
    {
        if (++Acts == FailAt)
        {
            _real.Write(file, bytes[..(int)(bytes.Length * written)], at);
            throw Failure("write");
        }

        _real.Write(file, bytes, at);
    }

    public void Sync(SafeFileHandle file) => Act(() => _real.Sync(file));

    public void SyncFolder(string folder) => Act(() => _real.SyncFolder(folder));

    private void Act(Action act)
    {
        if (++Acts == FailAt)
        {
            throw Failure("fsync");
        }

        act();
    }

    private IOException Failure(string act) => new($"{act}: made to fail", error);
}
