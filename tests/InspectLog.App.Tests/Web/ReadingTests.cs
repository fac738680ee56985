using System.Net;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>Readings taken by hand on the bench.</summary>
public sealed class ReadingTests
{
    [Fact]
    public async Task Typed_value_is_decided_and_in_the_journal()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.2"), ("unit", "Ω"));

        var reading = Assert.Single(Inspection(app).Readings).Body;
        Assert.Equal(1.2, Assert.Single(Assert.IsType<DisplayedReading>(reading.Reading).Values));
        Assert.Equal(2.0, reading.Limits!.Upper);
        Assert.NotNull(reading.Instrument);
        Assert.Equal(Decision.ConditionalPass, ConformityRule.Decide(reading.Reading, Limits.Of(0.6, 1.5)).Decision);
        Assert.Equal(Decision.Pass, reading.Conformity!.Decision);
    }

    [Fact]
    public async Task Repeats_are_one_reading_with_a_mean()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "0.8; 0.7; 0.8"), ("unit", "Ω"));

        var reading = Assert.Single(Inspection(app).Readings).Body;
        Assert.Equal([0.8, 0.7, 0.8], Assert.IsType<DisplayedReading>(reading.Reading).Values);
        Assert.Equal(2.3 / 3, reading.Conformity!.Value, 12);
    }

    [Theory]
    [InlineData("9.4k", 9400)]
    [InlineData("9,400 ohms", 9400)]
    [InlineData("9.4 kΩ", 9400)]
    public async Task Number_with_one_meaning_is_read_as_meant(string typed, double expected)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", typed), ("unit", "kΩ"));

        Assert.Equal(expected, Assert.Single(Inspection(app).Readings).Body.Conformity!.Value, 9);
    }

    [Fact]
    public async Task Number_with_two_meanings_is_asked_about_and_the_answer_taken()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var asked = await app.PostAsync(
            $"{bench}/readings", ("check", "pickup-air-gap"), ("value", "12"), ("unit", "mm"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        Assert.Empty(Inspection(app).Readings);

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "pickup-air-gap"), ("value", "12"), ("unit", "mm"), ("meant", "0.3048"));

        Assert.Equal(0.3048, Assert.Single(Inspection(app).Readings).Body.Conformity!.Value, 9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("about nine")]
    [InlineData("12 V")]
    [InlineData("NaN")]
    [InlineData("1e400")]
    public async Task Value_that_is_no_resistance_is_refused_with_what_was_typed(string typed)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.PostAsync(
            $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", typed), ("unit", "kΩ"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(Inspection(app).Readings);
    }

    [Fact]
    public async Task Check_or_place_that_is_not_on_the_sheet_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        foreach (var (check, cylinder) in new[] { ("no-such-check", "1"), ("lead-resistance", "7"), ("lead-resistance", "") })
        {
            var answer = await app.PostAsync(
                $"{bench}/readings", ("check", check), ("cylinder", cylinder), ("value", "9"), ("unit", "kΩ"));
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        }

        Assert.Empty(Inspection(app).Readings);
    }

    [Fact]
    public async Task Gauge_bracket_is_decided_as_a_box()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", "0.30"), ("stops", "0.35"), ("unit", "mm"));

        var reading = Assert.Single(Inspection(app).Readings).Body;
        Assert.Equal(new Bracket(0.30, 0.35), reading.Reading);
        Assert.Equal(1, reading.Conformity!.ProbabilityOfConformity, 12);
    }

    [Theory]
    [InlineData("0.35", "0.30")]
    [InlineData("0.3", "0.3")]
    [InlineData("0.3", "")]
    [InlineData("thin", "0.3")]
    public async Task Gauges_the_wrong_way_round_or_missing_are_refused(string goes, string stops)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.PostAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", goes), ("stops", stops), ("unit", "mm"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(Inspection(app).Readings);
    }

    [Fact]
    public async Task Limits_of_the_vehicle_win_over_those_of_the_sheet()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            "/vehicles/marigold/limits/coil-circuit-resistance",
            ("lower", "1.0"), ("upper", "1.1"), ("unit", "Ω"), ("source", "Invented manual, page 12"));
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "5"), ("unit", "Ω"));

        var reading = Assert.Single(Inspection(app).Readings).Body;
        Assert.Equal("Invented manual, page 12", reading.Limits!.Source);
        Assert.Equal(Decision.Fail, reading.Conformity!.Decision);
    }

    [Theory]
    [InlineData("2", "1", "page 12")]
    [InlineData("", "", "page 12")]
    [InlineData("1", "2", "")]
    [InlineData("one", "2", "page 12")]
    public async Task Limits_that_make_no_sense_are_refused(string lower, string upper, string source)
    {
        await using var app = await TestApp.StartAsync();
        await app.AddVehicleAsync();

        var answer = await app.PostAsync(
            "/vehicles/marigold/limits/coil-circuit-resistance",
            ("lower", lower), ("upper", upper), ("unit", "Ω"), ("source", source));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Limits);
    }

    [Fact]
    public async Task Withdrawn_reading_no_longer_counts_but_stays_in_the_journal()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.2"), ("unit", "Ω"));
        var sequence = Inspection(app).Readings[0].Sequence;

        await app.PostForRedirectAsync($"{bench}/entries/{sequence}/withdraw", ("reason", "Probe had slipped"));

        Assert.Empty(Inspection(app).Readings);
        Assert.Contains(app.Garage.Entries("marigold"), entry => entry.Sequence == sequence);
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}
