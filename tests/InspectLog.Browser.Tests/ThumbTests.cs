using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>The bench for one thumb, on a phone: how many presses things take, each made where the target is, and that
/// nothing moves under the thumb.</summary>
public sealed class ThumbTests(BrowserFixture fixture)
    : BenchTests(fixture, new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true })
{
    private int _presses;

    [Fact]
    public async Task Finding_is_confirmed_right_above_the_bar_and_nothing_moves()
    {
        await OpenAsync("cap-contacts", 390, 844);
        await OpenAsync("spark", 390, 844);
        await OpenAsync("cap-contacts", 390, 844); // its cautions are seen by now, and are a line
        await AssertForGlovesAsync();
        await PressAsync(Page.Locator("#write > summary"));
        await Expect(Page.Locator("#note-text")).ToBeFocusedAsync();
        await Page.Keyboard.TypeAsync("Tower three corroded. Plug two wet. Plug four worn.");
        await PressAsync(Page.Button("Keep note"));
        var heard = Page.Locator("#heard");
        await Expect(heard).ToContainTextAsync("tower 3: corroded");
        await Expect(heard).ToBeFocusedAsync();
        await Expect(Page.Locator("#stream-pointer")).ToHaveTextAsync("3 findings to settle");
        Assert.Equal(0, await Page.EvaluateAsync<double>("scrollY"));
        Assert.InRange(await TopAsync("#say") - await BottomAsync("#heard"), 8, 24);
        Assert.InRange(await BottomAsync(".observe .cells"), 0, await TopAsync("#tools")); // the whole check is above the bar
        var before = await BoxesAsync();

        // Pressed twice, as a thumb does: the second press comes as the next finding stands there already.
        await heard.Locator(".heard-confirm button").EvaluateAsync("""
            async (button) => {
              button.click();
              await new Promise((done) => document.addEventListener("bench:fresh", () => setTimeout(done, 20), { once: true }));
              document.querySelector("#heard .heard-confirm button").click();
            }
            """);
        await Expect(Page.Locator("#did")).ToContainTextAsync("Confirmed: Cap contacts, tower 3, corroded.");
        await Expect(heard).ToContainTextAsync("plug 2: wet");
        Assert.Equal(before, await BoxesAsync());
        Assert.Single(Entries("observation-made"));
        await Page.UntilAsync("!('heardWaits' in document.body.dataset)");

        await PressAsync(heard.GetByRole(AriaRole.Button, new() { NameRegex = new("^Confirm") }));
        await Expect(heard).ToContainTextAsync("plug 4: worn");
        Assert.Equal(2, Entries("observation-made").Count);

        await Page.UntilAsync("!('heardWaits' in document.body.dataset)");
        await Page.SetViewportSizeAsync(360, 640);
        var confirm = heard.GetByRole(AriaRole.Button, new() { NameRegex = new("^Confirm") });
        Assert.True(await confirm.IsInViewAsync(), "Confirm is out of view");
        Assert.InRange((await heard.BoundingBoxAsync())!.Height, 44, 64);
        await Expect(heard.GetByRole(AriaRole.Button, new() { NameRegex = new("^Drop") })).ToBeHiddenAsync();
        await PressAsync(heard.GetByLabel("Show all of what was heard last"));
        await PressAsync(heard.GetByRole(AriaRole.Button, new() { NameRegex = new("^Drop") }));
        await Expect(heard).ToHaveCountAsync(0);
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Above_a_keyboard_value_unit_and_the_press_that_keeps_it_are_in_view()
    {
        await OpenAsync("lead-resistance", 390, 844);
        await MeasureAboveKeyboardAsync("#measure", "9.4");
        await Expect(Page.Locator("#did")).ToContainTextAsync("lead 2");

        await OpenAsync("plug-gap", 390, 844);
        await MeasureAboveKeyboardAsync("#gauge", "0.75", "0.80");
        await Expect(Page.Locator("#did")).ToContainTextAsync("plug 2");
        Assert.Equal(2, Entries("reading-decided").Count);

        // The meter is one press away from the gauges.
        await PressAsync(Page.GetByRole(AriaRole.Link, new() { Name = "Meter instead" }));
        await Expect(Page.Locator("#measure-value")).ToBeFocusedAsync();
        await Expect(Page.Locator("#gauge-goes")).ToBeHiddenAsync();
        await PressAsync(Page.Locator("#measure > summary"));
        await Expect(Page.Locator("#measure-value")).ToBeHiddenAsync();
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Six_places_another_check_and_a_photo_take_two_presses_each()
    {
        // Asked for long before the press: on a busy machine the driver's wish to be told can come after the press.
        var chooser = new TaskCompletionSource<IFileChooser>();
        Page.FileChooser += (_, opened) => chooser.TrySetResult(opened);
        await OpenAsync("lead-condition", 390, 844);
        await PressAsync(Page.Locator("#observe-cylinder").GetByRole(AriaRole.Button, new() { Name = "All 6" }));
        var before = await BoxesAsync();
        await PressAsync(Page.Locator("button[name=condition][value=good]"));
        await Expect(Page.Locator("#did")).ToHaveTextAsync("Recorded at 6 places: good.");
        Assert.Equal(before, await BoxesAsync());
        Assert.Equal((2, 0), (_presses, await Page.EvaluateAsync<double>("scrollY")));

        _presses = 0;
        await PressAsync(Page.Button("All checks"));
        await PressAsync(Page.Locator("#sheet").GetByRole(AriaRole.Link).Filter(new() { HasText = "Plug condition" }));
        await Expect(Page.Locator("#check-title")).ToHaveTextAsync("Plug condition");
        await Expect(Page.Locator("#sheet")).ToBeHiddenAsync();
        Assert.Equal(2, _presses);
        await PressAsync(Page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Previous check") }));
        await Expect(Page.Locator("#check-title")).ToHaveTextAsync("Plug gap");
        await PressAsync(Page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Following check") }));
        await Expect(Page.Locator("#check-title")).ToHaveTextAsync("Plug condition");

        _presses = 0;
        await PressAsync(Page.Locator("#observe-cylinder label.cell").Nth(3));
        await PressAsync(Page.Locator(".photo-form label.tool"));
        await (await chooser.Task.WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken)).SetFilesAsync(Pictures.TakePhoto(Folder));
        await Expect(Page.Locator("#photo-kept .line")).ToHaveTextAsync("Photo kept: plug 4.");
        Assert.Equal(2, _presses);

        _presses = 0;
        var photo = Page.Locator("#captures > li").First;
        await photo.EvaluateAsync("one => one.scrollIntoView({ block: 'center', behavior: 'instant' })");
        await PressAsync(photo.Locator("summary", new() { HasText = "Remove" }));
        await PressAsync(photo.GetByRole(AriaRole.Button, new() { Name = "Not sharp" }));
        await Expect(photo).ToContainTextAsync("Taken back: not sharp.");
        Assert.Equal(2, _presses);
        Assert.Empty(Watch.Complaints);
    }

    /// <summary>Opens what measures, as the keyboard comes up, and presses place and Keep reading where they are.</summary>
    private async Task MeasureAboveKeyboardAsync(string tool, params string[] values)
    {
        await PressAsync(Page.Locator(".measure-place summary:visible"));
        await Page.SetViewportSizeAsync(390, 300);
        await Page.UntilAsync("innerHeight === 300");
        var fields = Page.Locator($"{tool} input.value");
        await Expect(fields.First).ToBeFocusedAsync();
        await Expect(fields).ToHaveCountAsync(values.Length);
        for (var at = 0; at < values.Length; at++)
        {
            await PressAsync(fields.Nth(at));
            await Page.Keyboard.TypeAsync(values[at]);
        }

        Assert.True(await Page.Locator($"{tool} select[name=unit]").IsInViewAsync(), "the unit is out of view");
        await PressAsync(Page.Locator(tool).Locator("label.cell").Nth(1));
        await PressAsync(Page.Locator(tool).GetByRole(AriaRole.Button, new() { Name = "Keep reading" }));
    }

    /// <summary>Four tools side by side, each large enough for a glove and far enough from the next.</summary>
    private async Task AssertForGlovesAsync()
    {
        var tools = await Page.EvaluateAsync<double[][]>(
            "[...document.querySelectorAll('.bar .tool')].filter(one => one.checkVisibility()).map(one => one.getBoundingClientRect()).map(box => [box.left, box.right, box.height])");
        Assert.Equal(4, tools.Length);
        Assert.All(tools, tool => Assert.True(tool[2] >= 56 && tool[1] - tool[0] >= 48, $"{tool[1] - tool[0]} by {tool[2]} px"));
        Assert.All(tools.Zip(tools.Skip(1)), pair => Assert.True(pair.Second[0] - pair.First[1] >= 8, "too near to each other"));
    }

    /// <summary>Presses at a place on the screen, and counts it: the driver's own press may move the page first.</summary>
    private async Task PressAsync(ILocator target)
    {
        _presses++;
        await Expect(target).ToBeVisibleAsync();
        Assert.True(await target.IsInViewAsync(), $"{target} is out of view");
        var box = (await target.BoundingBoxAsync())!;
        await Page.Mouse.ClickAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }

    /// <summary>Where all that can be pressed and seen in the open check stands.</summary>
    private Task<string> BoxesAsync() => Page.EvaluateAsync<string>(
        "JSON.stringify([...document.querySelectorAll('#check :is(button, label, a, summary)')].filter(one => one.checkVisibility()).map(one => one.getBoundingClientRect()).filter(box => box.bottom < 590).map(box => [box.left, box.top].map(Math.round)))");

    private Task<double> TopAsync(string selector) => Page.Locator(selector).First.TopAsync();

    private Task<double> BottomAsync(string selector) =>
        Page.Locator(selector).First.EvaluateAsync<double>("one => one.getBoundingClientRect().bottom");
}
