using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>After a press the page stays where it was, and says in view what happened.</summary>
public sealed class KeptPlaceTests(BrowserFixture fixture) : BenchTests(fixture)
{
    /// <summary>Pixels by which what was pressed may have moved.</summary>
    private const double Still = 4;

    /// <summary>A phone, a phone with its keyboard up, and a laptop.</summary>
    public static TheoryData<int, int> Windows => new() { { 390, 844 }, { 390, 450 }, { 1280, 900 } };

    [Theory]
    [MemberData(nameof(Windows))]
    public async Task Pressing_conditions_and_keeping_notes_leaves_the_page_where_it_was(int width, int height)
    {
        await OpenAsync("plug-condition", width, height);
        var worn = Page.Locator("button[name=condition][value=worn]");

        await PressAsync(worn, "Recorded: Plug condition, plug 1, worn.");
        await Expect(worn).ToBeFocusedAsync();
        await PressAsync(worn, "Recorded: Plug condition, plug 2, worn.");

        await Page.Locator("#write > summary").ClickAsync();
        await Page.Locator("#note-text").FillAsync("The seal ring of plug 3 is missing");
        var keep = Page.Button("Keep note");
        var scroll = await ScrollAsync();
        await keep.ClickAsync();
        await Expect(Page.Locator("#did")).ToHaveTextAsync("Note kept.");
        await Expect(Page.Locator("#write > summary")).ToBeFocusedAsync();
        await Expect(Page.Locator("#write[open]")).ToHaveCountAsync(0);
        await Expect(Page.Locator("#note-text")).ToHaveValueAsync("");
        Assert.True(await Page.Locator("#write > summary").IsInViewAsync(), "what was pressed is out of view");
        Assert.True(height < 480 || Math.Abs(await ScrollAsync() - scroll) <= Still); // a low window's bar goes with the page
        await Page.EvaluateAsync("scrollTo({ top: document.body.scrollHeight, behavior: 'instant' })"); // nothing lies half under the bar
        Assert.Empty(await Accessibility.FaultsAsync(Page));
    }

    [Theory]
    [MemberData(nameof(Windows))]
    public async Task Withdrawing_without_a_reason_says_so_where_one_looks(int width, int height)
    {
        await OpenAsync("plug-condition", width, height);
        await Page.Locator("button[name=condition][value=worn]").ClickAsync();
        await Expect(Page.Locator("#captures > li")).ToHaveCountAsync(1);
        var fold = Page.Locator("#captures details[id^=withdraw]").First;
        await fold.Locator("summary").First.ClickAsync();

        await fold.GetByRole(AriaRole.Button).Last.ClickAsync();

        var said = fold.Locator(".problems");
        await Expect(said).ToBeFocusedAsync();
        Assert.True(await said.IsInViewAsync(), "what is wrong is out of view");
        await Expect(fold.Locator("[aria-invalid=true]")).ToHaveCountAsync(1);
        await Expect(Page.Locator("#did")).ToContainTextAsync("Not recorded. Say why");
        Assert.True(await Page.Locator("#did").IsInViewAsync(), "the line is out of view");
    }

    [Theory]
    [MemberData(nameof(Windows))]
    public async Task Leaving_out_and_tying_leave_the_page_where_it_was(int width, int height)
    {
        await OpenAsync("plug-condition", width, height);
        await Page.Locator("button[name=condition][value=worn]").ClickAsync();
        await Page.Locator("#ends-list > summary").ClickAsync();
        await PressAsync(Page.Locator("#ends .end").First.GetByRole(AriaRole.Button, new() { Name = "Done" }), "Done:", stays: false);

        await OpenAsync("ignition-timing", width, height);
        await Page.Locator("details[id^=leave-out] > summary").ClickAsync();
        await Page.GetByLabel("Why it is left out").FillAsync("No lamp here");
        await PressAsync(Page.Button("Leave it out"), "Left out:", stays: false);
        await Expect(Page.Locator("#check-title")).ToHaveTextAsync("Ignition timing");
    }

    [Theory]
    [InlineData(390, 844)]
    [InlineData(1280, 900)]
    public async Task Changing_a_finding_comes_back_to_the_check_and_place_with_the_next_finding_in_view(int width, int height)
    {
        var sound = await Recordings.SpeakAsync(["000", "006"], TimeSpan.FromSeconds(1), Folder);
        await OpenAsync("lead-resistance&place=3", width, height);
        await Page.SendRecordingAsync(await File.ReadAllBytesAsync(sound.Path, TestContext.Current.CancellationToken));
        await Expect(Page.Locator("[id^=finding-]")).ToHaveCountAsync(2);
        var change = Page.Locator("[id^=finding-] a[href*='/change']").First;
        await change.ScrollIntoViewIfNeededAsync();
        var before = await ScrollAsync();
        await change.ClickAsync();
        await Expect(Page.Locator("#change-value")).ToBeVisibleAsync();

        await Page.Button("Record it so").ClickAsync();

        await Expect(Page.Locator("#bench")).ToHaveAttributeAsync("data-here", new System.Text.RegularExpressions.Regex("check=lead-resistance&place=3$"));
        await Expect(Page.Locator("#did")).ToContainTextAsync("Confirmed:");
        var next = Page.Locator("[id^=finding-] form[action$='/confirm'] button");
        await Expect(next).ToHaveCountAsync(1);
        await Page.UntilAsync("document.activeElement.id.startsWith('finding-')");
        Assert.True(await next.IsInViewAsync(), "the finding that waits is out of view");
        Assert.InRange(await ScrollAsync() - before, -300, 300);

        await PressAsync(next, "Confirmed: ", stays: false);
        Assert.Empty(Watch.Complaints);
    }

    /// <summary>Presses something and sees that it stands where it stood, and that the line says what was done.</summary>
    private async Task PressAsync(ILocator target, string said, bool stays = true)
    {
        // Well above the bar, as a person would bring it.
        await target.EvaluateAsync("one => one.scrollIntoView({ block: 'center', behavior: 'instant' })");
        var top = await target.TopAsync();
        var scroll = await ScrollAsync();

        await target.ClickAsync();

        await Expect(Page.Locator("#did[role=status]")).ToContainTextAsync(said);
        await Page.UntilAsync("document.querySelector('.htmx-request, .htmx-settling') === null");
        Assert.True(await Page.Locator("#did").IsInViewAsync(), "the line is out of view");
        if (stays)
        {
            Assert.InRange(await target.TopAsync() - top, -Still, Still);
        }
        else
        {
            // What was pressed is gone: the page stands where it stood, but for what the answer put above or took away.
            // Where the page ends with what became shorter, it can stand no lower than its end.
            var end = await Page.EvaluateAsync<bool>("innerHeight + scrollY >= document.documentElement.scrollHeight - 1");
            Assert.InRange(await ScrollAsync() - scroll, end ? -400 : -200, 200);
        }
    }

    /// <summary>How far the page and its columns are scrolled in all.</summary>
    private Task<double> ScrollAsync() => Page.EvaluateAsync<double>(
        "scrollY + ['check', 'stream'].reduce((sum, id) => sum + document.getElementById(id).scrollTop, 0)");
}
