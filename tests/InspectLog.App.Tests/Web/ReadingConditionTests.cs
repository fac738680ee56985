using System.Net;
using InspectLog.App.Tests.Bench;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>Readings corrected for test leads and for the temperature of a winding, and the rule they are decided
/// by.</summary>
public sealed class ReadingConditionTests
{
    /// <summary>IEC 60034-1: (235 + 20)/(235 + 60) of 9.80 kΩ less 0.3 Ω is 8.471 kΩ.</summary>
    [Fact]
    public async Task Winding_is_referred_to_20_degrees_and_both_values_are_shown()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", "9.80"), ("unit", "kΩ"), ("leads", "0.3"), ("temperature", "60"), ("within", "4"));

        var reading = Reading(app);
        Assert.Equal((9800 - 0.3) * 255 / 295, reading.Conformity!.Value, 1e-9);
        Assert.Contains(reading.Conformity.Contributions, part => part.Name == "winding temperature" && part.StandardUncertainty > 0);
        var page = (await app.PageAsync($"{bench}?check=coil-secondary-resistance")).QuerySelector("#result")!.TextContent.Replace('\u00a0', ' ');
        Assert.Contains("As read 9.8 kΩ, less 0.3 Ω for the test leads, at 60 °C ± 4 °C; referred to 20 °C", page, StringComparison.Ordinal);
        Assert.Contains("8.47", page, StringComparison.Ordinal);
        Assert.Contains("referred to 20", (await app.PageAsync($"{bench}/report")).Body!.TextContent.Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_journal_keeps_decides_the_reading_again()
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-test-").FullName;
        try
        {
            var app = await TestApp.StartAsync(folder: folder);
            var bench = await app.StartInspectionAsync();
            await app.PostForRedirectAsync(
                $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", "9.80; 9.85; 9.82"), ("unit", "kΩ"), ("leads", "0.3"), ("temperature", "60"));
            await app.StopAsync();

            await using var again = await TestApp.StartAsync(folder: folder);
            var reading = Reading(again);
            var limits = Limits.Of(reading.Limits!.Lower, reading.Limits.Upper);
            var decided = ConformityRule.Decide(reading.Reading, limits, DecisionRule.Find(reading.Limits.Rule)!);

            Assert.Equal(reading.Conformity!.Contributions, decided.Contributions);
            Assert.Equal(reading.Conformity with { Contributions = decided.Contributions }, decided);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("leads", "much")]
    [InlineData("leads", "9900")]
    [InlineData("temperature", "warm")]
    [InlineData("temperature", "500")]
    [InlineData("within", "-3")]
    [InlineData("within", "4,5")]
    [InlineData("within", "101")]
    public async Task Correction_that_makes_no_sense_is_refused_and_nothing_typed_is_lost(string field, string typed)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var fields = new Dictionary<string, string>
        {
            ["check"] = "coil-secondary-resistance", ["value"] = "9.8", ["unit"] = "kΩ", ["leads"] = "0.2", ["temperature"] = "40", ["within"] = "3", [field] = typed,
        };

        var answer = await app.PostAsync($"{bench}/readings", [.. fields.Select(one => (one.Key, one.Value))]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections[0].Readings);
    }

    [Fact]
    public async Task Refused_correction_is_shown_open_with_what_is_wrong()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        app.Client.DefaultRequestHeaders.Add("HX-Request", "true");
        app.Client.DefaultRequestHeaders.Add("HX-Current-URL", $"{app.Address}{bench[1..]}?check=coil-secondary-resistance");

        var page = await TestApp.ParseAsync(await app.PostAsync(
            $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", "9.8"), ("unit", "kΩ"), ("temperature", "warm")));

        Assert.NotNull(page.QuerySelector("#measure-temperature-wrong"));
        Assert.Equal("warm", page.QuerySelector("#measure-temperature")!.GetAttribute("value"));
        Assert.True(page.QuerySelector("#correct")!.HasAttribute("open"));
    }

    [Fact]
    public async Task Question_about_a_number_keeps_the_correction()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        // Read with a comma, it could be 50 Ω or 50 kΩ; neither is likely on this check.
        app.Client.DefaultRequestHeaders.Add("HX-Request", "true");
        app.Client.DefaultRequestHeaders.Add("HX-Current-URL", $"{app.Address}{bench[1..]}?check=coil-circuit-resistance");
        var asked = await TestApp.ParseAsync(await app.PostAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "50,000"), ("unit", "Ω"), ("leads", "0.2")));

