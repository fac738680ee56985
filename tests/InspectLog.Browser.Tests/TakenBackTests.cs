using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>One press by mistake is mended by one press, on a phone, with the network and without; words that were misheard are
/// put right where they stand.</summary>
public sealed class TakenBackTests(BrowserFixture fixture)
    : BenchTests(fixture, new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true })
{
    private ILocator Undo => Page.Locator("#did-undo").GetByRole(AriaRole.Button).Or(Page.Locator("button#did-undo"));

    [Fact]
    public async Task Dropped_finding_comes_back_by_one_press_where_it_was_dropped_and_in_the_stream()
    {
        await OpenAsync("plug-condition", 390, 844);
        await WriteAsync("Plug two wet.");
        var heard = Page.Locator("#heard");
        await heard.GetByRole(AriaRole.Button, new() { NameRegex = new("^Drop") }).ClickAsync();
        await Expect(Page.Locator("#did")).ToHaveTextAsync("Dropped.");
        await Expect(heard).ToHaveCountAsync(0);
        Assert.True(await Undo.IsInViewAsync(), "Undo is out of view");
        Assert.InRange((await Undo.BoundingBoxAsync())!.Height, 44, 60);
        Assert.Empty(await Accessibility.FaultsAsync(Page));

        await Undo.ClickAsync();
        await Expect(heard).ToContainTextAsync("plug 2: wet");
        await Expect(Undo).ToHaveCountAsync(0);
        Assert.Single(Entries("finding-reopened"));

        var item = Page.Locator("#captures > li").First;
        await item.GetByRole(AriaRole.Button, new() { NameRegex = new("^Drop") }).ClickAsync();
        await item.GetByRole(AriaRole.Button, new() { NameRegex = new("^Undo the drop") }).ClickAsync();
        await item.GetByRole(AriaRole.Button, new() { NameRegex = new("^Confirm") }).ClickAsync();
        await Expect(item).ToContainTextAsync("wet, confirmed");
        Assert.Equal((2, 2), (Entries("finding-dropped").Count, Entries("finding-reopened").Count));
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task End_ticked_off_comes_back_with_its_time_from_the_line_and_from_the_strip()
    {
        await OpenAsync("supply-voltage", 390, 844);
        await Page.Locator("#disturbs").GetByRole(AriaRole.Button, new() { Name = "It is so now" }).ClickAsync();
        var end = Page.Locator("#ends-steps .end").First;
        await Page.Locator("#ends-list > summary").ClickAsync();
        await end.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await Expect(Page.Locator("#ends-list > summary")).ToContainTextAsync("No loose ends.");

        await Undo.ClickAsync();
        await Expect(Page.Locator("#ends-list > summary")).ToContainTextAsync("1 loose end");
        await Expect(Page.Locator("#did")).ToContainTextAsync("Open again: Ignition switched on, since ");
        await end.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        var inStrip = Page.Locator("#ends-steps .done").GetByRole(AriaRole.Button, new() { NameRegex = new("^Undo") });
        Assert.Empty(await PressTargets.FaultsAsync(Page));
        Assert.Empty(await Accessibility.FaultsAsync(Page));
        await inStrip.ClickAsync();

        await Expect(Page.Locator("#ends-list > summary")).ToContainTextAsync("1 loose end");
        Assert.Equal((1, 2, 2), (Entries("loose-end-opened").Count, Entries("loose-end-tied").Count, Entries("entry-withdrawn").Count));
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Without_the_network_a_press_is_taken_back_on_the_device_and_an_undo_waits_there()
    {
        await OpenAsync("supply-voltage", 390, 844);
        await Page.Locator("#disturbs").GetByRole(AriaRole.Button, new() { Name = "It is so now" }).ClickAsync();
        var done = Page.Locator("#disturbs").GetByRole(AriaRole.Button, new() { Name = "Switch the ignition off" });
        await Expect(done).ToBeVisibleAsync();
        await Page.Context.SetOfflineAsync(true);
        await done.ClickAsync();
        await Expect(Page.Locator("#did")).ToHaveTextAsync("Kept on this device: “Switch the ignition off”, Supply voltage at the ballast resistor.");
        await Expect(Page.Locator("#unsent-count")).ToHaveTextAsync("1 only on this device");

        await Undo.ClickAsync();
        await Expect(Page.Locator("#unsent-fold")).ToBeHiddenAsync();
        await Expect(Undo).ToHaveCountAsync(0);
        await Page.Context.SetOfflineAsync(false);
        await done.ClickAsync();
        await Expect(Page.Locator("#did")).ToHaveTextAsync("Done: switch the ignition off.");
        Assert.Single(Entries("loose-end-tied"));

        await Page.Context.SetOfflineAsync(true);
        await Undo.ClickAsync();
        await Expect(Page.Locator("#unsent-count")).ToHaveTextAsync("1 only on this device");
        await Page.Context.SetOfflineAsync(false);
        await Expect(Page.Locator("#unsent-fold")).ToBeHiddenAsync(new() { Timeout = 60_000 });
        await Expect(Page.Locator("#ends-list > summary")).ToContainTextAsync("1 loose end", new() { Timeout = 60_000 });
        Assert.Single(Entries("entry-withdrawn"));
    }

    [Fact]
    public async Task Misheard_words_are_put_right_where_they_stand_and_read_anew()
    {
        var sound = await Recordings.SpeakAsync("000", Folder);
        await OpenAsync("coil-secondary-resistance", 390, 844);
        await Page.SendRecordingAsync(await File.ReadAllBytesAsync(sound.Path, TestContext.Current.CancellationToken));
        var item = Page.Locator("#captures > li").First;
        await Expect(item).ToContainTextAsync("10.6\u00a0kΩ");
        var heard = (await item.Locator(".said").TextContentAsync())!.Trim();

        await item.GetByRole(AriaRole.Button, new() { Name = "Change the words of the voice note" }).ClickAsync();
        await Expect(item.GetByLabel("What was said")).ToBeFocusedAsync();
        Assert.Empty(await PressTargets.FaultsAsync(Page));
        await Page.Keyboard.TypeAsync("Coil secondary nine point nine k");
        await item.GetByRole(AriaRole.Button, new() { Name = "Save the change" }).ClickAsync();

        await Expect(item).ToContainTextAsync("9.9\u00a0kΩ");
        await Expect(item).ToContainTextAsync("Heard: “");
        await Expect(item).Not.ToContainTextAsync("10.6\u00a0kΩ");
        await Expect(Page.Locator("#did")).ToHaveTextAsync("Words put right, with 1 finding to settle.");
        await Expect(Page.Locator("#heard")).ToContainTextAsync("9.9\u00a0kΩ");
        Assert.Contains("10.6", Assert.Single(Entries("transcript-made")).GetProperty("body").GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains("10.6", heard, StringComparison.Ordinal);
        Assert.Single(Entries("words-corrected"));
        Assert.Empty(await Accessibility.FaultsAsync(Page));
        Assert.Empty(Watch.Complaints);
    }

    private async Task WriteAsync(string text)
    {
        await Page.Locator("#write > summary").ClickAsync();
        await Page.Locator("#note-text").FillAsync(text);
        await Page.Button("Keep note").ClickAsync();
        await Expect(Page.Locator("#heard")).ToBeVisibleAsync();
    }
}
