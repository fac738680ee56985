using System.Text.Json;
using System.Text.RegularExpressions;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>The whole corridor once, on real input: from a spoken finding at the microphone to a closed inspection, its
/// report, and a journal that verifies after the program was killed.</summary>
public sealed class MainCorridorTests(BrowserFixture fixture)
{
    /// <summary>"The secondary of the coil is ten point six kilohms." Its meaning stands in the corpus.</summary>
    private const string Sentence = "000";

    private const double ValueInOhms = 10_600;

    [Fact]
    public async Task Spoken_finding_becomes_a_decided_reading_in_a_report_and_a_sound_journal()
    {
        using var folder = new TempFolder();
        var data = Path.Combine(folder.Path, "data");
        var sound = await Recordings.SpeakAsync(Sentence, folder.Path);
        await using (var program = await RunningProgram.ServeAsync(data, hearsFromStart: true))
        await using (var browser = await InstalledChromium.ThatHearsAsync(fixture.Playwright, sound))
        await using (var visit = await Visit.OpenAsync(browser, program))
        {
            var page = visit.Page;
            await page.StartFirstInspectionAsync();
            await page.OpenCoilSecondaryAsync();
            await Look.All[0].TakeOnAsync(page);

            await SayAsync(page, sound);
            await ConfirmAsync(page);
            await AddPhotoAsync(page, Pictures.TakePhoto(folder.Path));
            await CloseAsync(page);

            await Expect(page.Locator("main")).ToContainTextAsync("10.60\u00a0kΩ ±");
            await Expect(page.Locator("main")).ToContainTextAsync("Spark at each plug: Not needed today");
            Assert.True(visit.Watch.Complaints.Count == 0, string.Join("\n", visit.Watch.Complaints));
        }

        var (exitCode, report) = await RunningProgram.RunAsync("verify", data, "--json");
        Assert.True(exitCode == 0, report);
        AssertJournal(data);
    }

    /// <summary>Taps Say, lets the sentence play to its end, and taps again. Even a phone's bar has room for that.</summary>
    private static async Task SayAsync(IPage page, Sound sound)
    {
        var say = page.Locator("#say");
        await say.ClickAsync();
        await Expect(say).ToContainTextAsync("Listening");
        await Expect(page.Locator("#hands-free-start")).ToBeHiddenAsync();
        Assert.Empty(await PressTargets.FaultsAsync(page));
        await Expect(say.Locator(".time")).ToHaveTextAsync(AtLeast(sound.Length));
        await say.ClickAsync();
        await Expect(page.Locator("#captures")).ToContainTextAsync("kept");
    }

    /// <summary>Waits for what was heard and understood, which comes by itself, and confirms it.</summary>
    private static async Task ConfirmAsync(IPage page)
    {
        await Expect(page.Locator("#captures .said")).ToContainTextAsync("10.6");
        var confirm = page.Locator("#heard").GetByRole(AriaRole.Button, new() { Name = "Confirm what was heard last, Coil secondary: 10.6\u00a0kΩ" });
        Assert.True(await confirm.IsInViewAsync(), "the third press, after the two on Say, is not under the thumb");
        await confirm.ClickAsync();

        await Expect(page.Locator("#result")).ToHaveAttributeAsync("data-sentence", new Regex("^Coil secondary: 10\\.60\u00a0kΩ ± .*: pass\\."));
    }

    private static async Task AddPhotoAsync(IPage page, string photo)
    {
        await page.Locator("#photo-photo").SetInputFilesAsync(photo);

        var shown = page.GetByRole(AriaRole.Img, new() { NameRegex = new Regex("Photo of .*: Coil secondary resistance") });
        await Expect(shown).ToHaveJSPropertyAsync("complete", true);
        await Expect(shown).Not.ToHaveJSPropertyAsync("naturalWidth", 0);
    }

    /// <summary>Gives every other check a reason, ties the loose ends, and closes.</summary>
    private static async Task CloseAsync(IPage page)
    {
        await page.Button("More").ClickAsync();
        await page.GetByRole(AriaRole.Navigation, new() { Name = "This inspection" }).GetByText("Close inspection").ClickAsync();
        await page.GetByLabel("Another reason for all that are still empty").FillAsync("Not needed today");
        await page.Button("Put it in").ClickAsync();
        foreach (var end in await page.GetByRole(AriaRole.Checkbox).AllAsync())
        {
            await end.CheckAsync();
        }

        await page.Button("Close inspection").ClickAsync();
        await Expect(page.GetByText("Condition report", new() { Exact = true })).ToBeVisibleAsync();
    }

    private static void AssertJournal(string data)
    {
        var entries = File.ReadLines(Path.Combine(data, "vehicles", "marigold", "journal.jsonl"))
            .Select(line => JsonDocument.Parse(line).RootElement)
            .ToList();
        JsonElement Body(string kind) => entries.Single(entry => entry.GetProperty("kind").GetString() == kind).GetProperty("body");

        var recording = entries.Single(entry => entry.GetProperty("kind").GetString() == "recording-kept").GetProperty("sequence").GetInt64();
        var reading = Body("reading-decided");
        Assert.Equal("coil-secondary-resistance", reading.GetProperty("check").GetString());
        Assert.Equal(ValueInOhms, reading.GetProperty("conformity").GetProperty("value").GetDouble(), 6);
        Assert.Equal("pass", reading.GetProperty("conformity").GetProperty("decision").GetString());
        Assert.Equal(recording, reading.GetProperty("from")[0].GetProperty("recording").GetInt64());
        Assert.Contains("10.6", Body("transcript-made").GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Equal("coil-secondary-resistance", Body("photo-kept").GetProperty("check").GetString());
        Assert.Equal(["inspection-closed", "workshop-noted"], entries[^2..].Select(entry => entry.GetProperty("kind").GetString()));
    }

    /// <summary>The time shown beside Say, once a length has passed; recordings here are under a minute.</summary>
    private static Regex AtLeast(TimeSpan length) =>
        new($"^0:({string.Join('|', Enumerable.Range((int)Math.Ceiling(length.TotalSeconds), 30).Select(second => $"{second:00}"))})$");
}
