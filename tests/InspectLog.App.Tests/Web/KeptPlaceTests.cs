using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace InspectLog.App.Tests.Web;

/// <summary>A form sent without scripts leads back to the check, place and part of the page it was sent from, which says
/// what was done.</summary>
public sealed class KeptPlaceTests
{
    [Fact]
    public async Task Press_leads_back_to_the_check_and_place_it_was_made_at_and_says_once_what_it_did()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var here = $"{bench}?check=lead-resistance&place=3";

        var back = await app.PostForRedirectAsync(
            $"{bench}/observations", ("here", here), ("check", "plug-condition"), ("cylinder", "2"), ("condition", "wet"));

        Assert.Equal($"{here}#observe-title", back);
        Assert.StartsWith("Recorded: Plug condition, plug 2, wet.", Did(await app.PageAsync(back)), StringComparison.Ordinal);
        Assert.Equal("", Did(await app.PageAsync(back)));
    }

    [Fact]
    public async Task Forms_of_the_bench_carry_the_check_and_place_they_were_shown_with()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        // The address names no check: the bench opens the first that is to do, which the next press may change.
        var page = await app.PageAsync(bench);

        var shown = page.QuerySelector("#bench")!.GetAttribute("data-here")!;
        Assert.Contains("?check=spark", shown, StringComparison.Ordinal);
        Assert.All(
            page.QuerySelectorAll<IHtmlFormElement>("#bench form[method=post]"),
            form => Assert.Equal(shown, form.QuerySelector<IHtmlInputElement>("input[name=here]")!.Value));
    }

    [Fact]
    public async Task Place_shown_is_not_followed_to_another_site_or_an_unknown_check()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        foreach (var here in new[] { "https://elsewhere.example/?check=nowhere", "?check=%0d%0a", "nonsense" })
        {
            Assert.Equal($"{bench}#write", await app.PostForRedirectAsync($"{bench}/notes", ("here", here), ("text", "Smells of fuel")));
        }
    }

    [Theory]
    [InlineData("notes", "text", "Smells of fuel", "write", "Note kept.")]
    [InlineData("notes", "text", "Coil secondary 9.4k.", "finding-NOTE-0", "Note kept, with 1 finding to settle.")]
    [InlineData("loose-ends", "text", "Air filter off", "write", "Loose end kept in mind: Air filter off.")]
    [InlineData("checks/spark/leave-out", "reason", "No tester here", null, "Left out: Spark.")]
    public async Task What_was_done_is_said(string action, string field, string text, string? near, string said)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var back = await app.PostForRedirectAsync($"{bench}/{action}", ("here", $"{bench}?check=spark"), (field, text));

        near = near?.Replace("NOTE", $"{app.Inspection().Captures.LastOrDefault()?.Sequence}", StringComparison.Ordinal);
        Assert.Equal($"{bench}?check=spark{(near is null ? "" : $"#{near}")}", back);
        Assert.Equal(said, Did(await app.PageAsync(back)));
    }

    [Fact]
    public async Task What_is_wrong_is_said_in_the_line_too()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.PostAsync($"{bench}/notes", ("text", ""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal("Not recorded. Write a few words first.", Did(await TestApp.ParseAsync(answer)));
    }

    [Fact]
    public async Task Change_leads_back_to_the_check_it_was_opened_from_at_the_finding_that_waits_next()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Coil secondary 9.4k. Supply voltage 11.9 V."));
        var note = app.Garage.FindVehicle("marigold")!.Inspections[0].WordedNotes.Single();
        Assert.Equal(2, note.Proposals!.Count);
        var here = $"{bench}?check=lead-resistance&place=3";
        var change = await app.PageAsync($"{bench}/findings/{note.Sequence}/0/change?here={Uri.EscapeDataString(here)}");
        var kept = change.QuerySelector<IHtmlInputElement>("input[name=here]")!.Value;
        Assert.Equal($"{here}#finding-{note.Sequence}-0", change.QuerySelector("main .buttons a")!.GetAttribute("href"));

        var back = await app.PostForRedirectAsync(
            $"{bench}/findings/{note.Sequence}/0/change",
            ("here", kept), ("check", "coil-secondary-resistance"), ("cylinder", ""), ("value", "9.6"), ("unit", "kΩ"));

        Assert.Equal($"{here}#finding-{note.Sequence}-1", back);
        Assert.StartsWith("Confirmed: Coil secondary.", Did(await app.PageAsync(back)), StringComparison.Ordinal);
    }

    private static string Did(IHtmlDocument page) => page.QuerySelector("#did[role=status]")!.TextContent;
}
