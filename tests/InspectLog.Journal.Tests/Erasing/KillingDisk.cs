using System.Diagnostics;
using System.Globalization;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;
using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Tests.Erasing;

/// <summary>A disk that kills its own process before one chosen act, once it is armed.</summary>
internal sealed class KillingDisk : IDurable
{
    private readonly Durable _real = new();
    private int _left = int.MaxValue;

    /// <summary>A process that erases the person and is killed before an act: its number is the last part of its folder's name.
    /// </summary>
    public static int Run(string folder)
    {
        var disk = new KillingDisk();
        using var garage = Garage.Open(folder, Some.Clock(), disk);
        disk._left = int.Parse(Path.GetFileName(folder), NumberStyles.None, CultureInfo.InvariantCulture);
        garage.Erase("Office", SomePerson.Request);
        disk._left = int.MaxValue;
        Console.Out.WriteLine("done");
        return 0;
    }

    public FileStream OpenAfresh(string path) => _real.OpenAfresh(path);

    public void Write(SafeFileHandle file, ReadOnlySpan<byte> bytes, long at)
    {
        Count();
        _real.Write(file, bytes, at);
    }

    public void Cut(SafeFileHandle file, long length)
    {
        Count();
        _real.Cut(file, length);
    }

    public void Sync(SafeFileHandle file)
    {
        Count();
        _real.Sync(file);
    }

    public void SyncFolder(string folder)
    {
        Count();
        _real.SyncFolder(folder);
    }

    private void Count()
    {
        if (--_left == 0)
        {
            Process.GetCurrentProcess().Kill();
            Thread.Sleep(Timeout.Infinite); // until it takes effect
        }
    }
}
