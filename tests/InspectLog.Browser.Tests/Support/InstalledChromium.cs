using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>The Chromium of the system, started so that it keeps to itself. No browser is downloaded.</summary>
internal static class InstalledChromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    private static readonly string[] Quiet =
    [
        "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    public static Task<IBrowser> StartAsync(IPlaywright playwright, params string[] further) =>
        playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Find(),
            Args = [.. Quiet, .. further],

            // Chromium's sandbox does not start for root, and continuous integration often is root.
            ChromiumSandbox = Environment.UserName != "root",
        });

    /// <summary>A browser whose microphone plays a sound from the moment it is opened.</summary>
    /// <param name="playwright">Playwright.</param>
    /// <param name="sound">The sound.</param>
    /// <param name="again">Whether it is played again and again; else silence follows.</param>
    public static Task<IBrowser> ThatHearsAsync(IPlaywright playwright, Sound sound, bool again = false) => StartAsync(
        playwright,
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
        $"--use-file-for-fake-audio-capture={sound.Path}{(again ? "" : "%noloop")}");

    private static string Find() =>
        (from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
         from name in Names
         let path = Path.Combine(folder, name)
         where File.Exists(path)
         select path).FirstOrDefault()
        ?? throw new InvalidOperationException("No Chromium is on the PATH. tests/run installs it, or says what to install.");
}
