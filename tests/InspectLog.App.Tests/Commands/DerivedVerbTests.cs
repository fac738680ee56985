using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

/// <summary>The verbs route, trend and refer.</summary>
public sealed class DerivedVerbTests
{
    [Fact]
    public async Task Route_names_wrong_towers_swaps_and_effects()
    {
        var run = await CommandRun.OfAsync(
            "route", "--firing-order", "1-5-3-6-2-4", "--rotation", "clockwise", "--first-tower", "1",
            "--found", "1,5,3,6,4,2", "--json");

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal("[5,6]", answer.GetProperty("wrong").GetRawText());
        Assert.Equal("[[5,6]]", answer.GetProperty("swaps").GetRawText());
        Assert.Equal("fires cylinder 4 on cylinder 2's turn", answer.GetProperty("effects")[0].GetString());
    }

    [Theory]
    [InlineData("1-5-3-6-2-4", "clockwise", "1,5,3,6,4")]
    [InlineData("1-5-3-6-2", "clockwise", "1,5,3,6,4,2")]
    [InlineData("1/6-2/5-3/4", "clockwise", "1,2,3,4,5,6")]
    [InlineData("1-5-3-6-2-4", "sideways", "1,5,3,6,4,2")]
    public async Task Route_refuses_what_makes_no_sense(string order, string rotation, string found)
    {
        var run = await CommandRun.OfAsync(
            "route", "--firing-order", order, "--rotation", rotation, "--found", found, "--json");

        Assert.Equal(2, run.ExitCode);
        Assert.NotEqual("", run.Error);
    }

    /// <summary>Anscombe's first set (F. J. Anscombe, The American Statistician 27, 1973): y = 3.00 + 0.500 x. The
    /// residual standard deviation follows from the data: 1.236603 (as in NIST's copy of the set).</summary>
    [Fact]
    public async Task Trend_fits_a_published_set()
    {
        const string data = "10,8.04\n8,6.95\n13,7.58\n9,8.81\n11,8.33\n14,9.96\n6,7.24\n4,4.26\n12,10.84\n7,4.82\n5,5.68\n";

        var run = await CommandRun.WithAsync(null!, data, "trend", "--upper", "20", "--json");

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(0.500091, answer.GetProperty("slope").GetDouble(), 6);
        Assert.Equal(3.000091, answer.GetProperty("intercept").GetDouble(), 6);
        Assert.Equal(1.236603, answer.GetProperty("residualStandardDeviation").GetDouble(), 6);
        Assert.True(answer.GetProperty("meetsLimitAt").GetDouble() > 14);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("reason").ValueKind);
    }

    [Fact]
    public async Task Trend_of_three_readings_says_that_they_are_too_few()
    {
        var run = await CommandRun.WithAsync(null!, "1,1.2\n2,1.3\n3,1.4\n", "trend", "--upper", "2", "--json");

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("meetsLimitAt").ValueKind);
        Assert.Contains("Not enough data", answer.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1;2\n")]
    [InlineData("one,two\n")]
    [InlineData("1,2,3\n")]
    public async Task Trend_refuses_lines_that_are_no_pairs(string input)
    {
        var run = await CommandRun.WithAsync(null!, input, "trend", "--json");

        Assert.Equal(2, run.ExitCode);
        Assert.NotEqual("", run.Error);
    }

    /// <summary>IEC 60034-1, constant 235: 3.00 Ω at 20 °C is 3.705882 Ω at 80 °C (formula, computed).</summary>
    [Fact]
    public async Task Refer_follows_the_standard()
    {
        var run = await CommandRun.OfAsync("refer", "--value", "3.00", "--unit", "Ω", "--at", "20", "--to", "80", "--json");

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(3.705882, answer.GetProperty("value").GetDouble(), 6);
        Assert.Equal(0, answer.GetProperty("standardUncertainty").GetDouble());
    }

    [Theory]
    [InlineData("V", "65")]
    [InlineData("kΩ", "1000")]
    public async Task Refer_refuses_what_is_no_winding(string unit, string at)
    {
        var run = await CommandRun.OfAsync("refer", "--value", "8.4", "--unit", unit, "--at", at, "--json");

        Assert.Equal(2, run.ExitCode);
    }
}
