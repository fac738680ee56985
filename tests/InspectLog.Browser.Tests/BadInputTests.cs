using System.Text.RegularExpressions;
using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>What a person sees when what they gave cannot be used: what is wrong, what to do, and their own words
/// still there.</summary>
public sealed class BadInputTests(BrowserFixture fixture) : BenchTests(fixture)
{
    [Theory]
    [InlineData("nine", "is not a number")]
    [InlineData("9.4 mm", "mm")]
    [InlineData("1.2.3", "do not fit one number")]
    [InlineData("", "Type the value")]
    public async Task Value_that_is_none_is_refused_and_stays_in_the_field(string typed, string reason)
    {
        await Page.OpenCoilSecondaryAsync();

        await Page.MeasureAsync(typed);

        await Expect(Page.Locator("#measure-value-wrong")).ToContainTextAsync(reason);
        await Expect(Page.Locator("#measure-value")).ToBeFocusedAsync();
        await Expect(Page.GetByLabel("Value", new() { Exact = true })).ToHaveValueAsync(typed);
        Assert.Equal("", string.Join("\n", await Accessibility.FaultsAsync(Page)));
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Value_that_could_mean_two_things_is_asked_about()
    {
        await Page.OpenCheckAsync("Supply", "Supply voltage at the ballast resistor");

        // Neither 25 V nor 25 000 V is likely on this check, so nothing tells which was meant.
        await Page.MeasureAsync("25,000");

        await Expect(Page.Locator("[data-question]")).ToBeFocusedAsync();
        Assert.Equal("", string.Join("\n", await Accessibility.FaultsAsync(Page)));

        // The multimeter that is taken to have been used cannot have shown the other.
        await Page.Locator("[data-question]").GetByRole(AriaRole.Button, new() { NameRegex = new Regex(@"^25\sV") }).ClickAsync();
        await Expect(Page.Locator("#result .decision")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Gauges_the_wrong_way_round_are_refused()
    {
        await Page.OpenCheckAsync("Air gap", "Pickup air gap");
        await Page.Locator("#gauge > summary").ClickAsync();
        await Page.GetByLabel("Largest that goes").FillAsync("0.4");
        await Page.GetByLabel("Smallest that stops").FillAsync("0.3");
        await Page.Locator("#gauge").GetByRole(AriaRole.Button, new() { Name = "Keep reading" }).ClickAsync();

        await Expect(Page.Locator("#gauge-stops-wrong")).ToContainTextAsync("The gauge that stops must be");
        await Expect(Page.GetByLabel("Largest that goes")).ToHaveValueAsync("0.4");
    }

    [Fact]
    public async Task Limits_the_wrong_way_round_are_refused()
    {
        await Page.GotoAsync("/vehicles/marigold/limits/coil-secondary-resistance");
        await Page.GetByLabel("Lower limit").FillAsync("13");
        await Page.GetByLabel("Upper limit").FillAsync("8");
        await Page.GetByLabel(new Regex("come from")).FillAsync("A page of the handbook");
        await Page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("limits") }).First.ClickAsync();

        await Expect(Page.Locator(".problems")).ToContainTextAsync("The upper limit must lie above the lower limit.");
        Assert.Equal("", string.Join("\n", await Accessibility.FaultsAsync(Page)));
    }

    [Fact]
    public async Task File_that_is_no_photo_is_not_sent()
    {
        await Page.Locator("#photo-photo").SetInputFilesAsync(new FilePayload { Name = "notes.txt", MimeType = "text/plain", Buffer = "notes"u8.ToArray() });

        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("\"notes.txt\" is neither JPEG nor PNG");
    }

    [Fact]
    public async Task File_that_only_calls_itself_a_photo_is_refused()
    {
        await Page.Locator("#photo-photo").SetInputFilesAsync(new FilePayload { Name = "car.jpg", MimeType = "image/jpeg", Buffer = "no photo"u8.ToArray() });

        await Expect(Page.Locator("#tools .problems")).ToContainTextAsync("car.jpg");
        await Expect(Page.Locator("#tools .problems")).ToBeFocusedAsync(); // by then it was brought into view
        Assert.Equal("", string.Join("\n", await Accessibility.FaultsAsync(Page)));
    }

    [Fact]
    public async Task Photo_sent_after_a_refused_one_is_kept_and_nothing_is_said_to_go_on()
    {
        var input = Page.Locator("#photo-photo");
        await input.SetInputFilesAsync(new FilePayload { Name = "car.jpg", MimeType = "image/jpeg", Buffer = "no photo"u8.ToArray() });
        await Expect(Page.Locator("#tools .problems")).ToContainTextAsync("car.jpg");

        await input.SetInputFilesAsync(Pictures.TakePhoto(Folder));

        await Expect(Page.Locator("#captures img")).ToHaveCountAsync(1);
        await Expect(Page.Locator("#sending")).ToHaveTextAsync("");
    }

    [Fact]
    public async Task Value_that_is_unlikely_is_recorded_once_it_is_said_to_be_meant()
    {
        await Page.OpenCheckAsync("Supply", "Supply voltage at the ballast resistor");

        await Page.MeasureAsync("24 V");

        await Expect(Page.Locator("[data-question]")).ToBeFocusedAsync();
        await Expect(Page.Locator("#result .decision")).ToHaveCountAsync(0);
        Assert.Equal("", string.Join("\n", await Accessibility.FaultsAsync(Page)));
        await Page.Locator("[data-question]").GetByRole(AriaRole.Button).ClickAsync();
        await Expect(Page.Locator("#result .decision")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task File_that_is_no_sound_is_not_sent()
    {
        await ChooseSoundAsync(new FilePayload { Name = "song.wav", MimeType = "audio/wav", Buffer = "no sound"u8.ToArray() });

        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("\"song.wav\" could not be read as sound.");
    }

    [Fact]
    public async Task Recording_of_eleven_minutes_is_not_sent()
    {
        var sound = Recordings.BeSilent(TimeSpan.FromMinutes(11), Folder);

        await ChooseSoundAsync(sound.Path);

        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("longer than ten minutes");
    }

    [Fact]
    public async Task Silence_is_kept_and_no_words_are_invented()
    {
        var sound = Recordings.BeSilent(TimeSpan.FromSeconds(4), Folder);

        await ChooseSoundAsync(sound.Path);

        await Expect(Page.Locator("#captures")).ToContainTextAsync("No speech was heard in it. The recording is kept.");
        await Expect(Page.Locator("#captures .said")).ToHaveCountAsync(0);
        Assert.Empty(Watch.Complaints);
    }

    [Fact]
    public async Task Microphone_that_is_not_allowed_is_explained()
    {
        await Page.Locator("#say").ClickAsync();

        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("then press Say again");
        await Expect(Page.Locator("#say")).ToHaveAttributeAsync("data-state", "ready");
    }

    [Theory]
    [InlineData("/vehicles/nobody")]
    [InlineData("/vehicles/marigold/inspections/999")]
    [InlineData("/no/such/page")]
    public async Task Page_that_is_not_there_says_so_and_leads_back(string address)
    {
        var answer = await Page.GotoAsync(address);

        Assert.Equal(404, answer!.Status);
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToBeVisibleAsync();
        await Expect(Page.GetByRole(AriaRole.Link, new() { Name = "Garage" }).First).ToBeVisibleAsync();
        Assert.Equal("", string.Join("\n", await Accessibility.FaultsAsync(Page)));
    }

    private async Task ChooseSoundAsync(FilePayload file)
    {
        await Page.Locator("#write > summary").ClickAsync();
        await Page.GetByLabel("A recording from a file").SetInputFilesAsync(file);
    }

    private async Task ChooseSoundAsync(string path)
    {
        await Page.Locator("#write > summary").ClickAsync();
        await Page.GetByLabel("A recording from a file").SetInputFilesAsync(path);
    }
}
