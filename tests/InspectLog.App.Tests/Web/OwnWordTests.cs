using System.Net;
using System.Net.Http.Headers;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>The workshop's own words: added and removed on their page, remembered from a correction, and understood in
/// the next voice note.</summary>
public sealed partial class OwnWordTests
{
    private const string PlugCondition = "ignition-breakerless/plug-condition";
    private const string LeadCondition = "ignition-breakerless/lead-condition";

    [Fact]
    public async Task Word_that_was_added_is_shown_with_its_meaning_and_who_added_it()
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        app.Client.DefaultRequestHeaders.Add("Cookie", "technician=Tess%20Okafor");

        Assert.Equal("/words", await AddAsync(app, "  sparkler ", PlugCondition, ""));
        await AddAsync(app, "cooked", LeadCondition, "burnt");

        var rows = (await app.PageAsync("/words")).QuerySelectorAll("tbody tr");
        Assert.Equal(["sparkler", "cooked"], rows.Select(row => row.QuerySelector("th")!.TextContent));
        Assert.Contains("Plug condition", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("burnt, of Lead condition", rows[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Tess Okafor", rows[1].TextContent, StringComparison.Ordinal);
        Assert.NotNull(rows[1].QuerySelector("time[datetime]"));
    }

    [Fact]
    public async Task Words_are_still_there_after_a_restart()
    {
        await using var app = await TestApp.StartAsync();
        await AddAsync(app, "sparkler", PlugCondition, "");
        await app.StopAsync();

        await using var again = await TestApp.StartAsync(folder: app.Folder);

        Assert.Equal("sparkler", Assert.Single(again.Garage.Workshop.Words).Body.Phrase);
    }

    [Fact]
    public async Task Removed_word_is_gone_and_can_be_added_with_another_meaning()
    {
        await using var app = await TestApp.StartAsync();
        await AddAsync(app, "sparkler", PlugCondition, "");
        var form = (await app.PageAsync("/words")).QuerySelector<IHtmlFormElement>("tbody form")!;

        Assert.Equal("/words", await app.PostForRedirectAsync(form.GetAttribute("action")!));

        Assert.Empty(app.Garage.Workshop.Words);
        Assert.Empty((await app.PageAsync("/words")).QuerySelectorAll("tbody tr"));
        await AddAsync(app, "sparkler", "ignition-breakerless/spark", "");
    }

    [Fact]
    public async Task Removing_a_word_that_is_not_there_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        await AddAsync(app, "sparkler", PlugCondition, "");
        var number = app.Garage.Workshop.Words[0].Number;
        await app.PostForRedirectAsync($"/words/{number}/remove");

        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"/words/{number}/remove")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync("/words/x/remove")).StatusCode);
    }

    [Theory]
    [InlineData("", PlugCondition, "", "phrase", "Type the word")]
    [InlineData("plug 3", PlugCondition, "", "phrase", "Leave figures out")]
    [InlineData("nine point four", PlugCondition, "", "phrase", "Numbers and units")]
    [InlineData("the", PlugCondition, "", "phrase", "everyday words")]
    [InlineData("rotor blade", PlugCondition, "", "phrase", "already knows")]
    [InlineData("one two three four five sparklers", PlugCondition, "", "phrase", "5 words")]
    [InlineData("<b>", PlugCondition, "", "phrase", "letters, spaces and hyphens")]
    [InlineData("sparkler", LeadCondition, "", "phrase", "already stands for Plug condition")]
    [InlineData("sparkler", PlugCondition, "", "phrase", "already, with this meaning")]
    [InlineData("frobnitz", "", "", "check", "Choose the check")]
    [InlineData("frobnitz", "ignition-breakerless/nothing", "", "check", "Choose the check")]
    [InlineData("frobnitz", PlugCondition, "burnt", "condition", "Plug condition knows good, sooty")]
    [InlineData("frobnitz", "ignition-breakerless/supply-voltage", "burnt", "condition", "has no conditions")]
    public async Task Word_that_makes_no_sense_is_refused_with_what_to_do(
        string phrase, string check, string condition, string field, string message)
    {
        await using var app = await TestApp.StartAsync();
        await AddAsync(app, "sparkler", PlugCondition, "");

        var answer = await app.PostAsync("/words", ("phrase", phrase), ("check", check), ("condition", condition));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.Contains(message, page.GetElementById($"word-{field}-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(phrase, page.QuerySelector<IHtmlInputElement>("#word-phrase")!.Value);
        Assert.Single(app.Garage.Workshop.Words);
    }

    [Fact]
    public async Task Page_is_linked_from_the_check_sheets_and_about()
    {
        await using var app = await TestApp.StartAsync();

        foreach (var address in (string[])["/sheets", "/sheets/ignition-breakerless", "/about"])
        {
            Assert.NotNull((await app.PageAsync(address)).QuerySelector("main a[href='/words']"));
        }
    }

    private static (string, string)[] Correction(params (string, string)[] more) =>
        [("check", "plug-condition"), ("cylinder", "2"), ("condition", "worn"), .. more];

    private static Task<string> AddAsync(TestApp app, string phrase, string check, string condition) =>
        app.PostForRedirectAsync("/words", ("phrase", phrase), ("check", check), ("condition", condition));

    /// <summary>Sends a recording and waits for the note of that number to be read.</summary>
    private static async Task<VoiceNote> HeardAsync(TestApp app, string bench, int number)
    {
        using var content = new ByteArrayContent(Sounds.Tone());
        content.Headers.ContentType = new MediaTypeHeaderValue("audio/wav");
        var answer = await app.Client.PostAsync($"{bench}/recordings", content, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return await Eventually.GetAsync(() => Inspection(app).VoiceNotes.OrderBy(note => note.Sequence).Skip(number - 1)
            .FirstOrDefault(note => note.Proposals is not null));
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}
