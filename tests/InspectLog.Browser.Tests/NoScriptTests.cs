using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>The bench with scripts switched off, on a phone: the same presses lead to the same.</summary>
public sealed class NoScriptTests(BrowserFixture fixture)
    : BenchTests(fixture, new() { JavaScriptEnabled = false, ViewportSize = new() { Width = 390, Height = 844 } })
{
    [Fact]
    public async Task Measure_of_another_check_opens_its_field()
    {
        await OpenAsync("plug-condition", 390, 844);

        await Page.Locator(".bar a.tool").Filter(new() { HasText = "Measure" }).ClickAsync();

        await Expect(Page.Locator("#measure-value")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Every_place_is_ticked_in_one_press()
    {
        await OpenAsync("lead-condition", 390, 844);

        await Page.Locator("#observe-cylinder").GetByRole(AriaRole.Link, new() { Name = "All 6" }).ClickAsync();

        await Expect(Page.Locator("#observe-cylinder input:checked")).ToHaveCountAsync(6);
        await Expect(Page.Locator("[data-tick-all]").First).ToBeHiddenAsync();
        await Page.Locator("button[name=condition][value=good]").ClickAsync();
        await Expect(Page.Locator("#did")).ToHaveTextAsync("Recorded at 6 places: good.");
    }

    [Fact]
    public async Task Chosen_photo_is_seen_before_it_is_sent()
    {
        await OpenAsync("plug-condition", 390, 844);
        var field = Page.Locator("#photo-photo");

        await field.SetInputFilesAsync(Pictures.TakePhoto(Folder));

        Assert.Equal("1", await field.EvaluateAsync<string>("field => getComputedStyle(field).opacity"));
        Assert.True(await field.IsInViewAsync(), "the field is out of view");
        await Page.Button("Send").ClickAsync();
        await Expect(Page.Locator("#captures img")).ToHaveCountAsync(1);
        Assert.Empty(await PressTargets.FaultsAsync(Page));
    }

    [Fact]
    public async Task Note_leads_to_its_first_finding()
    {
        await OpenAsync("plug-condition", 390, 844);
        await Page.Locator("#write > summary").ClickAsync();
        await Page.Locator("#note-text").FillAsync("Plug two wet. Coil secondary 9.4k.");
        await Page.Button("Keep note").ClickAsync();

        await Expect(Page.Locator("#did")).ToHaveTextAsync("Note kept, with 2 findings to settle.");
        await Expect(Page.Locator("#write[open]")).ToHaveCountAsync(0);
        Assert.True(await Page.Locator("#captures [id^=finding-]").First.IsInViewAsync(), "the first finding is out of view");
    }
}
