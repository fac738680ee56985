using InspectLog.Journal.Storage;
using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Tests.Support;

/// <summary>A disk that fails at one chosen act and works otherwise.</summary>
internal sealed class FaultyDisk : IDurable
{
    public const int InputOutputError = 5; // EIO
    public const int NoSpace = 28; // ENOSPC

    private readonly Durable _real = new();
    private int _failAt;
    private int _error;
    private double _written;
    private bool _forGood;

    /// <summary>How many acts there were.</summary>
    public int Acts => Log.Count;

    /// <summary>How many of them failed.</summary>
    public int Failures { get; private set; }

    /// <summary>What was done, in order: "write", "cut", "sync", or the path of a folder that was synced.</summary>
    public List<string> Log { get; } = [];

    /// <summary>Makes an act to come fail.</summary>
    /// <param name="act">Which: 1 for the next one.</param>
    /// <param name="error">The error number of the system.</param>
    /// <param name="written">How much of a write reaches the file before it fails, 0 to 1.</param>
    public FaultyDisk Arm(int act, int error = InputOutputError, double written = 0.5)
    {
        (_failAt, _error, _written) = (Acts + act, error, written);
        return this;
    }

    /// <summary>Makes every act fail from one to come on.</summary>
    public FaultyDisk ArmForGood(int act, double written, int error = InputOutputError)
    {
        _forGood = true;
        return Arm(act, error, written);
    }

    public FileStream OpenAfresh(string path) => _real.OpenAfresh(path);

    public void Write(SafeFileHandle file, ReadOnlySpan<byte> bytes, long at)
    {
        if (IsToFail("write"))
        {
            _real.Write(file, bytes[..(int)(bytes.Length * _written)], at);
            throw new IOException("write: made to fail", _error);
        }

        _real.Write(file, bytes, at);
    }

    public void Cut(SafeFileHandle file, long length) => Act("cut", () => _real.Cut(file, length));

    public void Sync(SafeFileHandle file) => Act("sync", () => _real.Sync(file));

    public void SyncFolder(string folder) => Act(folder, () => _real.SyncFolder(folder));

    private void Act(string name, Action act)
    {
        if (IsToFail(name))
        {
            throw new IOException("fsync: made to fail", _error);
        }

        act();
    }

    private bool IsToFail(string act)
    {
        Log.Add(act);
        var fails = Acts == _failAt || (_forGood && Acts > _failAt && _failAt > 0);
        Failures += fails ? 1 : 0;
        return fails;
    }
}
