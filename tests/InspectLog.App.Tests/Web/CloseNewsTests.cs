using System.Net;
using AngleSharp.Dom;
using InspectLog.Checks;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>Closing that meets something new says so in view and closes nothing.</summary>
public sealed class CloseNewsTests
{
    private static readonly CheckSheet Sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Fact]
    public async Task Form_as_it_was_shown_closes()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        Assert.Equal($"{bench}/report", await app.PostForRedirectAsync($"{bench}/close", await FormAsync(app, bench)));

        Assert.True(Inspection(app).IsClosed);
    }

    [Theory]
    [InlineData("notes", "a note of")]
    [InlineData("loose-ends", "a loose end (air filter off)")]
    public async Task What_came_in_since_is_told_and_nothing_is_closed(string address, string told)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var form = await FormAsync(app, bench);

        await app.PostForRedirectAsync($"{bench}/{address}", ("text", "Air filter off"));
        var answer = await app.PostAsync($"{bench}/close", form);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.Contains(told, page.QuerySelector(".problems")!.TextContent, StringComparison.Ordinal);
        Assert.False(Inspection(app).IsClosed);
    }

    [Fact]
    public async Task Unread_voice_note_that_came_in_is_told()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("The owner was here."));
        var bench = await app.StartInspectionAsync();
        var form = await FormAsync(app, bench);

        using var sound = new ByteArrayContent(Sounds.Tone());
        sound.Headers.ContentType = new("audio/wav");
        await app.Client.PostAsync($"{bench}/recordings", sound, TestContext.Current.CancellationToken);
        var answer = await app.PostAsync($"{bench}/close", form);

        Assert.Contains("a voice note", (await TestApp.ParseAsync(answer)).QuerySelector(".problems")!.TextContent, StringComparison.Ordinal);
        Assert.False(Inspection(app).IsClosed);
    }

    [Fact]
    public async Task Reasons_typed_are_kept_and_the_page_shown_then_closes()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var form = await FormAsync(app, bench);
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "The owner was here"));

        var page = await TestApp.ParseAsync(await app.PostAsync($"{bench}/close", form));

        Assert.Equal(Sheet.Checks.Count, Inspection(app).LeftOut.Count);
        Assert.Equal("Not today", Inspection(app).LeftOut["spark"]);
        await app.PostForRedirectAsync($"{bench}/close", Fields(page));
        Assert.True(Inspection(app).IsClosed);
    }

    [Fact]
    public async Task Something_new_of_another_inspection_is_no_news()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var form = await FormAsync(app, bench);

        await app.PostForRedirectAsync("/vehicles/marigold/inspections", ("technician", "Callum Reid"));
        await app.PostForRedirectAsync($"{bench}/close", form);

        Assert.True(Inspection(app).IsClosed);
    }

    [Fact]
    public async Task Close_pressed_twice_leads_to_the_report_twice()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var form = await FormAsync(app, bench);

        Assert.Equal($"{bench}/report", await app.PostForRedirectAsync($"{bench}/close", form));
        Assert.Equal($"{bench}/report", await app.PostForRedirectAsync($"{bench}/close", form));
    }

    /// <summary>The form as the page has it, with a reason for every check.</summary>
    private static async Task<(string, string)[]> FormAsync(TestApp app, string bench) =>
        [.. Fields(await app.PageAsync($"{bench}/close")).Select(field => (field.Item1, field.Item1.StartsWith("reason-", StringComparison.Ordinal) ? "Not today" : field.Item2))];

    private static (string, string)[] Fields(IParentNode page) =>
        [.. page.QuerySelectorAll("form[action$='/close'] input[name]").Where(input => input.GetAttribute("type") != "checkbox")
            .Select(input => (input.GetAttribute("name")!, input.GetAttribute("value") ?? ""))];

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}
