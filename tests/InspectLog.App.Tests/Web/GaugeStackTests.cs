using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>Blades put together, and how far they may be from their marked size.</summary>
public sealed class GaugeStackTests
{
    /// <summary>Three blades of ±0.003 mm, one of them in both stacks: (v_goes + v_stops + c)/3 with v the variance of each
    /// stack and c of the blade they share, a blade's being 0.003²/3.</summary>
    [Fact]
    public async Task Stack_with_a_tolerance_is_kept_with_the_uncertainty_of_its_blades()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", "0.20 + 0.10"), ("stops", "0.20 + 0.15"), ("unit", "mm"), ("tolerance", "0.003"));

        var reading = Assert.Single(app.Inspection().Readings).Body;
        var bracket = Assert.IsType<Bracket>(reading.Reading);
        Assert.Equal(0.30, bracket.Goes, 1e-12);
        Assert.Equal(0.35, bracket.Stops, 1e-12);
        Assert.Equal(0.003 * Math.Sqrt(5 / 9.0), bracket.GaugeUncertainty!.Value, 1e-12);
        Assert.Equal(0.006, bracket.Tolerances!.Value, 1e-12);
        Assert.Equal("0.20 + 0.10 goes, 0.20 + 0.15 stops mm; each blade ± 0.003", reading.AsGiven);
        Assert.Equal(2, reading.Conformity!.Contributions.Count);
    }

    [Fact]
    public async Task Gauges_are_named_once_proposed_from_then_on_and_stand_in_the_report()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        app.Garage.AppendToWorkshop(
            "Tess Okafor", new InstrumentAdded(new("feelers", "Feeler gauges, brass", QuantityKind.Length, new(0, 0), 0.05)));
        var first = (await app.PageAsync($"{bench}?check=pickup-air-gap")).QuerySelector("#gauge-gauges option[selected]")!;
        Assert.Equal("", first.GetAttribute("value"));

        await app.PostForRedirectAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", "0.30"), ("stops", "0.35"), ("unit", "mm"), ("gauges", "feelers"), ("tolerance", ""));

        var reading = Assert.Single(app.Inspection().Readings).Body;
        Assert.Equal("feelers", reading.Instrument!.Id);
        Assert.Equal(
            "feelers", (await app.PageAsync($"{bench}?check=plug-gap")).QuerySelector("#gauge-gauges option[selected]")!.GetAttribute("value"));
        var report = await app.PageAsync($"{bench}/report");
        Assert.Contains("Read with: Feeler gauges, brass.", report.QuerySelector("#check-pickup-air-gap .provenance")!.TextContent, StringComparison.Ordinal);
        var row = report.QuerySelector("[aria-label='Instruments used'] tbody tr")!;
        Assert.Contains("Feeler gauges, brass", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("as marked", row.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gauges_nobody_named_are_said_to_be_so_in_the_report()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", "0.30"), ("stops", "0.35"), ("unit", "mm"), ("tolerance", ""));

        Assert.Contains(
            "Read with: gauges, not named.",
            (await app.PageAsync($"{bench}/report")).QuerySelector("#check-pickup-air-gap .provenance")!.TextContent,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gauges_without_a_tolerance_are_taken_as_exact()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", "0.30"), ("stops", "0.35"), ("unit", "mm"), ("tolerance", ""));

        Assert.Equal(new Bracket(0.30, 0.35), Assert.Single(app.Inspection().Readings).Body.Reading);
    }

    [Theory]
    [InlineData("0.30", "0.31", "0.01", "tolerances overlap")]
    [InlineData("0.30", "0.35", "-0.01", "The ")]
    [InlineData("0.30", "0.35", "thin", "")]
    [InlineData("0.20 + ", "0.35", "", "")]
    [InlineData("0.20 + 0.15", "0.10 + 0.10", "", "must be thicker")]
    public async Task Stack_that_cannot_be_used_is_refused_with_what_to_do(string goes, string stops, string tolerance, string words)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var page = await TestApp.ParseAsync(await app.PostAsync(
            $"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", goes), ("stops", stops), ("unit", "mm"), ("tolerance", tolerance)));

        Assert.Contains(page.QuerySelectorAll("#gauge .problems, #gauge .wrong"), said => said.TextContent.Contains(words, StringComparison.Ordinal));
        Assert.Empty(app.Inspection().Readings);
        Assert.Equal(goes, page.QuerySelector("#gauge input[name=goes]")!.GetAttribute("value"));
    }
}
