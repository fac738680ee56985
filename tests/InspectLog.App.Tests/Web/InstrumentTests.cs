using System.Net;
using AngleSharp.Html.Dom;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>Instruments with all that their papers say.</summary>
public sealed partial class InstrumentTests
{
    private static readonly (string Name, string Text)[] Whole =
    [
        ("name", "Bench meter"), ("unit", "Ω"), ("accuracy", "0.5% rdg + 0.1% rng + 2 + 0.05 Ω"), ("resolution", "0.1"), ("fullScale", "200"),
        ("moreRanges", "2000; 1\n20000; 10; 1% + 5"), ("autoRange", "on"), ("serial", "INV-0042"), ("calibrated", "2025-03-03"), ("due", "2026-03-03"),
        ("corrections", "100; -0.2\n10; 0.1"), ("certificate", "0.06"), ("statedFor", "23 ± 5"), ("perDegree", "0.1 x accuracy"),
    ];

    [Fact]
    public async Task Instrument_keeps_all_that_its_papers_say()
    {
        await using var app = await TestApp.StartAsync();

        await app.PostForRedirectAsync("/instruments", Whole);

        var stated = new Accuracy(0.5, 2) { PercentOfRange = 0.1, Fixed = 0.05 };
        Assert.Equal(
            new Instrument("bench-meter", "Bench meter", QuantityKind.Resistance, stated, 0.1)
            {
                Ranges = [new("200\u00a0Ω", 200, stated, 0.1), new("2\u00a0kΩ", 2000, stated, 1), new("20\u00a0kΩ", 20_000, new(1, 5), 10)],
                AutoRange = true,
                SerialNumber = "INV-0042",
                Calibrated = new(2025, 3, 3),
                Due = new(2026, 3, 3),
                Corrections = [new(10, 0.1), new(100, -0.2)],
                CertificateUncertainty = 0.06,
                Temperature = new(18, 28) { ShareOfAccuracy = 0.1 },
            },
            Assert.Single(app.Garage.Workshop.Instruments));
        var row = (await app.PageAsync("/instruments")).QuerySelector("tbody tr")!.TextContent;
        Assert.Contains("±(0.5 % + 0.1 % of range + 2 + 0.05 Ω)", row, StringComparison.Ordinal);
        Assert.Contains("ranges 200\u00a0Ω, 2\u00a0kΩ, 20\u00a0kΩ, which it chooses by itself", row, StringComparison.Ordinal);
        Assert.Contains("Serial number INV-0042. Calibrated on 3 March 2025, due on 3 March 2026. Corrected by its certificate.", row, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Instrument_on_file_stands_filled_in_and_is_changed_under_the_same_id()
    {
        await using var app = await TestApp.StartAsync();
        await app.PostForRedirectAsync("/instruments", Whole);
        var before = app.Garage.Workshop.Instruments[0];

        var page = await app.PageAsync("/instruments/bench-meter");
        await app.PostForRedirectAsync("/instruments/bench-meter", [.. Fields(page)]);
        Assert.Equal(before, Assert.Single(app.Garage.Workshop.Instruments));

        await app.PostForRedirectAsync("/instruments/bench-meter", [.. Fields(page).Select(one => one.Name == "due" ? (one.Name, "2027-03-03") : one)]);
        Assert.Equal(before with { Due = new(2027, 3, 3) }, Assert.Single(app.Garage.Workshop.Instruments));
    }

    [Theory]
    [InlineData("moreRanges", "2000", "is no range")]
    [InlineData("moreRanges", "2000; 1; good", "not an accuracy")]
    [InlineData("moreRanges", "1; 2000", "is no range")]
    [InlineData("moreRanges", "200; 0.1", "same largest value")]
    [InlineData("fullScale", "", "largest value of the first range")]
    [InlineData("fullScale", "0.05", "largest value it shows")]
    [InlineData("calibrated", "3.3.2025", "year-month-day")]
    [InlineData("due", "2025-03-02", "before the day it was calibrated")]
    [InlineData("corrections", "10", "is no correction")]
    [InlineData("corrections", "10; 0,1", "is no correction")]
    [InlineData("corrections", "10; 0.1\n10; 0.2", "same reading")]
    [InlineData("certificate", "-1", "above 0")]
    [InlineData("statedFor", "warm", "temperatures the accuracy is stated for")]
    [InlineData("perDegree", "lots", "not an accuracy")]
    [InlineData("accuracy", "0.5% + 0.05 V", "V is a unit of voltage")]
    [InlineData("unit", "furlong", "Choose the unit")]
    public async Task Papers_that_make_no_sense_are_refused_at_their_field_and_nothing_typed_is_lost(string field, string typed, string reason)
    {
        await using var app = await TestApp.StartAsync();
        (string, string)[] form = [.. Whole.Select(one => one.Name == field ? (one.Name, typed) : one)];

        var answer = await app.PostAsync("/instruments", form);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.Workshop.Instruments);
        var page = await TestApp.ParseAsync(answer);
        Assert.Contains(reason, page.QuerySelector($"#instrument-{field}-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("INV-0042", Fields(page).Select(one => one.Text));
        Assert.True(page.QuerySelector("#instrument-papers")!.HasAttribute("open"));
    }

    [Fact]
    public async Task Share_of_the_range_needs_the_largest_value()
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.PostAsync("/instruments", ("name", "Meter"), ("unit", "V"), ("accuracy", "0.1% rng"), ("resolution", "0.1"));

        Assert.Contains("percentage of the range", (await TestApp.ParseAsync(answer)).QuerySelector("#instrument-fullScale-wrong")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Instrument_that_is_not_on_file_cannot_be_changed()
    {
        await using var app = await TestApp.StartAsync();

        Assert.Equal(HttpStatusCode.NotFound, (await app.Client.GetAsync("/instruments/none", TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync("/instruments/none", Whole)).StatusCode);
        await app.PostForRedirectAsync("/instruments", Whole);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.PostAsync("/instruments/bench-meter", ("name", ""), ("unit", "Ω"))).StatusCode);
    }

    /// <summary>The fields of the instrument's form as a browser would send them.</summary>
    private static IEnumerable<(string Name, string Text)> Fields(IHtmlDocument page)
    {
        var form = page.QuerySelector("#instrument-papers")!.Closest("form")!;
        foreach (var field in form.QuerySelectorAll("input, select, textarea"))
        {
            switch (field)
            {
                case IHtmlInputElement { Type: "checkbox", IsChecked: false }:
                    break;
                case IHtmlInputElement input:
                    yield return (input.Name!, input.Value);
                    break;
                case IHtmlSelectElement select:
                    yield return (select.Name!, select.Value ?? "");
                    break;
                case IHtmlTextAreaElement area:
                    yield return (area.Name!, area.Value);
                    break;
            }
        }
    }
}
