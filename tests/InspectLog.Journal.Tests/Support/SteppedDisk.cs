using InspectLog.Journal.Storage;
using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Tests.Support;

/// <summary>Says before each act that it is coming, and waits to be told to go on, so that somebody outside can look at the
/// disk in between. One that only pretends to sync shows what such a look finds then.</summary>
internal sealed class SteppedDisk(TextReader goOn, TextWriter says, bool syncs) : IDurable
{
    /// <summary>What it says before an act.</summary>
    public const string Act = "act";

    private readonly Durable _real = new();

    public FileStream OpenAfresh(string path) => _real.OpenAfresh(path);

    public void Write(SafeFileHandle file, ReadOnlySpan<byte> bytes, long at)
    {
        Wait();
        _real.Write(file, bytes, at);
    }

    public void Cut(SafeFileHandle file, long length)
    {
        Wait();
        _real.Cut(file, length);
    }

    public void Sync(SafeFileHandle file)
    {
        Wait();
        if (syncs)
        {
            _real.Sync(file);
        }
    }

    public void SyncFolder(string folder)
    {
        Wait();
        if (syncs)
        {
            _real.SyncFolder(folder);
        }
    }

    private void Wait()
    {
        says.WriteLine(Act);
        goOn.ReadLine();
    }
}
