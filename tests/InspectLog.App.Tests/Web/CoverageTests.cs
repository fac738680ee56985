using System.Net;
using System.Text;
using InspectLog.Checks;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>What ± covers is chosen when an inspection is started, or stands in its sheet, and holds for all of it.</summary>
public sealed class CoverageTests
{
    [Fact]
    public async Task Inspection_started_at_99_percent_decides_and_words_its_readings_so()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, "99");
        await ReadAsync(app, bench);

        var body = app.Inspection().Readings[0].Body;
        Assert.Equal(0.99, app.Inspection().How.Coverage);
        Assert.Equal(0.99, body.Conformity!.Evaluation!.Coverage);
        Assert.Equal(
            Estimate.Of(body.Reading, Evaluation.Covering(99)).ExpandedUncertainty, body.Conformity.ExpandedUncertainty, 1e-12);

        var page = (await app.PageAsync($"{bench}?check=coil-circuit-resistance")).Body!.TextContent;
        Assert.Contains("at 99 %", page, StringComparison.Ordinal);
        Assert.Contains("which covers 99 %", page, StringComparison.Ordinal);

        var report = (await app.PageAsync($"{bench}/report")).Body!.TextContent;
        Assert.Contains(" at 99 %: ", report, StringComparison.Ordinal);
        Assert.Contains("half the middle 99 % of what the value may be", report, StringComparison.Ordinal);
        Assert.Contains("at most about 0.5\u00a0%", report, StringComparison.Ordinal);
    }

    // Classically, since figures share an instrument: k is 2.576 at 99 %, and 2 as usual.
    [Fact]
    public async Task Workings_say_and_use_the_coverage_of_the_inspection()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, "99");
        await ReadAsync(app, bench);
        var u = app.Inspection().Readings[0].Body.Conformity!.StandardUncertainty;

        var worked = await app.PageAsync($"{bench}/workings/coil-circuit?total=1.5&ballast=0.75&rest=12&running=14");
        var current = new Checks.Derived.Figure("Current", 8, "A") { Expanded = 2.575829 * 12 / (1.5 * 1.5) * u };

        Assert.Contains($"Current {current.Text}", worked.QuerySelectorAll(".result").Select(result => result.TextContent));
        Assert.Contains("The ± behind a figure covers 99 %", worked.Body!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("95.45")]
    public async Task Usual_coverage_is_not_named_and_leaves_the_journal_as_it_was(string chosen)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, chosen);
        await ReadAsync(app, bench);

        var body = app.Inspection().Readings[0].Body;
        Assert.Null(app.Inspection().How.Coverage);
        Assert.Equal(Evaluation.Default, body.Conformity!.Evaluation);
        Assert.DoesNotContain(" at 95", RecordWords.Sentence(body, BuiltInSheets.All[0].Find(body.Check)!), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Coverage_that_is_not_in_the_list_is_refused_beside_its_field()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        var answer = await app.PostAsync($"{vehicle}/inspections", ("coverage", "100"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(
            "Choose what ± covers from the list.",
            (await TestApp.ParseAsync(answer)).QuerySelector("#start-coverage-wrong")!.TextContent);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections);
    }

    // A difference of two readings is decided at it as well, and the list of what would help speaks of the same.
    [Fact]
    public async Task Reading_decided_with_another_covers_the_same()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.PostForRedirectAsync(
            $"{await app.AddVehicleAsync()}/inspections", ("sheet", BuiltInSheets.IgnitionInDepth), ("coverage", "95"));
        await app.PostForRedirectAsync($"{bench}/readings", ("check", "battery-voltage"), ("value", "12.6"), ("unit", "V"));
        await app.PostForRedirectAsync($"{bench}/readings", ("check", "supply-voltage"), ("value", "12.3"), ("unit", "V"));

        var supply = app.Inspection().Readings.Single(one => one.Body.Check == "supply-voltage").Body;
        Assert.NotNull(supply.With);
        Assert.Equal(0.95, supply.Conformity!.Evaluation!.Coverage);
        Assert.Contains(
            " at 95 % below battery voltage",
            RecordWords.Sentence(supply, BuiltInSheets.Find(BuiltInSheets.IgnitionInDepth)!.Find("supply-voltage")!), StringComparison.Ordinal);
    }

    private static async Task<string> StartAsync(TestApp app, string coverage) =>
        await app.PostForRedirectAsync($"{await app.AddVehicleAsync()}/inspections", ("coverage", coverage));

    private static Task ReadAsync(TestApp app, string bench) => app.PostForRedirectAsync(
        $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.5"), ("unit", "Ω"));
}
