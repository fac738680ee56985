using System.Net;
using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>What the meter on file cannot show is refused or asked about, typed, changed or heard.</summary>
public sealed partial class NotShownTests
{
    private const string Circuit = "coil-circuit-resistance";

    private static readonly Accuracy Stated = new(0.8, 3);

    [Fact]
    public async Task Value_over_full_scale_is_refused_and_the_range_that_shows_it_named()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);

        var answer = await app.PostAsync($"{bench}/readings", ("check", Circuit), ("value", "9.4k"), ("unit", "Ω"), ("instrument", "low"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var said = (await TestApp.ParseAsync(answer)).Body!.TextContent;
        Assert.Contains("9.4\u00a0kΩ is more than the 200 Ω range shows. Choose Bench meter, 20 kΩ range.", said, StringComparison.Ordinal);
        Assert.Empty(Readings(app));
    }

    [Fact]
    public async Task Value_no_meter_reaches_says_what_to_do()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);

        var answer = await app.PostAsync($"{bench}/readings", ("check", "lead-resistance"), ("cylinder", "1"), ("value", "9.4 MΩ"), ("instrument", "high"));

        Assert.Contains("Enter the meter it was read with under Instruments", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(Readings(app));
    }

    [Theory]
    [InlineData(0, 0.7, "Bench meter, 200 Ω range")]
    [InlineData(1, 0.8, "Bench meter, 200 Ω range")]
    [InlineData(2, 0.75, "Another instrument (accuracy assumed), 200 Ω range")]
    public async Task Value_between_steps_is_asked_about_and_each_answer_is_taken(int press, double value, string instrument)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);

        var asked = await app.PostAsync($"{bench}/readings", ("check", Circuit), ("value", "0.75"), ("unit", "Ω"), ("instrument", "low"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        Assert.Empty(Readings(app));
        var page = await TestApp.ParseAsync(asked);
        Assert.Contains("Your meter shows steps of 0.1\u00a0Ω, not 0.75\u00a0Ω", page.QuerySelector("[data-question]")!.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/readings", [.. Answer(page, press)]);

        var reading = Assert.Single(Readings(app));
        Assert.Equal([value], Assert.IsType<DisplayedReading>(reading.Reading).Values);
        Assert.Equal(instrument, reading.Instrument!.Name);
    }

    [Fact]
    public async Task Several_values_between_steps_are_taken_as_typed_of_another_instrument_only()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);

        var page = await TestApp.ParseAsync(await app.PostAsync(
            $"{bench}/readings", ("check", Circuit), ("value", "0.75; 0.8; 0.72"), ("unit", "Ω"), ("instrument", "low")));

        Assert.Single(page.QuerySelectorAll("[data-question] button"));
        await app.PostForRedirectAsync($"{bench}/readings", [.. Answer(page, 0)]);
        Assert.Equal([0.75, 0.8, 0.72], Assert.IsType<DisplayedReading>(Assert.Single(Readings(app)).Reading).Values);
    }

    [Fact]
    public async Task Unlikely_value_between_steps_is_asked_about_twice()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);

        var first = await TestApp.ParseAsync(await app.PostAsync(
            $"{bench}/readings", ("check", Circuit), ("value", "45.05"), ("unit", "Ω"), ("instrument", "low")));
        Assert.Contains("Is it meant?", first.QuerySelector("[data-question]")!.TextContent, StringComparison.Ordinal);

        var second = await TestApp.ParseAsync(await app.PostAsync($"{bench}/readings", [.. Answer(first, 0)]));
        Assert.Contains("was it 45", second.QuerySelector("[data-question]")!.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/readings", [.. Answer(second, 1)]);
        Assert.Equal([45.1], Assert.IsType<DisplayedReading>(Assert.Single(Readings(app)).Reading).Values);
    }

    [Fact]
    public async Task Number_of_two_meanings_that_lies_between_steps_is_asked_about_twice()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        (string, string)[] form = [("check", Circuit), ("value", "50,012"), ("unit", "Ω"), ("instrument", "low")];

        var first = await app.PostAsync($"{bench}/readings", form);
        Assert.Contains("Is it 50.012\u00a0Ω?", (await TestApp.ParseAsync(first)).QuerySelector("[data-question]")!.TextContent, StringComparison.Ordinal);
        var second = await TestApp.ParseAsync(await app.PostAsync($"{bench}/readings", [.. form, ("meant", "50.012")]));
        Assert.Contains("was it 50", second.QuerySelector("[data-question]")!.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/readings", [.. Answer(second, 0)]);
        Assert.Equal([50], Assert.IsType<DisplayedReading>(Assert.Single(Readings(app)).Reading).Values);
    }

    [Fact]
    public async Task Assumed_meter_takes_the_range_that_shows_the_value_and_asks_of_no_step()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync($"{bench}/readings", ("check", Circuit), ("value", "0.75"), ("unit", "Ω"));
        await app.PostForRedirectAsync($"{bench}/readings", ("check", "lead-resistance"), ("cylinder", "1"), ("value", "25k"));

        Assert.Equal(
            ["Multimeter (accuracy assumed), 200 Ω range", "Multimeter (accuracy assumed), 2 MΩ range"],
            Readings(app).Select(reading => reading.Instrument!.Name));
    }

    private static Instrument[] Meters => [Meter("low", "200 Ω", 200, 0.1), Meter("high", "20 kΩ", 20_000, 10)];

    private static Instrument Meter(string id, string range, double fullScale, double step) =>
        new(id, $"Bench meter, {range} range", QuantityKind.Resistance, Stated, step) { Ranges = [new(range, fullScale, Stated, step)] };

    private static async Task<string> StartAsync(TestApp app)
    {
        var bench = await app.StartInspectionAsync();
        app.Garage.AppendToWorkshop("Tess Okafor", [.. Meters.Select(meter => new InstrumentAdded(meter))]);
        return bench;
    }

    private static IEnumerable<(string, string)> Answer(IHtmlDocument page, int press)
    {
        var form = page.QuerySelector("[data-question] form")!;
        foreach (var hidden in form.QuerySelectorAll("input[type=hidden]").Cast<IHtmlInputElement>())
        {
            yield return (hidden.Name!, hidden.Value);
        }

        yield return ("meant", ((IHtmlButtonElement)form.QuerySelectorAll("button[name=meant]")[press]).Value);
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];

    private static List<ReadingDecided> Readings(TestApp app) => [.. Inspection(app).Readings.Select(reading => reading.Body)];
}
