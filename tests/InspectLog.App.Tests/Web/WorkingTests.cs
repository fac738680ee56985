using InspectLog.Checks;
using InspectLog.Inspecting.Workings;
using System.Net;

namespace InspectLog.App.Tests.Web;

/// <summary>Pages that work out derived figures.</summary>
public sealed partial class WorkingTests
{
    /// <summary>12 V over 1.5 Ω is 8 A by Ohm's law; of the 12 V the ballast's half of the resistance drops half.</summary>
    [Fact]
    public async Task Coil_circuit_shows_its_working_with_the_inspections_own_reading()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.5"), ("unit", "Ω"));

        var page = await app.PageAsync($"{bench}/workings/coil-circuit");
        Assert.Equal("1.5", page.QuerySelector("input[name=total]")!.GetAttribute("value"));

        var worked = await app.PageAsync($"{bench}/workings/coil-circuit?total=1.5&ballast=0.75&rest=12&running=14");
        var results = worked.QuerySelectorAll(".result").Select(result => result.TextContent).ToList();
        Assert.Contains(results, result => result.StartsWith("Current 8", StringComparison.Ordinal));
        Assert.Contains(results, result => result.StartsWith("Voltage across the ballast resistor 6", StringComparison.Ordinal));
    }

    /// <summary>JCGM 100:2008, 5.1, by hand: I = V/R moves by −V/R² for each ohm, 12/1.5² A; of a voltage V·B/R it is V·B/R².
    /// k = 2, since all that is known of the meter is taken as known.</summary>
    [Fact]
    public async Task Figures_carry_the_uncertainty_of_the_reading_they_come_from()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.5"), ("unit", "Ω"));
        var u = app.Inspection().Readings[0].Body.Conformity!.StandardUncertainty;

        var worked = await app.PageAsync($"{bench}/workings/coil-circuit?total=1.5&ballast=0.75&rest=12&running=14");
        var results = worked.QuerySelectorAll(".result").Select(result => result.TextContent).ToList();
        var current = new Checks.Derived.Figure("Current", 8, "A") { Expanded = 2 * 12 / (1.5 * 1.5) * u };
        var drop = new Checks.Derived.Figure("Voltage across the ballast resistor", 6, "V") { Expanded = 2 * 12 * 0.75 / (1.5 * 1.5) * u };
        Assert.Contains($"Current {current.Text}", results);
        Assert.Contains($"Voltage across the ballast resistor {drop.Text}", results);
        Assert.Contains("covers 95.45 %", worked.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Value_typed_by_hand_is_taken_as_exact()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.5"), ("unit", "Ω"));

        var worked = await app.PageAsync($"{bench}/workings/coil-circuit?total=1.6&ballast=0.8&rest=12&running=14");

        Assert.Contains("Current 7.5 A", worked.QuerySelectorAll(".result").Select(result => result.TextContent));
        Assert.DoesNotContain("covers 95.45 %", worked.Body!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>By hand (JCGM 100:2008, H.5): two means 2 kΩ apart, 4 kΩ² between them; deviations of 50 Ω within, 0.005 kΩ²:
    /// F = 800 with 1 and 2 degrees of freedom.</summary>
    [Fact]
    public async Task Cylinders_are_compared_with_the_scatter_of_their_repeats()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        foreach (var (lead, values) in new[] { ("1", "6.0; 6.1"), ("2", "8.0; 8.1") })
        {
            await app.PostForRedirectAsync(
                $"{bench}/readings", ("check", "lead-resistance"), ("cylinder", lead), ("value", values), ("unit", "kΩ"));
        }

        var page = await app.PageAsync($"{bench}/workings/spread?check=Lead%20resistance");

        Assert.Contains("in less than 1 of 100 sets (F\u00a0=\u00a0800 with 1 and 2 degrees of freedom)", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Routing_names_the_wrong_towers_and_draws_the_cap()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var page = await app.PageAsync(
            $"{bench}/workings/routing?order=1-5-3-6-2-4&turn=clockwise&first=1&found=1,5,3,6,4,2");

        Assert.Contains("2 leads are wrong", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("What the engine would do", page.Body.TextContent, StringComparison.Ordinal);
        Assert.Contains("Tower 5 fires cylinder 4 on cylinder 2's turn. In its compression stroke", page.Body.TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector("svg.cap-drawing"));
    }

    [Theory]
    [InlineData("coil-circuit?total=1,5&ballast=0.7&rest=12&running=14")]
    [InlineData("coil-circuit?total=1.5&ballast=2&rest=12&running=14")]
    [InlineData("routing?order=1/6-2/5-3/4&turn=clockwise&first=1&found=1,2,3")]
    [InlineData("routing?order=1-5-3-6-2-4&turn=clockwise&first=9&found=1,5,3,6,2,4")]
    [InlineData("spread?check=Lead%20resistance")]
    [InlineData("spread?check=Horn")]
    [InlineData("coil-circuit?total=&ballast=0.7&rest=12&running=14")]
    [InlineData("coil-circuit?total=0&ballast=0&rest=12&running=14")]
    [InlineData("coil-circuit?total=1.5&ballast=-0.5&rest=12&running=14")]
    [InlineData("coil-circuit?total=1.5&ballast=0.7&rest=0&running=14")]
    [InlineData("coil-circuit?total=1.5&ballast=0.7&rest=12&running=-14")]
    [InlineData("current-rise?inductance=0&resistance=1.5&supply=14&time=4")]
    [InlineData("current-rise?inductance=8&resistance=&supply=14&time=4")]
    [InlineData("current-rise?inductance=8&resistance=1.5&supply=none&time=4")]
    [InlineData("current-rise?inductance=8&resistance=1.5&supply=14&time=-1")]
    [InlineData("dwell?cylinders=six&rpm=900&from=angle&value=36")]
    [InlineData("dwell?cylinders=17&rpm=900&from=angle&value=36")]
    [InlineData("dwell?cylinders=6&rpm=0&from=angle&value=36")]
    [InlineData("dwell?cylinders=6&rpm=900&from=angle&value=60")]
    [InlineData("dwell?cylinders=6&rpm=900&from=duty&value=100")]
    [InlineData("dwell?cylinders=6&rpm=900&from=time&value=40")]
    [InlineData("dwell?cylinders=6&rpm=900&from=guess&value=36")]
    [InlineData("advance?rpm=0&from=angle&value=8")]
    [InlineData("advance?rpm=900&from=angle&value=eight")]
    [InlineData("advance?rpm=900&from=guess&value=8")]
    [InlineData("gap?value=-1&unit=mm")]
    [InlineData("gap?value=0,3&unit=mm")]
    [InlineData("gap?value=0.3&unit=furlong")]
    [InlineData("leads?class=none&resistance1=6&length1=0.5")]
    [InlineData("leads?resistance1=&length1=0.5")]
    [InlineData("leads?resistance1=6&length1=0")]
    [InlineData("leads?resistance1=-6&length1=0.5")]
    [InlineData("routing?order=&turn=clockwise&first=1&found=1,5,3,6,2,4")]
    [InlineData("routing?order=1-5-3-6-2-4&turn=sideways&first=1&found=1,5,3,6,2,4")]
    [InlineData("routing?order=1-5-3-6-2-4&turn=clockwise&first=one&found=1,5,3,6,2,4")]
    [InlineData("routing?order=1-5-3-6-2-4&turn=clockwise&first=1&found=1,5,3,6,2,2")]
    [InlineData("routing?order=1-5-3-6-2-4&turn=clockwise&first=1&found=1,5,3,6,2,7")]
    public async Task Working_that_cannot_be_done_says_why(string address)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.Client.GetAsync($"{bench}/workings/{address}", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotEqual("", (await TestApp.ParseAsync(answer)).QuerySelector(".problems")!.TextContent.Trim());
    }

    /// <summary>Five like leads and one far off: Grubbs' critical value for six at 5 % is 1.887 (NIST/SEMATECH e-Handbook,
    /// 1.3.5.17.1, by its formula).</summary>
    [Fact]
    public async Task Spread_names_the_odd_one_out_with_both_tests()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        double[] values = [6.2, 6.3, 6.1, 14.8, 6.4, 6.25];
        for (var lead = 1; lead <= values.Length; lead++)
        {
            await app.PostForRedirectAsync(
                $"{bench}/readings", ("check", "lead-resistance"), ("cylinder", $"{lead}"), ("value", FormattableString.Invariant($"{values[lead - 1]}")), ("unit", "kΩ"));
        }

        var link = (await app.PageAsync($"{bench}?check=lead-resistance")).QuerySelectorAll("nav[aria-labelledby=workings-title] a")
            .First(one => one.TextContent == "Cylinders compared").GetAttribute("href")!;
        var page = (await app.PageAsync(link)).Body!.TextContent;

        Assert.Contains("Cylinder 4 differs from the others by more than chance.", page, StringComparison.Ordinal);
        Assert.Contains("Critical G 1.887", page, StringComparison.Ordinal);
        Assert.Contains("Modified z of cylinder 4", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_values_are_compared_but_neither_is_called_odd()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/readings", ("check", "plug-gap"), ("cylinder", "1"), ("value", "0.8"), ("unit", "mm"));
        await app.PostForRedirectAsync($"{bench}/readings", ("check", "plug-gap"), ("cylinder", "2"), ("value", "0.9"), ("unit", "mm"));

        var page = await app.PageAsync($"{bench}/workings/spread?check=Plug%20gap");

        Assert.Contains("three values or more", page.Body!.TextContent, StringComparison.Ordinal);
    }
}
