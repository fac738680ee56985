using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>The Chromium of the system, started so that it keeps to itself. No browser is downloaded. Where a test neither
/// listens nor trusts an authority of its own, its shell without a window is taken: the same engine, with less around it.</summary>
internal static class InstalledChromium
{
    private static readonly string[] Whole = ["chromium", "chromium-browser", "google-chrome"];
    private static readonly string[] Shell = ["chromium-headless-shell", .. Whole];

    private static readonly string[] Quiet =
    [
        "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    /// <summary>A browser as most tests need it.</summary>
    public static Task<IBrowser> StartAsync(IPlaywright playwright) => LaunchAsync(playwright, Shell, environment: null);

    /// <summary>A browser with a home of its own, where it finds which authorities its person trusts.</summary>
    public static Task<IBrowser> AtHomeAsync(IPlaywright playwright, string home) => LaunchAsync(
        playwright,
        Whole,
        Environment.GetEnvironmentVariables().Cast<System.Collections.DictionaryEntry>()
            .Select(one => KeyValuePair.Create((string)one.Key, (string)one.Value!))
            .Where(one => one.Key != "HOME")
            .Append(new("HOME", home)));

    /// <summary>A browser whose microphone plays a sound from the moment it is opened.</summary>
    /// <param name="playwright">Playwright.</param>
    /// <param name="sound">The sound; silence follows it.</param>
    public static Task<IBrowser> ThatHearsAsync(IPlaywright playwright, Sound sound) => LaunchAsync(
        playwright,
        Whole,
        environment: null,
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
        $"--use-file-for-fake-audio-capture={sound.Path}%noloop");

    private static Task<IBrowser> LaunchAsync(
        IPlaywright playwright, string[] names, IEnumerable<KeyValuePair<string, string>>? environment, params string[] further) =>
        playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Find(names),
            Args = [.. Quiet, .. further],
            Env = environment,

            // Chromium's sandbox does not start for root, and continuous integration often is root.
            ChromiumSandbox = Environment.UserName != "root",
        });

    private static string Find(string[] names) =>
        (from name in names
         from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
         let path = Path.Combine(folder, name)
         where File.Exists(path)
         select path).FirstOrDefault()
        ?? throw new InvalidOperationException("No Chromium is on the PATH. tests/run installs it, or says what to install.");
}
