using System.Collections.Concurrent;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests;

/// <summary>Every page of the demo garage that a link leads to: nothing for axe-core to find, nothing too small to
/// press, nothing in the console, no sideways scrolling, on a phone and on a laptop, light and dark. axe-core takes as long
/// as all the rest: it looks at each page at both widths and in both schemes, but not at each width in each. On a small
/// phone, a phone lying, one with its keyboard up and with text twice as large, every control is whole and can be pressed
/// where it is, and no word is broken.</summary>
public sealed class EveryPageTests(BrowserFixture fixture, DemoFixture demo, ITestOutputHelper output) : IClassFixture<DemoFixture>
{
    private const int PagesAtOnce = 2;

    private readonly ConcurrentQueue<string> _faults = [];

    [Fact]
    public async Task Every_page_is_accessible_and_quiet_in_every_look()
    {
        var addresses = await AddressesAsync();
        var left = new ConcurrentQueue<string>(addresses);

        await Task.WhenAll(Enumerable.Range(0, PagesAtOnce).Select(_ => WalkAsync(left)));

        output.WriteLine($"{addresses.Count} pages looked at.");
        Assert.True(_faults.IsEmpty, string.Join("\n\n", _faults));
    }

    private async Task<IReadOnlyList<string>> AddressesAsync()
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        await visit.Page.GotoAsync("/vehicles/teasel");
        var closed = await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Look at it again" }).First.GetAttributeAsync("href");
        var addresses = await PageCrawl.AddressesAsync(
            visit.Page, "/", "/vehicles/marigold", "/vehicles/teasel", closed!, $"{closed}/report", "/find?words=lead", "/losses");
        Assert.Superset(
            new HashSet<string> { "/vehicles/new", "/vehicles/marigold/journal", "/vehicles/marigold/parts/new", "/vehicles/marigold/trends/lead-resistance?sheet=ignition-breakerless&by=date&place=4", "/instruments", "/sheets", "/words", "/letterhead", "/about", "/import", "/backup", "/erase", "/losses", "/vehicles/marigold/archive" },
            addresses.ToHashSet());
        return addresses;
    }

    /// <summary>Takes one address after the other and looks at the page in every look.</summary>
    private async Task WalkAsync(ConcurrentQueue<string> left)
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        while (left.TryDequeue(out var address))
        {
            await visit.Page.GotoAsync(address);
            var turn = address.Length % 2;
            foreach (var (at, look) in Look.All.Index())
            {
                await look.TakeOnAsync(visit.Page);
                await LookAtAsync(visit.Page, $"{address} at {look}", withAxe: at % 2 == turn == at < 2);
            }

            foreach (var window in Window.Small)
            {
                await window.TakeOnAsync(visit.Page);
                await LookAtAsync(visit.Page, $"{address} at {window}", withAxe: false);
                foreach (var fault in await Window.HiddenAsync(visit.Page))
                {
                    _faults.Enqueue($"{address} at {window}: {fault}");
                }

                foreach (var fault in window.Text > 1 ? await Window.BrokenWordsAsync(visit.Page) : [])
                {
                    _faults.Enqueue($"{address} at {window}: {fault}");
                }
            }
        }

        foreach (var complaint in visit.Watch.Complaints)
        {
            _faults.Enqueue(complaint);
        }
    }

    private async Task LookAtAsync(IPage page, string where, bool withAxe)
    {
        var ofAxe = withAxe ? await Accessibility.FaultsAsync(page) : [];
        foreach (var fault in ofAxe.Concat(await PressTargets.FaultsAsync(page)))
        {
            _faults.Enqueue($"{where}: {fault}");
        }

        var overhang = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (overhang > 0)
        {
            _faults.Enqueue($"{where}: {overhang} px wider than the window");
        }
    }
}
