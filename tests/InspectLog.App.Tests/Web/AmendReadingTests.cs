using System.Net;
using AngleSharp.Html.Dom;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>Readings that are put right where they stand.</summary>
public sealed class AmendReadingTests
{
    private const string Secondary = "coil-secondary-resistance";

    [Fact]
    public async Task Reading_is_put_right_with_the_new_value_alone_and_the_old_one_stays_readable()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");
        var before = app.Inspection().Readings[0].Body;

        var answer = await app.AmendAsync(bench, entry, ("value", "9.1"));

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal($"{bench}?check={Secondary}#item-{entry}", answer.Headers.Location!.ToString());
        var reading = Assert.Single(app.Inspection().Readings);
        Assert.Equal(entry, reading.Sequence);
        Assert.Equal([9100], Values(reading.Body));
        Assert.Equal((before.Instrument, before.Limits), (reading.Body.Instrument, reading.Body.Limits));
        Assert.Equal(9100, reading.Body.Conformity!.Value, 9);
        var text = await app.CapturedAsync(bench, entry);
        Assert.Contains("by Tess Okafor, was 8.40\u00a0kΩ", text, StringComparison.Ordinal);
        Assert.Contains("Earlier version", text, StringComparison.Ordinal);
        Assert.Contains("Coil secondary: 9.10\u00a0kΩ ±", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Place_and_check_can_be_changed_and_the_limits_are_those_of_the_new_check()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", "2");

        await app.AmendAsync(bench, entry, ("cylinder", "3"));
        Assert.Equal(3, app.Inspection().Readings[0].Body.Cylinder);
        Assert.Contains("was Lead resistance, lead 2: 9.40\u00a0kΩ", await app.CapturedAsync(bench, entry), StringComparison.Ordinal);

        await app.AmendAsync(bench, entry, ("check", Secondary), ("cylinder", ""));
        var reading = Assert.Single(app.Inspection().Readings).Body;
        Assert.Equal((Secondary, null), (reading.Check, reading.Cylinder));
        Assert.Equal(
            BuiltInSheets.Find(app.Inspection().How.Sheet)!.Find(Secondary)!.Measurand!.Limits!.Upper, reading.Limits!.Upper);
    }

