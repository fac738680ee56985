using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>What takes few presses: writing from the bar, ticking every place, and a photo's caption.</summary>
public sealed class WriteTests(BrowserFixture fixture) : BenchTests(fixture)
{
    [Theory]
    [InlineData(390, 844)]
    [InlineData(1280, 900)]
    public async Task Note_is_typed_without_scrolling_and_its_first_finding_is_in_view_after_it(int width, int height)
    {
        await OpenAsync("plug-condition", width, height);
        var write = Page.Locator("#write > summary");
        Assert.True(await write.IsInViewAsync(), "the press that writes is out of view");

        await PressWhereItIsAsync(write);
        await Expect(Page.Locator("#note-text")).ToBeFocusedAsync();
        Assert.True(await Page.Locator("#note-text").IsInViewAsync(), "the field is out of view");
        Assert.Empty(await PressTargets.FaultsAsync(Page));
        Assert.Empty(await Accessibility.FaultsAsync(Page));
        await Page.Keyboard.TypeAsync("Plug two wet. Coil secondary 9.4k.");
        Assert.Equal(0, await Page.EvaluateAsync<double>("scrollY"));
        await Page.Button("Keep note").ClickAsync();

        await Expect(Page.Locator("#did")).ToHaveTextAsync("Note kept, with 2 findings to settle.");
        await Expect(Page.Locator("#write[open]")).ToHaveCountAsync(0);
        var first = width < 768 ? Page.Locator("#heard") : Page.Locator("#captures [id^=finding-]").First;
        await Expect(first).ToBeFocusedAsync();
        Assert.True(await first.IsInViewAsync(), "the first finding is out of view");
        Assert.True(width >= 768 || await Page.EvaluateAsync<double>("scrollY") == 0, "the page moved");
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Note_that_is_begun_while_a_reading_is_on_its_way_stays_open_and_in_focus()
    {
        await OpenAsync("lead-resistance", 390, 844);
        var answer = new TaskCompletionSource();
        await Page.RouteAsync("**/readings", async route =>
        {
            await answer.Task;
            await route.ContinueAsync();
        });
        await Page.MeasureAsync("9.4");
        await Page.Locator("#write > summary").ClickAsync();
        await Expect(Page.Locator("#note-text")).ToBeFocusedAsync();
        await Page.Keyboard.TypeAsync("The boot is ");

        answer.SetResult();
        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(1);
        await Page.UntilAsync("document.querySelector('.htmx-request, .htmx-settling') === null");
        await Page.Keyboard.TypeAsync("stiff");

        await Expect(Page.Locator("#note-text")).ToHaveValueAsync("The boot is stiff");
        await Expect(Page.Locator("#note-text")).ToBeFocusedAsync();
        await Expect(Page.Locator("#measure[open]")).ToHaveCountAsync(0);
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task What_was_begun_in_one_form_outlives_what_is_recorded_with_another()
    {
        await OpenAsync("lead-condition", 1280, 900);
        await Page.Locator("#write > summary").ClickAsync();
        await Expect(Page.Locator("#note-text")).ToBeFocusedAsync();
        await Page.Keyboard.TypeAsync("The boot of two is stiff");

        await Page.Locator("button[name=condition][value=good]").ClickAsync();
        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(1);
        await Page.UntilAsync("document.querySelector('.htmx-request, .htmx-settling') === null");
        await Expect(Page.Locator("#note-text")).ToHaveValueAsync("The boot of two is stiff");
        await Page.OpenCheckAsync("Lead resistance", "Lead resistance");

        await Expect(Page.Locator("#note-text")).ToHaveValueAsync("The boot of two is stiff");
        await Page.Locator("#write").EvaluateAsync("fold => fold.open = true");
        await Page.Button("Keep note").ClickAsync();
        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(2);
        await Expect(Page.Locator("#note-text")).ToHaveValueAsync("");
        Assert.Equal("lead-resistance", Assert.Single(Entries("note-written")).GetProperty("body").GetProperty("check").GetString());
    }

    [Fact]
    public async Task Line_of_findings_to_settle_leads_to_the_first_of_them()
    {
        await OpenAsync("plug-condition", 390, 844);
        await Page.Locator("#write > summary").ClickAsync();
        await Page.Locator("#note-text").FillAsync("Plug two wet.");
        await Page.Button("Keep note").ClickAsync();
        await Expect(Page.Locator("#stream-pointer a")).ToHaveTextAsync("1 finding to settle");
        await Page.EvaluateAsync("scrollTo({ top: 0, behavior: 'instant' })");

        await Page.Locator("#stream-pointer a").ClickAsync();

        await Page.UntilAsync("scrollY > 0");
        Assert.True(await Page.Locator("#captures [id^=finding-]").First.IsInViewAsync(), "the finding is out of view");
    }

    [Fact]
    public async Task Every_place_is_ticked_in_one_press_and_recorded_in_the_next()
    {
        await OpenAsync("lead-condition", 390, 844);
        var ticked = Page.Locator("form[action$='/observations'] input[name=cylinder]:checked");
        var all = Page.Locator("#observe-cylinder").GetByRole(AriaRole.Button, new() { Name = "All 6" });
        await all.ClickAsync();
        await Expect(ticked).ToHaveCountAsync(6);
        await all.ClickAsync();
        await Expect(ticked).ToHaveCountAsync(0);
        await all.ClickAsync();

        await Page.Locator("button[name=condition][value=good]").ClickAsync();

        await Expect(Page.Locator("#did")).ToHaveTextAsync("Recorded at 6 places: good.");
        Assert.Equal(6, Entries("observation-made").Count);
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Photo_kept_is_said_once_and_its_caption_is_typed_at_once()
    {
        await OpenAsync("spark", 390, 844);
        await Page.Locator("#photo-photo").SetInputFilesAsync(Pictures.TakePhoto(Folder));
        await Expect(Page.Locator("#photo-kept .line")).ToContainTextAsync("Photo kept:");
        await Expect(Page.Locator("#did")).ToHaveTextAsync("");

        await Page.Locator("#captures details[id$=-caption] > summary").ClickAsync();

        await Expect(Page.Locator("#captures input[name=caption]")).ToBeFocusedAsync();
        Assert.True(await Page.Locator("#captures input[name=caption]").IsInViewAsync(), "the field is out of view");
        await Page.Keyboard.TypeAsync("Boot of the coil lead");
        await Page.Button("Keep caption").ClickAsync();
        await Expect(Page.Locator("#captures > li").First).ToContainTextAsync("Boot of the coil lead");
    }

    /// <summary>Presses at a place on the screen: the driver's own press may move the page first.</summary>
    private async Task PressWhereItIsAsync(ILocator target)
    {
        var box = (await target.BoundingBoxAsync())!;
        await Page.Mouse.ClickAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }
}
