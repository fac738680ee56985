using InspectLog.Browser.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <content>What is over its time leaves the open check its room, and stays in view above all that opens.</content>
public sealed partial class EndClockTests
{
    [Fact]
    public async Task With_text_twice_as_large_the_check_keeps_half_of_the_window_and_the_alarm_says_all_of_it_in_one_press()
    {
        await SwitchOnAsync();
        await PassAsync(125);
        await Expect(Over).ToBeVisibleAsync();
        await new Window(390, 844, Text: 2).TakeOnAsync(Page);
        await Page.EvaluateAsync("scrollTo({ top: 0, behavior: 'instant' })");
        Assert.InRange(await RoomOfCheckAsync(), 420, 844);
        await AssertAlarmAsync("at the top");

        await Page.EvaluateAsync("scrollTo({ top: 2000, behavior: 'instant' })");
        await AssertAlarmAsync("far down");
        var shown = await ShownOfAlarmAsync();
        await Over.GetByLabel("Show all that is said of Ignition switched on").ClickAsync();
        Assert.True(await ShownOfAlarmAsync() > 2 * shown, "not all of it is shown");
        await Expect(Quiet).ToBeVisibleAsync();
        Assert.InRange((await Over.BoundingBoxAsync())!.Height, 100, 424);
        await Over.GetByLabel("Show all that is said of Ignition switched on").ClickAsync();
        await Expect(Quiet).ToBeHiddenAsync();
        Assert.Empty(Watch.Complaints);
    }

    [Theory]
    [InlineData(390, 844, 1)]
    [InlineData(390, 844, 2)]
    [InlineData(360, 640, 1)]
    [InlineData(844, 390, 1)]
    [InlineData(390, 300, 1)]
    public async Task What_opens_leaves_the_alarm_in_view(int width, int height, int text)
    {
        await SwitchOnAsync();
        await PassAsync(125);
        await Expect(Over).ToBeVisibleAsync();
        await new Window(width, height, text).TakeOnAsync(Page);
        foreach (var panel in new[] { "#measure", "#write" })
        {
            var summary = Page.Locator($"{panel} > summary");
            await summary.ClickAsync();
            await AssertAlarmAsync(panel);
            var top = await Page.Locator($"{panel} .panel").TopAsync();
            Assert.True(top >= await BottomOfAlarmAsync() - 1, $"{panel} begins at {top} px, under the alarm");
            await summary.ClickAsync();
            await Expect(Page.Locator($"{panel}[open]")).ToHaveCountAsync(0);
        }

        await Page.EvaluateAsync("scrollTo({ top: 0, behavior: 'instant' })");
        foreach (var (opens, opened) in new[] { ("All checks", "#sheet"), ("More", "#head-more") })
        {
            await Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = opens, Exact = true }).First.ClickAsync();
            await Expect(Page.Locator(opened)).ToBeVisibleAsync();
            await AssertAlarmAsync(opened);
            Assert.True(await Page.Locator(opened).TopAsync() >= await BottomOfAlarmAsync() - 1, $"{opened} begins under the alarm");
            await Page.Keyboard.PressAsync("Escape");
            await Expect(Page.Locator($"{opened}:popover-open")).ToHaveCountAsync(0);
        }

        Assert.Empty(Watch.Complaints);
    }

    private async Task AssertAlarmAsync(string where)
    {
        Assert.True(await Over.IsInViewAsync(), $"{where}: the alarm is out of view");
        var words = Over.Locator("p .late");
        Assert.True(await words.IsInViewAsync(), $"{where}: its words are out of view");
        Assert.Equal("Over its time: Ignition switched on.", (await words.TextContentAsync())!.Trim());
        Assert.True(
            await words.EvaluateAsync<bool>("one => one.getClientRects()[one.getClientRects().length - 1].bottom <= one.closest('p').getBoundingClientRect().bottom + 2"),
            $"{where}: its words are cut off");
    }

    /// <summary>How high the part of the open check is that can be seen.</summary>
    private Task<double> RoomOfCheckAsync() => Page.EvaluateAsync<double>(
        """
        () => {
          const box = (one) => document.querySelector(one).getBoundingClientRect();
          return Math.min(box("#check").bottom, box("#tools").top) - Math.max(box("#check").top, box("#ends-over").bottom);
        }
        """);

    private Task<double> ShownOfAlarmAsync() => Over.Locator("p").EvaluateAsync<double>("one => one.clientHeight");

    private Task<double> BottomOfAlarmAsync() => Over.EvaluateAsync<double>("one => one.getBoundingClientRect().bottom");
}
