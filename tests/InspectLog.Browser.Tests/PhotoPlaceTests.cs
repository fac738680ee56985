using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>A photo goes where the person stands, says so in view, and is put right in two presses.</summary>
public sealed class PhotoPlaceTests(BrowserFixture fixture) : ListeningTests(fixture)
{
    /// <summary>"Cylinder six has no spark."</summary>
    private const string NoSpark = "049";

    [Fact]
    public async Task Photo_goes_to_the_ticked_lead_says_so_and_leaves_the_tick()
    {
        var page = await OpenLeadsAsync();
        await Tick(page, 2).CheckAsync();
        await Tick(page, 1).UncheckAsync();

        await TakePhotoAsync(page);

        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: lead 2.");
        await Expect(Kept(page)).ToBeInViewportAsync();
        await Expect(page.Locator("#announcements")).ToHaveTextAsync("Photo kept: lead 2.");
        await Expect(Tick(page, 2)).ToBeCheckedAsync();
        await Expect(Tick(page, 1)).Not.ToBeCheckedAsync();
        Assert.Equal(2, Assert.Single(Bodies("photo-kept")).GetProperty("cylinder").GetInt32());
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Photo_of_two_ticked_leads_is_kept_and_asked_about_with_tiles()
    {
        var page = await OpenLeadsAsync();
        await Look.All[0].TakeOnAsync(page);
        await Tick(page, 2).CheckAsync();
        await Expect(Tick(page, 1)).Not.ToBeCheckedAsync(); // it was only proposed
        await Tick(page, 1).CheckAsync();

        await TakePhotoAsync(page);

        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: Lead condition. Of which lead?");
        Assert.Empty(await PressTargets.FaultsAsync(page));
        var faults = await Accessibility.FaultsAsync(page);
        Assert.True(faults.Count == 0, string.Join("\n\n", faults));
        await page.Locator("#photo-kept").GetByRole(AriaRole.Button, new() { Name = "lead 2" }).ClickAsync();
        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: lead 2.");
        await Expect(page.Locator("#photo-kept summary")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Photo_after_a_spoken_finding_goes_to_it_and_after_the_next_tick_to_that()
    {
        var page = await OpenLeadsAsync();
        await SayHandsFreeAsync(page, await SpeakAsync(NoSpark));
        await Expect(page.Locator("#captures .card")).ToContainTextAsync("cylinder 6");

        await TakePhotoAsync(page);
        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: Spark, cylinder 6.");
        await Expect(page.Locator("#captures > li").First).ToContainTextAsync("Shows “");

        await Tick(page, 1).UncheckAsync();
        await Tick(page, 3).CheckAsync();
        await TakePhotoAsync(page);
        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: lead 3.");
    }

    [Fact]
    public async Task Photo_is_moved_and_removed_in_two_presses_each_and_the_removal_undone()
    {
        var page = await OpenLeadsAsync();
        await Look.All[0].TakeOnAsync(page);
        await TakePhotoAsync(page);
        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: lead 1.");

        await page.Locator("#photo-kept summary").ClickAsync();
        await page.Locator("#photo-kept").GetByRole(AriaRole.Button, new() { Name = "lead 4" }).ClickAsync();
        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: lead 4.");

        var item = page.Locator("#captures > li").First;
        await item.GetByText("Move", new() { Exact = false }).First.ClickAsync();
        await item.GetByRole(AriaRole.Button, new() { Name = "lead 6" }).ClickAsync();
        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: lead 6.");

        await item.Locator("summary", new() { HasText = "Remove" }).ClickAsync();
        Assert.Empty(await PressTargets.FaultsAsync(page));
        await item.EvaluateAsync("item => item.scrollIntoView({ block: 'center' })");
        var faults = await Accessibility.FaultsAsync(page);
        Assert.True(faults.Count == 0, string.Join("\n\n", faults));
        await item.GetByRole(AriaRole.Button, new() { Name = "Not sharp" }).ClickAsync();
        await Expect(Kept(page)).ToHaveTextAsync("Photo taken back: lead 6.");
        await Expect(item).ToContainTextAsync("Taken back: not sharp.");

        await item.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: lead 6.");
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Photo_is_sent_to_a_place_without_scripts()
    {
        using var folder = new TempFolder();
        await using var program = await RunningProgram.ServeAsync(Path.Combine(folder.Path, "data"));
        await using var visit = await Visit.OpenAsync(Fixture.Browser, program, new() { JavaScriptEnabled = false });
        var page = visit.Page;
        await page.StartFirstInspectionAsync();
        await page.OpenCheckAsync("Lead condition", "Lead condition");

        await page.Locator("#photo-photo").SetInputFilesAsync(Pictures.TakePhoto(folder.Path));
        await page.GetByLabel("Photo of which lead").SelectOptionAsync("3");
        await page.Button("Send").ClickAsync();

        await Expect(Kept(page)).ToHaveTextAsync("Photo kept: lead 3.");
    }

    private async Task<IPage> OpenLeadsAsync()
    {
        var page = await OpenAsync(Fixture.Browser);
        await page.OpenCheckAsync("Lead condition", "Lead condition");
        return page;
    }

    private static async Task TakePhotoAsync(IPage page)
    {
        using var folder = new TempFolder();
        var photos = page.Locator("#captures img");
        var before = await photos.CountAsync();
        await page.Locator("#photo-photo").SetInputFilesAsync(Pictures.TakePhoto(folder.Path));
        await Expect(photos).ToHaveCountAsync(before + 1);
    }

    /// <summary>Sends an utterance as hands-free listening does.</summary>
    private static async Task SayHandsFreeAsync(IPage page, Sound sound) => await page.EvaluateAsync(
        """
        async (wav) => {
          const { base, check } = document.getElementById("bench").dataset;
          const body = Uint8Array.from(atob(wav), (sign) => sign.charCodeAt(0));
          await fetch(`${base}/recordings?handsFree=true&check=${check}`, { method: "POST", headers: { "Content-Type": "audio/wav" }, body });
        }
        """,
        Convert.ToBase64String(await File.ReadAllBytesAsync(sound.Path, TestContext.Current.CancellationToken)));

    private static ILocator Tick(IPage page, int lead) => page.Locator($"form[action$='/observations'] input[value='{lead}']");

    private static ILocator Kept(IPage page) => page.Locator("#photo-kept .line");
}
