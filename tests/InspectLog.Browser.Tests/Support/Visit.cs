using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>One person's browser with a page of the running program open.</summary>
internal sealed class Visit : IAsyncDisposable
{
    /// <summary>Continuous integration shares two slow cores with other work.</summary>
    private const float PatienceInMilliseconds = 60_000;

    private readonly IBrowserContext _context;

    private Visit(IBrowserContext context, IPage page, Watch watch)
    {
        _context = context;
        Page = page;
        Watch = watch;
    }

    public IPage Page { get; }

    public Watch Watch { get; }

    public static async Task<Visit> OpenAsync(IBrowser browser, RunningProgram program, BrowserNewContextOptions? options = null)
    {
        options ??= new BrowserNewContextOptions();
        options.BaseURL = program.Address.ToString();
        var context = await browser.NewContextAsync(options);
        context.SetDefaultTimeout(PatienceInMilliseconds);
        Assertions.SetDefaultExpectTimeout(PatienceInMilliseconds);
        var watch = new Watch(context);
        var page = await context.NewPageAsync();
        await page.GotoAsync("/");
        return new Visit(context, page, watch);
    }

    public async ValueTask DisposeAsync() => await _context.DisposeAsync();
}
