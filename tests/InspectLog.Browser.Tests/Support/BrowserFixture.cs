using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(BrowserFixture))]

namespace InspectLog.Browser.Tests.Support;

/// <summary>One browser for all tests; each test has a profile of its own in it.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    internal IBrowser Browser => _browser ?? throw new InvalidOperationException("The browser is not started yet.");

    internal IPlaywright Playwright => _playwright ?? throw new InvalidOperationException("The browser is not started yet.");

    public async ValueTask InitializeAsync()
    {
        _playwright = await Microsoft.Playwright.Playwright.CreateAsync();
        _browser = await InstalledChromium.StartAsync(_playwright);
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
    }
}
