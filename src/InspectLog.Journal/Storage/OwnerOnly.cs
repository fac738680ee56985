using System.Runtime.InteropServices;

namespace InspectLog.Journal.Storage;

/// <summary>Keeps the files of the program from other users of the computer. On Windows the user's own folders are closed
/// by what they inherit, and nothing is done.</summary>
public static partial class OwnerOnly
{
    private const UnixFileMode Owner = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    private static readonly EnumerationOptions Everything = new()
    {
        RecurseSubdirectories = true,
        AttributesToSkip = FileAttributes.ReparsePoint, // what a link points at is somebody else's
    };

    /// <summary>Whatever this process makes from now on is its user's alone, wherever it is made and by whichever library.
    /// </summary>
    public static void FromNowOn()
    {
        if (!OperatingSystem.IsWindows())
        {
            _ = SetMask(0b000_111_111);
        }
    }

    /// <summary>Takes what others may do with a folder away, and with all that is in it. A folder that is closed already
    /// is not gone through: nobody gets to what it holds.</summary>
    /// <returns>Why it could not be done; null where it was.</returns>
    internal static string? Tighten(string folder)
    {
        if (OperatingSystem.IsWindows() || (File.GetUnixFileMode(folder) & ~Owner) == 0)
        {
            return null;
        }

        try
        {
            foreach (var path in Directory.EnumerateFileSystemEntries(folder, "*", Everything))
            {
                File.SetUnixFileMode(path, File.GetUnixFileMode(path) & Owner);
            }

            // Last, so that a start that was broken off is seen by the next.
            File.SetUnixFileMode(folder, File.GetUnixFileMode(folder) & Owner);
            return null;
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return problem.Message;
        }
    }

    [LibraryImport("libc", EntryPoint = "umask")]
    private static partial uint SetMask(uint mask);
}
