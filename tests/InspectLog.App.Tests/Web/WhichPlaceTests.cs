using System.Net;
using AngleSharp.Html.Dom;
using InspectLog.Inspecting;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Inspecting.Proposals;

namespace InspectLog.App.Tests.Web;

/// <summary>A finding of a check that is done per place is not confirmed before its place is known.</summary>
public sealed class WhichPlaceTests
{
    [Fact]
    public async Task Place_is_asked_and_a_press_on_it_confirms()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Reading("lead-resistance", 9000));

        var card = (await app.PageAsync(bench)).QuerySelector($"#finding-{note}-0")!;
        Assert.Contains("Which lead?", card.TextContent, StringComparison.Ordinal);
        var form = (IHtmlFormElement)card.QuerySelector($"form[action='{bench}/findings/{note}/0/confirm']")!;
        var tiles = form.QuerySelectorAll("button[name=cylinder]").OfType<IHtmlButtonElement>().ToList();
        Assert.Equal(["1", "2", "3", "4", "5", "6", "all"], tiles.Select(tile => tile.Value));
        Assert.Equal("All six", tiles[^1].TextContent);

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm", ("cylinder", "4"));

        Assert.Equal(4, Assert.Single(app.Inspection().Readings).Body.Cylinder);
        Assert.Contains("Lead resistance, lead 4", await app.CapturedAsync(bench, note), StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_of_them_are_confirmed_at_once_and_each_can_be_mended()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Seen("lead-condition", "good"));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm", ("cylinder", "all"));

        Assert.Equal([1, 2, 3, 4, 5, 6], app.Inspection().Observations.Select(seen => seen.Body.Cylinder));
        var page = await app.PageAsync(bench);
        Assert.All(app.Inspection().Observations, seen => Assert.NotNull(page.QuerySelector($"#item-{note} #change-captured-{seen.Sequence}")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("7")]
    [InlineData("99")]
    [InlineData("two")]
    public async Task No_place_or_a_wrong_one_is_refused_at_the_finding(string cylinder)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Reading("lead-resistance", 9000));

        var answer = await app.PostAsync($"{bench}/findings/{note}/0/confirm", ("cylinder", cylinder));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var problem = (await TestApp.ParseAsync(answer)).QuerySelector($"#finding-{note}-0 .problems")!;
        Assert.Contains("Choose a lead from 1 to 6", problem.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Inspection().Readings);
    }

    [Fact]
    public async Task Change_without_a_place_or_with_all_of_them_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Reading("lead-resistance", 9000));

        foreach (var cylinder in new[] { "", "all", "9" })
        {
            var answer = await app.PostAsync(
                $"{bench}/findings/{note}/0/change", ("check", "lead-resistance"), ("cylinder", cylinder), ("value", "9"), ("unit", "kΩ"));
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        }

        Assert.Empty(app.Inspection().Readings);
    }

    [Fact]
    public async Task Confirm_all_leaves_it_open_and_says_which_are_confirmed()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(
            app,
            HeardNote.Reading("lead-resistance", 9000),
            HeardNote.Reading("supply-voltage", 12.4),
            HeardNote.Reading("coil-secondary-resistance", 9400));
        var button = (await app.PageAsync(bench)).QuerySelector($"form[action='{bench}/findings/{note}/confirm-all'] button")!;
        Assert.Equal("Confirm the 2 that are clear", button.TextContent);

        await app.PostForRedirectAsync($"{bench}/findings/{note}/confirm-all");

        Assert.DoesNotContain(app.Inspection().Readings, reading => reading.Body.Check == "lead-resistance");
        Assert.Contains("Which lead?", await app.CapturedAsync(bench, note), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hands_free_answer_asks_which()
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Reading("lead-resistance", 9000));
        var inspection = app.Inspection();
        var scene = BenchScene.Of(app.Garage.FindVehicle("marigold")!, SheetLibrary.BuiltIn, inspection.Number)!;
        var cards = ProposalCards.Of(inspection.FindNote(note)!, scene, app.Garage.Workshop);

        Assert.EndsWith(" Which lead?", ReadBack.Understood(cards), StringComparison.Ordinal);
        Assert.Equal("Left open: Lead resistance: 9\u00a0kΩ. Which lead?", ReadBack.Confirmed([], [], cards));
    }
}
