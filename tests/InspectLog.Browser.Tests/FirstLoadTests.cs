using System.Text.Json;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests;

/// <summary>What a phone loads that never was here before: little, and nothing moves while it comes.</summary>
public sealed class FirstLoadTests(BrowserFixture fixture, ITestOutputHelper output)
{
    private const int MostBytes = 60 * 1024;
    private const int MostRequests = 12;

    [Fact]
    public async Task First_load_is_small_on_a_phone()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.DemoForPhonesAsync(folder.Path);
        await using var workshop = await Visit.OpenAsync(fixture.Browser, program);
        foreach (var address in new[] { "/", "/vehicles/marigold", "/now" })
        {
            // A phone of its own for each, that has nothing yet but its pairing. Its worker is another matter: it loads again
            // what it keeps, when the page is there already.
            await using var context = await fixture.Browser.NewContextAsync(new()
            {
                IgnoreHTTPSErrors = true, ViewportSize = new() { Width = 390, Height = 844 }, ServiceWorkers = ServiceWorkerPolicy.Block,
            });
            context.SetDefaultTimeout(60_000);
            var page = await context.NewPageAsync();
            await page.PairAsync(program, workshop.Page, "Ines Vale");
            await CountAsync(page, new Uri(program.Phones!, address).ToString());
            await WatchAsync(page, new Uri(program.Phones!, address).ToString());
        }
    }

    private async Task CountAsync(IPage page, string address)
    {
        await page.GotoAsync("about:blank");
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Network.enable");
        await session.SendAsync("Network.clearBrowserCache");
        var (addresses, photos, bytes) = (new Dictionary<string, string>(), new HashSet<string>(), 0.0);
        session.Event("Network.requestWillBeSent").OnEvent += (_, about) =>
        {
            var id = about!.Value.GetProperty("requestId").GetString()!;
            addresses[id] = new Uri(about.Value.GetProperty("request").GetProperty("url").GetString()!).PathAndQuery;
            if (about.Value.TryGetProperty("type", out var type) && type.GetString() is "Image" && addresses[id] != "/icon.svg")
            {
                photos.Add(id);
            }
        };
        session.Event("Network.loadingFinished").OnEvent += (_, about) =>
            bytes += photos.Contains(about!.Value.GetProperty("requestId").GetString()!) ? 0 : about.Value.GetProperty("encodedDataLength").GetDouble();

        await page.GotoAsync(address);
        await page.UntilAsync("document.readyState === 'complete'");
        await page.WaitForTimeoutAsync(500); // what scripts ask for of themselves
        var counted = addresses.Where(one => !photos.Contains(one.Key)).Select(one => one.Value).ToList();
        output.WriteLine($"{address}: {counted.Count} requests, {bytes:0} bytes: {JsonSerializer.Serialize(counted)}");
        Assert.InRange(counted.Count, 3, MostRequests);
        Assert.InRange(bytes, 10_000, MostBytes);
    }

    /// <summary>Over a network so slow that the page stands there before its scripts do: nothing may move when they come.
    /// </summary>
    private static async Task WatchAsync(IPage page, string address)
    {
        await page.GotoAsync("about:blank");
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Network.enable");
        await session.SendAsync("Network.clearBrowserCache");
        await session.SendAsync("Network.emulateNetworkConditions", new()
        {
            ["offline"] = false, ["latency"] = 300, ["downloadThroughput"] = 40_000, ["uploadThroughput"] = 20_000,
        });
        await page.GotoAsync(address);
        await page.UntilAsync("document.readyState === 'complete'");
        await page.WaitForTimeoutAsync(500); // what scripts do of themselves
        var moved = await page.EvaluateAsync<string[]>(
            """
            () => new Promise((done) => {
              const moved = [];
              new PerformanceObserver((list) => list.getEntries().forEach((one) => moved.push(`${one.value}: ${one.sources.map(({ node }) => node?.outerHTML ?? "text").map((html) => html.slice(0, 120)).join(" | ")}`)))
                .observe({ type: "layout-shift", buffered: true });
              setTimeout(() => done(moved), 200);
            })
            """);

        Assert.True(moved.Length == 0, $"{address}: {string.Join("\n", moved)}");
    }
}
