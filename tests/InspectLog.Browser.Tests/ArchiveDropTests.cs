using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>An archive is checked by the page: made, dropped anywhere on it, or chosen in its field.</summary>
public sealed class ArchiveDropTests(BrowserFixture fixture, DemoFixture demo) : IClassFixture<DemoFixture>
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Archive_is_made_and_checked_by_dropping_it_or_by_choosing_it(bool drops)
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        var page = visit.Page;
        var file = await MakeAsync(page);
        await page.GotoAsync("/import");

        if (drops)
        {
            await DropAsync(page, await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));
            await Expect(page.GetByLabel("The archive, a ZIP file")).ToBeFocusedAsync();
        }
        else
        {
            await page.GetByLabel("The archive, a ZIP file").SetInputFilesAsync(file);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Check it" }).ClickAsync();

        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Archive of Teasel");
        await Expect(page.GetByText("All of this is here already")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Not sealed" })).ToBeVisibleAsync();
        Assert.Empty(visit.Watch.Complaints);
    }

    private static async Task<string> MakeAsync(IPage page)
    {
        await page.GotoAsync("/vehicles/teasel/archive");
        await page.Locator("button[name=profile][value=everything]").ClickAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Download" }).ClickAsync());
        return await download.PathAsync();
    }

    private static async Task DropAsync(IPage page, byte[] bytes)
    {
        var files = await page.EvaluateHandleAsync(
            """
            (text) => {
              const files = new DataTransfer();
              files.items.add(new File([Uint8Array.from(atob(text), (c) => c.charCodeAt(0))], "teasel.zip", { type: "application/zip" }));
              return files;
            }
            """,
            Convert.ToBase64String(bytes));
        await page.DispatchEventAsync("h1", "dragover", new { dataTransfer = files });
        await page.DispatchEventAsync("h1", "drop", new { dataTransfer = files });
    }
}
