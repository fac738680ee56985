using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>An inspection by the sheet for a search in depth, on the pages.</summary>
public sealed class InDepthSheetTests
{
    private const string Supply = "supply-voltage";

    [Fact]
    public async Task Sheet_is_chosen_when_an_inspection_is_started()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: "4");
        var offered = (await app.PageAsync(vehicle)).QuerySelectorAll("form.start select[name=sheet] option");
        Assert.Equal(BuiltInSheets.All.Select(sheet => (string?)sheet.Id), offered.Select(option => option.GetAttribute("value")));

        var bench = await app.PostForRedirectAsync($"{vehicle}/inspections", ("sheet", BuiltInSheets.IgnitionInDepth));

        var sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionInDepth)!;
        Assert.Equal((sheet.Id, sheet.Sha256, 4), (app.Inspection().How.Sheet, app.Inspection().How.SheetSha256, app.Inspection().How.Cylinders));
        foreach (var check in sheet.Checks)
        {
            var page = await app.PageAsync($"{bench}?check={check.Id}");
            Assert.Contains(check.Cautions[0], page.Body!.TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Bench_tells_what_decides_before_and_after_the_battery_is_read()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);

        var before = await TextAsync(app, $"{bench}?check={Supply}");
        Assert.Contains("Allowed: 11.5 to 13.5 V. Decided by itself while battery voltage is not read.", before, StringComparison.Ordinal);

        await app.MeasureAsync(bench, "battery-voltage", "12.8", "V");
        var known = await TextAsync(app, $"{bench}?check={Supply}");
        Assert.Contains("Allowed: at least 12.3 V. At most 0.5 V below battery voltage, which read 12.80 V.", known, StringComparison.Ordinal);

        await app.MeasureAsync(bench, Supply, "11.6", "V");
        var page = await app.PageAsync($"{bench}?check={Supply}");
        var result = MendedBench.TextOf(page.QuerySelector("#result")!).Replace('\u00a0', ' ');
        Assert.Contains("Fail. 1.200 V ± 0.034 V below battery voltage, 12.80 V.", result, StringComparison.Ordinal);
        Assert.Contains("accuracy in percent, common to both readings", result, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("At least 12.3 V", page.QuerySelector("#result svg")!.OuterHtml.Replace('\u00a0', ' ') + result, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Battery_read_second_says_that_the_supply_is_decided_anew()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        var supply = await app.MeasureAsync(bench, Supply, "11.6", "V");

        var answer = await app.PostAsync($"{bench}/readings", ("check", "battery-voltage"), ("value", "12.8"), ("unit", "V"), ("instrument", "bench"));
        var page = await app.PageAsync(answer.Headers.Location!.ToString());

        Assert.Contains("Decided anew: Supply voltage, fail.", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("was 11.60 V, decided by itself:", (await app.CapturedAsync(bench, supply)).Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Note_with_both_shows_the_decision_both_will_get_and_gets_it()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Battery voltage is 12.8 volts. Supply voltage is 11.6 volts."));
        var note = app.Inspection().Captures[0].Sequence;

        var shown = (await app.CapturedAsync(bench, note)).Replace('\u00a0', ' ');
        await app.PostForRedirectAsync($"{bench}/findings/{note}/confirm-all");

        Assert.Contains("Would be: fail, less than 1 in 100 that it is within its limits. 1.200 V", shown, StringComparison.Ordinal);
        var supply = Assert.Single(app.Inspection().Readings, reading => reading.Body.Check == Supply).Body;
        Assert.Equal((Decision.Fail, "battery-voltage"), (supply.Conformity!.Decision, supply.With!.Check));
    }

    [Fact]
    public async Task Report_tells_the_limit_for_the_length_and_the_one_without()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        await app.MeasureAsync(bench, "lead-length", "480", "mm", "1");
        await app.MeasureAsync(bench, "lead-resistance", "19", "kΩ", "1");
        await app.MeasureAsync(bench, "lead-resistance", "19", "kΩ", "2");

        var report = await TextAsync(app, $"{bench}/report");

        Assert.Contains("39.58 Ω/mm", report, StringComparison.Ordinal);
        Assert.Contains("at most 32.8084 Ω/mm for the lead length, 480.0 mm", report, StringComparison.Ordinal);
        Assert.Contains("Decided by itself while lead length is not read.", report, StringComparison.Ordinal);
        Assert.Contains("One vehicle's service manual of 2004", report, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Closed_inspection_keeps_the_way_the_supply_was_decided_when_it_is_put_right()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        await app.MeasureAsync(bench, "battery-voltage", "12.8", "V");
        var supply = await app.MeasureAsync(bench, Supply, "11.6", "V");
        app.Garage.Append("marigold", "Tess Okafor", now => [new InspectionClosed(now.OpenInspection!.Number)]);

        await app.AmendAsync(bench, supply, ("value", "12.6"));

        var reading = app.Inspection().Readings.Find(one => one.Sequence == supply)!.Body;
        Assert.Equal((Decision.Pass, "battery-voltage"), (reading.Conformity!.Decision, reading.With!.Check));
        Assert.Equal(0.2, reading.Conformity.Value, 9);
    }

    [Fact]
    public async Task Page_of_the_sheet_tells_what_decides_where_the_other_is_read()
    {
        await using var app = await TestApp.StartAsync();

        var text = await TextAsync(app, $"/sheets/{BuiltInSheets.IgnitionInDepth}");

        Assert.Contains("Where battery voltage is read as well, this decides instead: at most 0.5 V below battery voltage.", text, StringComparison.Ordinal);
        Assert.Contains("Where lead length is read as well, this decides instead: at most 32.8084 Ω/mm for the lead length.", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Workings_take_the_lengths_and_both_parts_of_the_coil_circuit_from_the_inspection()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        await app.MeasureAsync(bench, "lead-length", "480", "mm", "2");
        await app.MeasureAsync(bench, "ballast-resistance", "1.5", "Ω");
        await app.MeasureAsync(bench, "coil-primary-resistance", "1.6", "Ω");

        var leads = await app.PageAsync($"{bench}/workings/leads");
        var circuit = await app.PageAsync($"{bench}/workings/coil-circuit");

        Assert.Equal("0.48", leads.QuerySelector("input[name=length2]")!.GetAttribute("value"));
        Assert.Equal("3.1", circuit.QuerySelector("input[name=total]")!.GetAttribute("value"));
        Assert.Equal("1.5", circuit.QuerySelector("input[name=ballast]")!.GetAttribute("value"));
    }

    /// <summary>An inspection by the sheet, in a workshop with a meter of its own.</summary>
    private static async Task<string> StartAsync(TestApp app)
    {
        app.Garage.AppendToWorkshop(
            "Tess Okafor", [new InstrumentAdded(new("bench", "Bench meter", QuantityKind.Voltage, new(0.8, 2), 0.01))]);
        return await app.PostForRedirectAsync($"{await app.AddVehicleAsync()}/inspections", ("sheet", BuiltInSheets.IgnitionInDepth));
    }

    private static async Task<string> TextAsync(TestApp app, string address) =>
        MendedBench.TextOf((await app.PageAsync(address)).Body!).Replace('\u00a0', ' ');
}
