using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>What is allowed for the way of reading, over what the instrument's accuracy covers.</summary>
public sealed class AllowanceTests
{
    [Fact]
    public async Task Allowance_is_kept_and_is_a_line_of_the_budget()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "lead-resistance"), ("cylinder", "1"), ("value", "6.0"), ("unit", "kΩ"), ("allow", "0.3"));

        var reading = Assert.Single(app.Inspection().Readings).Body;
        var allowance = Assert.Single(((DisplayedReading)reading.Reading).Allowances!);
        Assert.Equal((AllowanceSource.Method, 300.0), (allowance.Source, allowance.HalfWidth));
        Assert.Equal(300 / Math.Sqrt(3), reading.Conformity!.Contributions.Single(part => part.Name == "method").StandardUncertainty, 1e-9);
        Assert.Contains("for the way of reading", reading.AsGiven, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Allowance_stays_when_the_value_is_put_right_and_can_be_put_right_itself()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "lead-resistance"), ("cylinder", "1"), ("value", "6.0"), ("unit", "kΩ"), ("allow", "0.3"));
        var entry = Assert.Single(app.Inspection().Readings).Sequence;

        var form = await app.PageAsync($"{bench}/entries/{entry}/amend");
        Assert.Equal("0.3", form.QuerySelector("input[name=allow]")!.GetAttribute("value"));
        await app.PostForRedirectAsync(
            $"{bench}/entries/{entry}/amend", ("check", "lead-resistance"), ("cylinder", "1"), ("value", "6.2"), ("unit", "kΩ"), ("allow", "0.1"));

        var allowance = Assert.Single(((DisplayedReading)Assert.Single(app.Inspection().Readings).Body.Reading).Allowances!);
        Assert.Equal(100, allowance.HalfWidth, 1e-9);
    }

    [Theory]
    [InlineData("-0.1")]
    [InlineData("much")]
    [InlineData("1e400")]
    [InlineData("1000000")]
    public async Task Allowance_that_makes_no_sense_is_refused_with_what_to_do(string allow)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var page = await TestApp.ParseAsync(await app.PostAsync(
            $"{bench}/readings", ("check", "lead-resistance"), ("cylinder", "1"), ("value", "6.0"), ("unit", "kΩ"), ("allow", allow)));

        Assert.Contains("such as 0.1", page.QuerySelector("#measure")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Inspection().Readings);
    }
}
