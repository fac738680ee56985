using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>What a phone has room for: the open check keeps its part of a window that lies, and what is beside a button is
/// none.</summary>
public sealed class SmallWindowTests(BrowserFixture fixture)
    : BenchTests(fixture, new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true })
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public async Task On_a_phone_that_lies_the_check_has_room_beside_all_that_is_said(int findings)
    {
        await OpenAsync("plug-condition", 390, 844);
        await Page.Locator("#write > summary").ClickAsync();
        await Page.Locator("#note-text").FillAsync(findings == 1 ? "Plug two wet." : "Plug two wet. Plug four worn.");
        await Page.Button("Keep note").ClickAsync();
        await Expect(Page.Locator("#heard")).ToBeVisibleAsync();
        if (findings == 2)
        {
            // What was dropped has its Undo, beside what is heard next.
            await Page.Locator("#heard").GetByRole(AriaRole.Button, new() { NameRegex = new("^Drop") }).ClickAsync();
            await Expect(Page.Locator("#did-undo")).ToBeVisibleAsync();
        }

        await Page.SetViewportSizeAsync(844, 390);
        await Page.EvaluateAsync("scrollTo({ top: 0, behavior: 'instant' })");

        Assert.True(await Page.Locator("#heard").IsInViewAsync(), "what was heard is out of view");
        Assert.True(await Page.Locator("#heard .heard-confirm button").IsInViewAsync(), "Confirm is out of view");
        Assert.InRange(await Page.EvaluateAsync<double>("document.getElementById('tools').getBoundingClientRect().top - document.getElementById('check').getBoundingClientRect().top"), 190, 390);
        Assert.Empty(await PressTargets.FaultsAsync(Page));
        Assert.Empty(await Window.HiddenAsync(Page));
    }

    [Fact]
    public async Task Finger_beside_Say_records_nothing_and_on_it_does()
    {
        await Page.AddInitScriptAsync("navigator.mediaDevices.getUserMedia = () => { globalThis.asked = (globalThis.asked ?? 0) + 1; return new Promise(() => {}); };");
        await OpenAsync("supply-voltage", 390, 844);
        await Page.EvaluateAsync("""
            addEventListener("pointerdown", ({ target }) => (globalThis.downs ??= []).push(target.closest("#say") !== null), true);
            """);
        var say = (await Page.Locator("#say").BoundingBoxAsync())!;
        var session = await Page.Context.NewCDPSessionAsync(Page);
        foreach (var (x, y) in new[] { (say.X + (say.Width / 2), say.Y + say.Height + 3), (say.X + (say.Width / 2), say.Y - 3), (say.X - 3, say.Y + 20), (say.X + say.Width + 3, say.Y + 20) })
        {
            await TapAsync(session, x, y);
        }

        Assert.Equal(4, await Page.EvaluateAsync<int>("downs.length"));
        Assert.Contains(true, await Page.EvaluateAsync<bool[]>("downs")); // the browser itself takes such a finger for one on Say
        Assert.Equal(0, await Page.EvaluateAsync<int>("globalThis.asked ?? 0"));

        await TapAsync(session, say.X + (say.Width / 2), say.Y + (say.Height / 2));
        await Page.UntilAsync("globalThis.asked === 1");
    }

    private static async Task TapAsync(ICDPSession session, float x, float y)
    {
        var point = new Dictionary<string, object> { ["x"] = x, ["y"] = y, ["radiusX"] = 8, ["radiusY"] = 8 };
        await session.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchStart", ["touchPoints"] = new[] { point } });
        await session.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
    }
}