        Assert.Contains(asked.QuerySelectorAll("[data-question] input"), field => field.GetAttribute("name") == "leads" && field.GetAttribute("value") == "0.2");
    }

    [Fact]
    public async Task Only_windings_take_a_temperature_and_only_resistances_leads()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        Assert.NotNull((await app.PageAsync($"{bench}?check=coil-secondary-resistance")).QuerySelector("#measure-temperature"));
        var circuit = await app.PageAsync($"{bench}?check=coil-circuit-resistance");
        Assert.NotNull(circuit.QuerySelector("#measure-leads"));
        Assert.Null(circuit.QuerySelector("#measure-temperature"));
        Assert.Null((await app.PageAsync($"{bench}?check=supply-voltage")).QuerySelector("#measure-leads"));
    }

    [Fact]
    public async Task Inspection_pins_the_rule_of_its_sheet_and_bench_and_report_say_it()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "0.61"), ("unit", "Ω"));

        Assert.Equal("non-binary", app.Garage.FindVehicle("marigold")!.Inspections[0].How.Rule);
        Assert.Equal("non-binary", Reading(app).Limits!.Rule);
        Assert.Contains("Decided by: non-binary rule", await TextAsync(app, $"{bench}?check=coil-circuit-resistance", "#result"), StringComparison.Ordinal);
        var report = await TextAsync(app, $"{bench}/report", "main");
        Assert.Contains(DecisionRule.NonBinary.Statement, report, StringComparison.Ordinal);
        Assert.Contains("2.28 %", report, StringComparison.Ordinal);
    }

    /// <summary>0.61 Ω lies within 0.6 to 2.0 Ω by less than its uncertainty.</summary>
    [Theory]
    [InlineData(null, Decision.ConditionalPass, "non-binary rule")]
    [InlineData("simple", Decision.Pass, "simple acceptance")]
    [InlineData("guard band 0.83", Decision.Fail, "guard-banded acceptance, guard band 0.83")]
    [InlineData("risk 0.05", Decision.Fail, "guard-banded acceptance, risk 0.05")]
    public async Task Readings_are_decided_by_the_rule_the_inspection_has_pinned(string? rule, Decision decision, string words)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        var number = app.Garage.Append("marigold", "Tess Okafor", _ =>
            [Written.Started() with { Rule = rule }]).OpenInspection!.Number;

        await app.PostForRedirectAsync(
            $"{vehicle}/inspections/{number}/readings", ("check", "coil-circuit-resistance"), ("value", "0.61"), ("unit", "Ω"));

        Assert.Equal(decision, Reading(app).Conformity!.Decision);
        Assert.Contains(words, await TextAsync(app, $"{vehicle}/inspections/{number}?check=coil-circuit-resistance", "#result"), StringComparison.Ordinal);
        Assert.Contains(
            DecisionRule.Find(rule ?? "non-binary")!.Statement, await TextAsync(app, $"{vehicle}/inspections/{number}/report", "main"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Largest_value_of_a_range_is_kept_and_nonsense_refused()
    {
        await using var app = await TestApp.StartAsync();
        (string, string)[] meter = [("name", "Bench meter"), ("unit", "kΩ"), ("accuracy", "0.5%+2"), ("resolution", "0.01")];

        await app.PostForRedirectAsync("/instruments", [.. meter, ("fullScale", "20")]);
        Assert.Equal(("20\u00a0kΩ", 20_000), (app.Garage.Workshop.Instruments[0].Ranges![0].Name, app.Garage.Workshop.Instruments[0].Ranges![0].FullScale));

        foreach (var wrong in new[] { "big", "0", "0.01", "20,5" })
        {
            var answer = await app.PostAsync("/instruments", [.. meter, ("fullScale", wrong)]);
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            Assert.NotNull((await TestApp.ParseAsync(answer)).QuerySelector("#instrument-fullScale-wrong"));
        }
    }

    private static ReadingDecided Reading(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0].Readings[^1].Body;

    private static async Task<string> TextAsync(TestApp app, string address, string selector) =>
        (await app.PageAsync(address)).QuerySelector(selector)!.TextContent.Replace('\u00a0', ' ');
}
