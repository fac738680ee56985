using System.Globalization;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>The line breaks at a random point, in the middle of requests and of answers, or the program itself is killed:
/// every capture is in the journal exactly once in the end. INSPECTLOG_DROPS sets how many times it breaks, and
/// INSPECTLOG_SEED from which number the chances are drawn.</summary>
public sealed class DroppedLineTests(BrowserFixture fixture, ITestOutputHelper output) : IAsyncLifetime
{
    private const int Drops = 10;
    private const int LongestUp = 120_000;
    private const int LongestDown = 20_000;

    private static readonly IReadOnlyDictionary<string, string> Kinds = new Dictionary<string, string>
    {
        ["condition"] = "observation-made", ["note"] = "note-written", ["photo"] = "photo-kept",
    };

    private readonly TempFolder _folder = new();
    private RunningProgram _program = null!;

    public async ValueTask InitializeAsync() => _program = await RunningProgram.ServePhonesAsync(_folder.Path);

    public async ValueTask DisposeAsync()
    {
        await _program.DisposeAsync();
        _folder.Dispose();
    }

    [Fact]
    public async Task Every_capture_is_in_the_journal_exactly_once_wherever_the_line_breaks()
    {
        var seed = Setting("INSPECTLOG_SEED", Environment.TickCount);
        output.WriteLine($"INSPECTLOG_SEED={seed}");
        var chance = new Random(seed);
        var port = _program.Phones!.Port;
        await using var phone = await Phone.StartAsync(fixture.Playwright, _folder.Path);
        await using (var workshop = await Visit.OpenAsync(fixture.Browser, _program))
        {
            await workshop.Page.StartFirstInspectionAsync();
            await phone.PairAsync(_program, await workshop.Page.Context.NewPageAsync());
        }

        using var line = new FailingLine(port);
        var page = phone.Page;
        await page.GotoAsync(new Uri(line.Address, "/now").ToString());
        await page.GotoAsync($"{page.Url.Split('?')[0]}?check=plug-condition");
        await phone.UntilKeptAsync("check=plug-condition");
        var made = Kinds.Keys.ToDictionary(kind => kind, _ => 0);

        for (var drop = 0; drop < Setting("INSPECTLOG_DROPS", Drops); drop++)
        {
            var kills = chance.Next(5) == 0;
            line.BreakAfter(chance.Next(LongestUp), chance.Next(LongestDown));
            for (var captures = chance.Next(1, 4); captures > 0; captures--)
            {
                var kind = Kinds.Keys.ElementAt(chance.Next(Kinds.Count));
                await CaptureAsync(page, kind, _folder.Path, chance);
                made[kind]++;
            }

            if (kills)
            {
                await _program.DisposeAsync();
            }

            if (chance.Next(2) == 0)
            {
                line.BreakAfter(0, 0);
                await page.ReloadAsync();
            }

            if (kills)
            {
                _program = await RunningProgram.ServePhonesAsync(_folder.Path, port);
            }

            line.Mend();
            await AllSentAsync(page);
            await page.UntilAsync("!document.querySelector('form[data-sent]')");
            Assert.Equal(made, Kinds.ToDictionary(kind => kind.Key, kind => Bench.Entries(_folder.Path, kind.Value).Count));
        }
    }

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var set) ? set : otherwise;

    private static async Task AllSentAsync(IPage page)
    {
        try
        {
            // What the device keeps, and not only what the page shows of it by now.
            await page.EvaluateAsync("delete window.left");
            await page.UntilAsync("(import(document.querySelector('script[type=module]').src).then((app) => app.$outbox_store.all()).then((left) => window.left = left.length), window.left === 0)");
            await Expect(page.Locator("#unsent li")).ToHaveCountAsync(0, new() { Timeout = 90_000 });
        }
        catch (Exception left) when (left is PlaywrightException or Xunit.Sdk.XunitException)
        {
            throw new InvalidOperationException($"Not sent: {string.Join(" | ", await page.Locator("#unsent li p").AllTextContentsAsync())}", left);
        }
    }

    /// <summary>Captures one thing, and waits until it is in the journal or on the phone.</summary>
    private static async Task CaptureAsync(IPage page, string kind, string folder, Random chance)
    {
        switch (kind)
        {
            case "condition":
                await page.Locator("button[name=condition]").Nth(chance.Next(3)).DispatchEventAsync("click");
                break;
            case "note":
                // The answer before this one may close the panel in the same moment; a person would open it again.
                await page.UntilAsync("(document.getElementById('write').open = true, document.querySelector('.htmx-settling') === null)");
                await page.Locator("#write textarea").FillAsync($"Remark {chance.Next()}");
                await page.Locator("#write").GetByRole(AriaRole.Button, new() { Name = "Keep note" }).DispatchEventAsync("click");
                break;
            default:
                await page.Locator("#photo-photo").SetInputFilesAsync(Pictures.TakePhoto(folder, chance));
                break;
        }

        await page.UntilAsync("!document.querySelector('form[data-sent], form.htmx-request') && !document.getElementById('unsent').textContent.includes('Being kept')");
    }
}
