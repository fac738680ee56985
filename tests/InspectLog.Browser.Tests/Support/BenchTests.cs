using System.Text.Json;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>Tests on the bench of a first inspection: a garage, a program and a browser of their own for each test.</summary>
/// <param name="fixture">The browser.</param>
/// <param name="options">How the person's browser is; null for one like any other.</param>
public abstract class BenchTests(BrowserFixture fixture, BrowserNewContextOptions? options = null) : IAsyncLifetime
{
    private readonly TempFolder _folder = new();
    private RunningProgram _program = null!;
    private Visit _visit = null!;

    private protected IPage Page => _visit.Page;

    private protected Watch Watch => _visit.Watch;

    /// <summary>The garage's folder, which also takes what a test makes.</summary>
    private protected string Folder => _folder.Path;

    public async ValueTask InitializeAsync()
    {
        _program = await RunningProgram.ServeAsync(Folder);
        _visit = await Visit.OpenAsync(fixture.Browser, _program, options);
        await Page.StartFirstInspectionAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _visit.DisposeAsync();
        await _program.DisposeAsync();
        _folder.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>The entries of a kind in the vehicle's journal.</summary>
    private protected List<JsonElement> Entries(string kind) => Bench.Entries(Folder, kind);

    /// <summary>Opens a check by its address, in a window of a size.</summary>
    private protected async Task OpenAsync(string check, int width, int height)
    {
        await Page.SetViewportSizeAsync(width, height);
        await Page.GotoAsync($"{Page.Url.Split('?', '#')[0]}?check={check}");
        await Page.UntilAsync("document.readyState === 'complete'");
    }
}
