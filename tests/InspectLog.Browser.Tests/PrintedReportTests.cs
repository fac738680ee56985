using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests;

/// <summary>The reports of the demo garage on paper, on A4 and Letter.</summary>
public sealed class PrintedReportTests(BrowserFixture fixture, DemoFixture demo, ITestOutputHelper output) : IClassFixture<DemoFixture>
{
    /// <summary>What the last page holds at least: the rule, what to heed and how to verify are not parted.</summary>
    private const int FewLines = 12;

    [Theory]
    [InlineData("marigold", "Marigold", "A4")]
    [InlineData("marigold", "Marigold", "Letter")]
    [InlineData("teasel", "Teasel", "A4")]
    [InlineData("teasel", "Teasel", "Letter")]
    public async Task Every_page_says_which_car_and_which_page_it_is_and_the_last_one_is_worth_its_paper(string vehicle, string name, string paper)
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        foreach (var report in await ReportsAsync(visit.Page, vehicle))
        {
            await visit.Page.GotoAsync(report);
            var pages = await PrintedPage.PrintAsync(visit.Page, paper);
            output.WriteLine($"{report}, {paper}: {pages.Count} pages, {pages[^1].Lines.Count} lines on the last one");

            Assert.True(pages.Count > 1);
            for (var at = 0; at < pages.Count; at++)
            {
                Assert.Contains(name, pages[at].Margins, StringComparison.Ordinal);
                Assert.Contains("Inspected on", pages[at].Margins, StringComparison.Ordinal);
                Assert.Contains($"Page {at + 1} of {pages.Count}", pages[at].Margins, StringComparison.Ordinal);
                Assert.NotEmpty(pages[at].Lines);
            }

            Assert.Contains("Rule and uncertainty", pages[^1].Lines);
            Assert.Contains("How to verify", pages[^1].Lines);
            Assert.True(pages[^1].Lines.Count > FewLines, string.Join('\n', pages[^1].Lines));
        }
    }

    [Fact]
    public async Task Presses_stay_off_the_paper()
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        await visit.Page.GotoAsync((await ReportsAsync(visit.Page, "marigold"))[0]);
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Print" })).ToBeVisibleAsync();

        var printed = (await PrintedPage.PrintAsync(visit.Page, "A4")).SelectMany(page => page.Lines).ToList();

        Assert.Contains(printed, line => line.Contains("To see to", StringComparison.Ordinal));
        Assert.DoesNotContain(printed, line => line.Contains("out of the report", StringComparison.Ordinal) || line.Contains("To the bench", StringComparison.Ordinal));
    }

    private static async Task<IReadOnlyList<string>> ReportsAsync(IPage page, string vehicle)
    {
        await page.GotoAsync($"/vehicles/{vehicle}");
        var links = await page.EvaluateAsync<string[]>("[...document.querySelectorAll(\"a[href$='/report']\")].map(a => a.getAttribute('href'))");
        Assert.NotEmpty(links);
        return [.. links.Distinct()];
    }
}
