using System.Net;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>What the papers of an instrument do to its readings.</summary>
public sealed partial class InstrumentTests
{
    [Fact]
    public async Task Reading_has_the_range_the_correction_the_air_and_that_the_meter_was_overdue()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync("/instruments", [.. Whole.Select(one => one.Name is "due" or "calibrated" ? (one.Name, "2020-03-03") : one)]);

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "55"), ("unit", "Ω"), ("ambient", "33"), ("meant", "55"));

        var recorded = app.Garage.FindVehicle("marigold")!.Inspections[0].Readings[0].Body;
        Assert.Equal(("bench-meter", "Bench meter, 200\u00a0Ω range"), (recorded.Instrument!.Id, recorded.Instrument.Name));
        var reading = Assert.IsType<DisplayedReading>(recorded.Reading);

        // 0.5 % of 55, 0.1 % of 200, two counts of 0.1 and 0.05; half as much again for five degrees.
        Assert.Equal((0.275 + 0.2 + 0.2 + 0.05) * 1.5, reading.Accuracy.HalfWidth(55, 0.1), 12);
        Assert.Equal(-0.05, reading.Correction!.Value, 12);
        var result = (await app.PageAsync($"{bench}?check=coil-circuit-resistance")).QuerySelector("#result")!.TextContent;
        Assert.Contains("As read 55\u00a0Ω, less 0.05\u00a0Ω by the certificate, in air of 33\u00a0°C.", result, StringComparison.Ordinal);
        Assert.Contains("Bench meter, 200\u00a0Ω range was overdue: its calibration was good until 3 March 2020.", result, StringComparison.Ordinal);
        var report = (await app.PageAsync($"{bench}/report")).Body!.TextContent;
        Assert.Contains("was overdue: its calibration was good until 3 March 2020.", report, StringComparison.Ordinal);
        Assert.Contains("Serial number INV-0042.", report, StringComparison.Ordinal);

        // Put right, the meter may have been on another range.
        await app.AmendAsync(bench, app.Inspection().Readings[0].Sequence, ("value", "1550"), ("meant", "1550"));
        Assert.Equal("Bench meter, 2\u00a0kΩ range", app.Inspection().Readings[0].Body.Instrument!.Name);
        Assert.Equal(33, ((DisplayedReading)app.Inspection().Readings[0].Body.Reading).Ambient);
    }

    [Theory]
    [InlineData("warm")]
    [InlineData("90")]
    public async Task Air_that_no_meter_works_in_is_refused(string typed)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync("/instruments", Whole);

        var answer = await app.PostAsync($"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.2"), ("unit", "Ω"), ("ambient", typed));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotNull((await TestApp.ParseAsync(answer)).QuerySelector("#measure-ambient-wrong"));
    }

    [Fact]
    public async Task Instrument_within_its_due_day_is_not_said_to_be_overdue()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync("/instruments", [.. Whole.Select(one => one.Name == "due" ? (one.Name, "2999-01-01") : one)]);

        await app.PostForRedirectAsync($"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.2"), ("unit", "Ω"));

        Assert.DoesNotContain("overdue", (await app.PageAsync($"{bench}/report")).Body!.TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("Overdue", (await app.PageAsync("/instruments")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Meter_whose_range_is_chosen_by_hand_stands_in_the_list_once_for_each()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync("/instruments", [.. Whole.Where(one => one.Name is not "autoRange")]);

        var page = await app.PageAsync($"{bench}?check=coil-secondary-resistance");
        var offered = page.QuerySelectorAll("#measure-instrument option").Select(option => option.TextContent).Order(StringComparer.Ordinal);
        Assert.Equal(["Bench meter, 200\u00a0Ω range", "Bench meter, 20\u00a0kΩ range", "Bench meter, 2\u00a0kΩ range"], offered.Order(StringComparer.Ordinal));

        var coarse = await app.PostAsync(
            $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", "9.4k"), ("instrument", "bench-meter.2000"));
        Assert.Contains("Choose Bench meter, 20\u00a0kΩ range.", (await TestApp.ParseAsync(coarse)).Body!.TextContent, StringComparison.Ordinal);
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", "9.4k"), ("instrument", "bench-meter.20000"));

        Assert.Equal("Bench meter, 20\u00a0kΩ range", app.Inspection().Readings[0].Body.Instrument!.Name);
    }
}
