using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;

namespace InspectLog.App.Commands;

/// <summary>The user's own browser, for who starts the program by a press and sees no console.</summary>
internal static class OwnBrowser
{
    /// <summary>The option that asks for it.</summary>
    public static Option<bool> Option() => new("--open")
    {
        Description = "Show the pages in the browser of this computer as soon as they can be opened.",
    };

    /// <summary>Shows an address; false where this computer has nothing to show it with.</summary>
    public static bool Show(Uri address)
    {
        try
        {
            using var browser = Process.Start(new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true });
            return true;
        }
        catch (Exception e) when (e is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            return false;
        }
    }
}