    [Fact]
    public async Task Place_alone_leaves_the_very_values_and_the_words_as_they_were_given()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, "lead-resistance", "9.40321; 9.41", "kΩ", "2");
        var before = app.Inspection().Readings[0].Body;

        await app.AmendAsync(bench, entry, ("cylinder", "5"));

        var after = Assert.Single(app.Inspection().Readings).Body;
        Assert.Equal(Values(before), Values(after));
        Assert.Equal((5, before.AsGiven), (after.Cylinder, after.AsGiven));
    }

    [Fact]
    public async Task Bracket_is_put_right_as_a_bracket()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", "0.25"), ("stops", "0.30"), ("unit", "mm"));
        var entry = app.Inspection().Readings[0].Sequence;

        await app.AmendAsync(bench, entry, ("stops", "0.35"));
        Assert.Equal(new Bracket(0.25, 0.35), Assert.Single(app.Inspection().Readings).Body.Reading);

        var refused = await app.AmendAsync(bench, entry, ("goes", "0.4"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Equal(new Bracket(0.25, 0.35), app.Inspection().Readings[0].Body.Reading);
    }

    [Theory]
    [InlineData("pickup-air-gap", "0.3", "mm", "12", "0.3048")]
    [InlineData("coil-circuit-resistance", "1.2", "Ω", "45", "45")]
    public async Task Number_with_two_meanings_or_out_of_the_question_is_asked_about(
        string check, string first, string unit, string typed, string meant)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, check, first, unit);

        var asked = await app.AmendAsync(bench, entry, ("value", typed));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        var page = await TestApp.ParseAsync(asked);
        Assert.NotNull(page.QuerySelector("[data-question]"));
        Assert.Contains(page.QuerySelectorAll("button[name=meant]").Cast<IHtmlButtonElement>(), button => button.Value == meant);
        Assert.Equal(typed, ((IHtmlInputElement)page.QuerySelector("input[name=value]")!).Value);
        Assert.Empty(app.Inspection().Readings[0].History.Past);

        await app.AmendAsync(bench, entry, ("value", typed), ("meant", meant));
        Assert.Equal([double.Parse(meant, System.Globalization.CultureInfo.InvariantCulture)], Values(app.Inspection().Readings[0].Body));
    }

    [Fact]
    public async Task Correction_for_test_leads_and_winding_stays()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings",
            ("check", "coil-circuit-resistance"), ("value", "1.3"), ("unit", "Ω"), ("leads", "0.2"), ("temperature", "60"), ("within", "3"));
        var (entry, before) = (app.Inspection().Readings[0].Sequence, (DisplayedReading)app.Inspection().Readings[0].Body.Reading);

        await app.AmendAsync(bench, entry, ("value", "1.4"));

        var after = (DisplayedReading)Assert.Single(app.Inspection().Readings).Body.Reading;
        Assert.Equal([1.4], after.Values);
        Assert.Equal(0.2, after.Leads!.Values[0]);
        Assert.Equal(before.Winding, after.Winding);
    }

    [Fact]
    public async Task Reading_of_a_closed_inspection_is_put_right_by_the_limits_it_was_decided_against()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, "coil-circuit-resistance", "1.2", "Ω");
        var limits = app.Inspection().Readings[0].Body.Limits;
        await app.CloseAsync(bench);
        await app.PostForRedirectAsync(
            "/vehicles/marigold/limits/coil-circuit-resistance", ("lower", "1.0"), ("upper", "1.1"), ("unit", "Ω"), ("source", "Invented manual, page 12"));

        var answer = await app.AmendAsync(bench, entry, ("value", "1.3"));

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        var reading = Assert.Single(app.Inspection().Readings);
        Assert.Equal([1.3], Values(reading.Body));
        Assert.Equal((limits, Decision.Pass), (reading.Body.Limits, reading.Body.Conformity!.Decision));
        Assert.True(reading.History.LastChange!.IsLater);
        Assert.Contains("after closing, was 1.20\u00a0Ω", await app.CapturedAsync(bench, entry), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Result_card_and_script_get_the_same_form_in_place()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");
        Assert.NotNull((await app.PageAsync($"{bench}?check={Secondary}")).QuerySelector($"#result form[action='{bench}/entries/{entry}/amend']"));
        app.Client.DefaultRequestHeaders.Add("HX-Request", "true");
        app.Client.DefaultRequestHeaders.Add("HX-Current-URL", new Uri(app.Address, $"{bench}?check={Secondary}").ToString());

        var form = await app.PageAsync($"{bench}/entries/{entry}/amend?at=result");
        Assert.Equal("8.4", ((IHtmlInputElement)form.QuerySelector($"#amend-result-{entry} input[data-first]")!).Value);
        Assert.Null(form.QuerySelector("main"));

        var refused = await app.PostAsync(
            $"{bench}/entries/{entry}/amend", ("at", "result"), ("check", Secondary), ("value", "about nine"), ("unit", "kΩ"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        var shown = await TestApp.ParseAsync(refused);
        Assert.NotNull(shown.QuerySelector($"#bench #slot-result-{entry} .problems"));
        Assert.Null(shown.QuerySelector($"#slot-captured-{entry} form"));
    }

    [Fact]
    public async Task Wrong_number_is_told_and_the_same_change_twice_is_one()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");

        foreach (var wrong in new[] { 999L, app.Inspection().Number })
        {
            Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/entries/{wrong}/amend", ("value", "9"))).StatusCode);
            Assert.Equal(HttpStatusCode.NotFound, (await app.Client.GetAsync($"{bench}/entries/{wrong}/amend", TestContext.Current.CancellationToken)).StatusCode);
        }

        await app.AmendAsync(bench, entry, ("value", "9.1"));
        var entries = app.CountOfEntries();
        await app.AmendAsync(bench, entry, ("value", "9.1"));

        Assert.Equal(entries, app.CountOfEntries());
    }

    private static IReadOnlyList<double> Values(ReadingDecided reading) => Assert.IsType<DisplayedReading>(reading.Reading).Values;
}
