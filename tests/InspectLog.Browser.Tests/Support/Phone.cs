using System.Diagnostics;
using System.Security.Cryptography.X509Certificates;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>A phone beside the car: a browser with touch that trusts the workshop's certificate authority because it was put
/// into its store, and by nothing else.</summary>
internal sealed class Phone : IAsyncDisposable
{
    private readonly TempFolder _home;
    private readonly IBrowser _browser;

    private Phone(TempFolder home, IBrowser browser, IBrowserContext context, IPage page)
    {
        (_home, _browser, Page) = (home, browser, page);
        Watch = new(context);
    }

    public IPage Page { get; }

    public Watch Watch { get; }

    /// <summary>Starts one.</summary>
    /// <param name="playwright">Playwright.</param>
    /// <param name="dataFolder">Data folder of the running program, where its authority lies.</param>
    /// <param name="trusts">Whether the authority is in its store.</param>
    public static async Task<Phone> StartAsync(IPlaywright playwright, string dataFolder, bool trusts = true)
    {
        var home = new TempFolder();
        if (trusts)
        {
            await TrustAsync(home.Path, Path.Combine(dataFolder, "keys", "authority.pem"));
        }

        var browser = await InstalledChromium.AtHomeAsync(playwright, home.Path);
        var context = await browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true, IsMobile = true, IgnoreHTTPSErrors = !trusts,
        });
        context.SetDefaultTimeout(60_000);
        return new(home, browser, context, await context.NewPageAsync());
    }

    /// <summary>Pairs it as a person does who types the code.</summary>
    public Task PairAsync(RunningProgram program, IPage workshop, string person = "Ines Vale") => Page.PairAsync(program, workshop, person);

    /// <summary>Waits until it keeps the page whose address ends in some words, for when the network is gone.</summary>
    public async Task UntilKeptAsync(string end)
    {
        await Page.UntilAsync("navigator.serviceWorker.controller");
        await Page.UntilAsync($"""
            (caches.open("pages").then((pages) => pages.keys()).then((keys) => window.kept = keys.some((key) => key.url.endsWith("{end}"))), window.kept)
            """);
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _home.Dispose();
    }

    private static async Task TrustAsync(string home, string authority)
    {
        using var certificate = X509Certificate2.CreateFromPem(await File.ReadAllTextAsync(authority));
        var file = Path.Combine(home, "authority.crt");
        await File.WriteAllTextAsync(file, certificate.ExportCertificatePem());
        var store = Path.Combine(home, ".pki", "nssdb");
        Directory.CreateDirectory(store);
        await CertutilAsync("-N", "-d", $"sql:{store}", "--empty-password");
        await CertutilAsync("-A", "-d", $"sql:{store}", "-t", "C,,", "-n", "workshop", "-i", file);
    }

    private static async Task CertutilAsync(params string[] arguments)
    {
        using var certutil = Process.Start("certutil", arguments);
        await certutil.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, certutil.ExitCode);
    }
}
