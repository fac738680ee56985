using System.Net;
using AngleSharp.Html.Dom;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>A value outside what a check can sensibly read is asked about before it is recorded.</summary>
public sealed class UnlikelyValueTests
{
    [Theory]
    [InlineData("45", new[] { 45.0 })]
    [InlineData("1.2; 45; 1.3", new[] { 1.2, 45, 1.3 })]
    public async Task Typed_value_is_recorded_once_it_is_said_to_be_meant(string typed, double[] values)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        (string, string)[] form = [("check", "coil-circuit-resistance"), ("value", typed), ("unit", "Ω")];

        var asked = await app.PostAsync($"{bench}/readings", form);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        Assert.Empty(Inspection(app).Readings);
        var page = await TestApp.ParseAsync(asked);
        Assert.Contains("45\u00a0Ω: that is unlikely", page.QuerySelector("[data-question]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(typed, ((IHtmlInputElement)page.QuerySelector("#measure-value")!).Value);

        await app.PostForRedirectAsync($"{bench}/readings", [.. Answer(page)]);

        Assert.Equal(values, Assert.IsType<DisplayedReading>(Assert.Single(Inspection(app).Readings).Body.Reading).Values);
    }

    [Fact]
    public async Task Answer_for_one_number_does_not_count_for_another()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var asked = await app.PostAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "46"), ("unit", "Ω"), ("meant", "45"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        Assert.Empty(Inspection(app).Readings);
    }

    [Theory]
    [InlineData("0.01 mm", "0.3")]
    [InlineData("0.3", "3 mm")]
    public async Task Bracket_with_either_end_out_of_the_question_is_asked_about(string goes, string stops)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var asked = await app.PostAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", goes), ("stops", stops), ("unit", "mm"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        Assert.Empty(Inspection(app).Readings);
        var page = await TestApp.ParseAsync(asked);
        Assert.Equal(goes, ((IHtmlInputElement)page.QuerySelector("#gauge-goes")!).Value);

        await app.PostForRedirectAsync($"{bench}/brackets", [.. Answer(page)]);

        Assert.IsType<Bracket>(Assert.Single(Inspection(app).Readings).Body.Reading);
    }

    [Fact]
    public async Task Unlikely_finding_is_left_out_of_confirm_all_and_says_why()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Reading("coil-circuit-resistance", 45), HeardNote.Reading("supply-voltage", 12.4));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/confirm-all");

        Assert.Equal("supply-voltage", Assert.Single(Inspection(app).Readings).Body.Check);
        var card = (await app.PageAsync(bench)).QuerySelector($"#finding-{note}-0")!;
        Assert.Contains("unlikely value", card.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm");
        Assert.Equal(2, Inspection(app).Readings.Count);
    }

    [Fact]
    public async Task Changed_finding_is_asked_about_too()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var change = $"{bench}/findings/{HeardNote.Propose(app, HeardNote.Reading("coil-circuit-resistance", 1.2))}/0/change";
        (string, string)[] form = [("check", "coil-circuit-resistance"), ("value", "45"), ("unit", "Ω")];

        var asked = await app.PostAsync(change, form);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        Assert.Empty(Inspection(app).Readings);
        var meant = (IHtmlButtonElement)(await TestApp.ParseAsync(asked)).QuerySelector("button[name=meant]")!;

        await app.PostForRedirectAsync(change, [.. form, ("meant", meant.Value)]);

        Assert.Equal([45], Assert.IsType<DisplayedReading>(Assert.Single(Inspection(app).Readings).Body.Reading).Values);
    }

    /// <summary>The fields that the question's own form sends when its button is pressed.</summary>
    private static IEnumerable<(string, string)> Answer(IHtmlDocument page)
    {
        var form = page.QuerySelector("[data-question] form")!;
        foreach (var hidden in form.QuerySelectorAll("input[type=hidden]").Cast<IHtmlInputElement>())
        {
            yield return (hidden.Name!, hidden.Value);
        }

        var button = (IHtmlButtonElement)Assert.Single(form.QuerySelectorAll("button[name=meant]"));
        yield return ("meant", button.Value);
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}
