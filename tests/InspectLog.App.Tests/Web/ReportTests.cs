using System.Net;
using AngleSharp.Dom;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>The report's page, and what is left out of it.</summary>
public sealed class ReportTests
{
    private const string Private = "Remind me to ring Ms Rowntree";

    [Fact]
    public async Task Note_is_left_out_in_one_press_on_the_report_and_taken_in_again()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await NotedAsync(app);

        await PressAsync(app, $"{bench}/report", "Leave out of the report");

        var left = await app.PageAsync($"{bench}/report");
        Assert.Contains("1 note is left out of this report.", left.QuerySelector("#notes")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(Private, left.Body!.TextContent, StringComparison.Ordinal);

        await PressAsync(app, $"{bench}/report", "Take into the report");
        Assert.Contains(Private, (await app.PageAsync($"{bench}/report")).QuerySelector("#notes")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Note_is_left_out_in_one_press_on_the_bench_which_stays_open()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await NotedAsync(app);

        await PressAsync(app, bench, "Leave out of the report");

        Assert.True(Inspection(app).Captures[0].History.IsLeftOutOfReport);
        Assert.Contains(Private, (await app.PageAsync(bench)).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_left_out_can_be_chosen_after_closing()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await NotedAsync(app);
        await app.PostForRedirectAsync(
            $"{bench}/close", [.. Checks.BuiltInSheets.All[0].Checks.Select(check => ($"reason-{check.Id}", "Not today"))]);
        Assert.True(Inspection(app).IsClosed);

        await PressAsync(app, $"{bench}/report", "Leave out of the report");

        Assert.True(Inspection(app).Captures[0].History.IsLeftOutOfReport);
    }

    [Fact]
    public async Task Choice_pressed_twice_is_recorded_once()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await NotedAsync(app);
        var entry = Inspection(app).Captures[0].Sequence;
        await app.PostForRedirectAsync($"{bench}/entries/{entry}/report", ("shown", "false"));
        var next = app.Garage.FindVehicle("marigold")!.NextSequence;

        await app.PostForRedirectAsync($"{bench}/entries/{entry}/report", ("shown", "false"));

        Assert.Equal(next, app.Garage.FindVehicle("marigold")!.NextSequence);
    }

    [Fact]
    public async Task Only_notes_and_photos_are_left_out_and_the_form_has_to_say_which_way()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await NotedAsync(app);
        await app.PostForRedirectAsync($"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.2"), ("unit", "Ω"));
        var (note, reading) = (Inspection(app).Captures[0].Sequence, Inspection(app).Readings[0].Sequence);

        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/entries/{reading}/report", ("shown", "false"))).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.PostAsync($"{bench}/entries/{note}/report", ("shown", "perhaps"))).StatusCode);
        Assert.False(Inspection(app).Captures[0].History.IsLeftOutOfReport);
    }

    [Fact]
    public async Task Open_inspection_says_so_and_what_needs_attention_comes_before_all_checks()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/observations", ("check", "cap-contacts"), ("cylinder", "2"), ("condition", "corroded"));

        var page = await app.PageAsync($"{bench}/report");

        Assert.Contains("This inspection is not closed", page.QuerySelector("header .card")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("To see to", page.QuerySelector("main section h2")!.TextContent);
        Assert.Equal("#check-cap-contacts", page.QuerySelector("#attention a")!.GetAttribute("href"));
        Assert.NotNull(page.QuerySelector("#check-cap-contacts"));
    }

    [Fact]
    public async Task Running_head_is_a_style_of_the_report_with_car_and_day()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var style = (await app.PageAsync($"{bench}/report")).QuerySelector("link[media=print]")!.GetAttribute("href")!;
        var answer = await app.Client.GetAsync(style, TestContext.Current.CancellationToken);

        Assert.Equal("text/css", answer.Content.Headers.ContentType!.MediaType);
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("\"Marigold\"", text, StringComparison.Ordinal);
        Assert.Contains("counter(pages)", text, StringComparison.Ordinal);
    }

    private static async Task<string> NotedAsync(TestApp app)
    {
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", Private));
        return bench;
    }

    /// <summary>Presses the button of that name as a browser without scripts would.</summary>
    private static async Task PressAsync(TestApp app, string page, string button)
    {
        var form = (await app.PageAsync(page)).QuerySelectorAll("form")
            .Single(one => one.QuerySelector("button")?.TextContent.StartsWith(button, StringComparison.Ordinal) == true);
        await app.PostForRedirectAsync(
            form.GetAttribute("action")!,
            [.. form.QuerySelectorAll("input").Select(input => (input.GetAttribute("name")!, input.GetAttribute("value") ?? ""))]);
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}
