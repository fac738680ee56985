using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests;

/// <summary>Every page of the demo garage that a link leads to: nothing for axe-core to find, nothing in the console, no
/// sideways scrolling, on a phone and on a laptop, light and dark.</summary>
public sealed class EveryPageTests(BrowserFixture fixture, DemoFixture demo, ITestOutputHelper output) : IClassFixture<DemoFixture>
{
    private const int Phone = 390;
    private const int Laptop = 1280;

    [Theory]
    [InlineData(Phone, ColorScheme.Light)]
    [InlineData(Phone, ColorScheme.Dark)]
    [InlineData(Laptop, ColorScheme.Light)]
    [InlineData(Laptop, ColorScheme.Dark)]
    public async Task Every_page_is_accessible_and_quiet(int width, ColorScheme scheme)
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program, new()
        {
            ViewportSize = new() { Width = width, Height = 844 },
            ColorScheme = scheme,
        });
        var page = visit.Page;
        await page.GotoAsync("/vehicles/otter");
        var closed = await page.GetByRole(AriaRole.Link, new() { Name = "Look at it again" }).First.GetAttributeAsync("href");
        var addresses = await PageCrawl.AddressesAsync(
            page, "/", "/vehicles/marigold", "/vehicles/otter", closed!, $"{closed}/report", "/find?words=lead");
        Assert.Superset(
            new HashSet<string> { "/vehicles/new", "/vehicles/marigold/journal", "/vehicles/marigold/parts/new", "/vehicles/marigold/trends/lead-resistance?by=date&place=4", "/instruments", "/sheets", "/words", "/about" },
            addresses.ToHashSet());

        var faults = new List<string>();
        foreach (var address in addresses)
        {
            await page.GotoAsync(address);
            faults.AddRange((await Accessibility.FaultsAsync(page)).Select(fault => $"{address}: {fault}"));
            var overhang = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            if (overhang > 0)
            {
                faults.Add($"{address}: {overhang} px wider than the window");
            }
        }

        output.WriteLine($"{addresses.Count} pages looked at.");
        Assert.Empty(faults);
        Assert.Empty(visit.Watch.Complaints);
    }
}
