using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Storage;

/// <summary>Writes and syncs by the operating system.</summary>
/// <remarks>On Linux and macOS fsync is called directly, because the runtime (10.0.12) calls it and drops its errors.
/// On macOS the runtime's call follows, as only that empties the drive's own cache (F_FULLFSYNC); an error of that
/// second step goes unseen. On Windows the runtime reports errors (FlushFileBuffers), and there is no way to sync a
/// folder: NTFS journals the names itself. Only Linux was tested against real failures.</remarks>
internal sealed partial class Durable : IDurable
{
    private const int Interrupted = 4; // EINTR, the same number on Linux and macOS

    /// <inheritdoc/>
    /// <remarks>Only Linux has a way to say so. What is still to be written to the disk stays in memory and is read
    /// from there.</remarks>
    public FileStream OpenAfresh(string path)
    {
        if (OperatingSystem.IsLinux())
        {
            using var file = File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            _ = Advise(file, 0, 0, DontNeed); // a hint; there is nothing to do where it is not taken
        }

        return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
    }

    /// <inheritdoc/>
    public void Write(SafeFileHandle file, ReadOnlySpan<byte> bytes, long at) => RandomAccess.Write(file, bytes, at);

    /// <inheritdoc/>
    public void Cut(SafeFileHandle file, long length) => RandomAccess.SetLength(file, length);

    /// <inheritdoc/>
    public void Sync(SafeFileHandle file)
    {
        if (!OperatingSystem.IsWindows())
        {
            Check(() => FSync(file), "fsync");
        }

        if (!OperatingSystem.IsLinux())
        {
#pragma warning disable RS0030 // The ban is for Linux, where fsync was called above and checked.
            RandomAccess.FlushToDisk(file);
#pragma warning restore RS0030
        }
    }

    /// <inheritdoc/>
    public void SyncFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var handle = new SafeFileHandle(
            Check(() => Open(folder, OperatingSystem.IsLinux() ? LinuxReadOnly : MacReadOnly), "open"), ownsHandle: true);
        Check(() => FSync(handle), "fsync");
    }

    // O_RDONLY | O_CLOEXEC
    private const int LinuxReadOnly = 0x80000;
    private const int MacReadOnly = 0x1000000;

    private const int DontNeed = 4; // POSIX_FADV_DONTNEED

    private static int Check(Func<int> call, string name)
    {
        while (true)
        {
            var result = call();
            var error = Marshal.GetLastPInvokeError();
            if (result >= 0)
            {
                return result;
            }

            if (error != Interrupted)
            {
                throw new IOException($"{name}: {Marshal.GetPInvokeErrorMessage(error)}", error);
            }
        }
    }

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int FSync(SafeFileHandle file);

    [LibraryImport("libc", EntryPoint = "posix_fadvise")]
    private static partial int Advise(SafeFileHandle file, long from, long length, int advice);

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);
}
