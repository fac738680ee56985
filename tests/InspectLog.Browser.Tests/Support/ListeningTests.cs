using System.Text.Json;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests.Support;

/// <summary>Tests on a bench that listens: a garage, a program, and a browser whose microphone is played from a file, of
/// their own for each test.</summary>
public abstract class ListeningTests(BrowserFixture fixture) : IAsyncLifetime
{
    /// <summary>"The secondary of the coil is ten point six kilohms."</summary>
    private protected const string CoilSecondary = "000";

    private protected static readonly TimeSpan Pause = TimeSpan.FromSeconds(1.8);

    private readonly TempFolder _folder = new();
    private readonly List<IAsyncDisposable> _started = [];
    private Visit? _visit;

    private protected BrowserFixture Fixture => fixture;

    private protected Watch Watch => _visit!.Watch;

    private string Data => Path.Combine(_folder.Path, "data");

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        foreach (var one in Enumerable.Reverse(_started))
        {
            await one.DisposeAsync();
        }

        _folder.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>A sound with these sentences of the corpus and spoken commands in it.</summary>
    private protected Task<Sound> SpeakAsync(params IReadOnlyList<string> said) => Recordings.SpeakAsync(said, Pause, _folder.Path);

    /// <summary>A sound that ends with the last word.</summary>
    private protected Task<Sound> SpeakWithoutPauseAsync(params IReadOnlyList<string> said) =>
        Recordings.SpeakAsync(said, TimeSpan.Zero, _folder.Path);

    private protected Sound BeSilent(int seconds) => Recordings.BeSilent(TimeSpan.FromSeconds(seconds), _folder.Path);

    /// <summary>Opens the bench in a browser that hears a sound, and starts listening.</summary>
    private protected async Task<IPage> ListenAsync(Sound sound, string? script = null)
    {
        var page = await OpenWithMicrophoneAsync(sound, script);
        await page.Locator("#hands-free-start").ClickAsync();
        await Expect(page.Locator("#hands-free-word")).Not.ToHaveTextAsync("Starting");
        return page;
    }

    /// <summary>Opens the bench with a microphone that hears what the test plays into it, and starts listening.</summary>
    private protected async Task<IPage> ListenToPlayedAsync(string? script = null)
    {
        var page = await OpenAsync(fixture.Browser, PlayedMicrophone.Script + script);
        await page.Locator("#hands-free-start").ClickAsync();
        await Expect(page.Locator("#hands-free-word")).ToHaveTextAsync("Listening");
        return page;
    }

    /// <summary>Opens the bench in a browser that hears a sound.</summary>
    private protected async Task<IPage> OpenWithMicrophoneAsync(Sound sound, string? script = null)
    {
        var browser = await InstalledChromium.ThatHearsAsync(fixture.Playwright, sound);
        _started.Add(browser);
        return await OpenAsync(browser, script);
    }

    private protected async Task<IPage> OpenAsync(IBrowser browser, string? script = null)
    {
        var program = await RunningProgram.ServeAsync(Data);
        _started.Add(program);
        _visit = await Visit.OpenAsync(browser, program);
        _started.Add(_visit);
        await _visit.Page.AddInitScriptAsync($$"""
            {
              const open = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
              navigator.mediaDevices.getUserMedia = async (wish) => (globalThis.theStream = await open(wish));
            }
            {{script}}
            """);
        await _visit.Page.StartFirstInspectionAsync();
        return _visit.Page;
    }

    /// <summary>What the entries of a kind say, in the order of the journal.</summary>
    private protected List<JsonElement> Bodies(string kind) =>
        [.. File.ReadLines(Path.Combine(Data, "vehicles", "marigold", "journal.jsonl"))
            .Select(line => JsonDocument.Parse(line).RootElement)
            .Where(entry => entry.GetProperty("kind").GetString() == kind)
            .Select(entry => entry.GetProperty("body"))];
}
