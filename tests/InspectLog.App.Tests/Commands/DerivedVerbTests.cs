using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

/// <summary>The verbs route, trend and refer.</summary>
public sealed partial class DerivedVerbTests
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

    /// <summary>By hand: anticlockwise from tower 2, the order 1-5-3-6-2-4 falls on towers 2, 1, 6, 5, 4, 3.</summary>
    [Theory]
    [InlineData("anticlockwise")]
    [InlineData("Counter-Clockwise")]
    [InlineData("ccw")]
    public async Task Route_against_the_clock_has_several_names(string rotation)
    {
        var run = await CommandRun.OfAsync(
            "route", "--firing-order", "153624", "--rotation", rotation, "--first-tower", "2",
            "--found", "5 1 4 2 6 3", "--json");

        Assert.Equal("{\"wrong\":[],\"swaps\":[],\"effects\":[]}", Assert.Single(run.Lines));
    }

    /// <summary>Rotors of 3, 4, 5, 6, 8 and 12 towers; the orders are common practice, no source, but for those of the
    /// firing-order tests. Each has its first two leads exchanged.</summary>
    [Theory]
    [InlineData("1-3-2")]
    [InlineData("1-3-4-2")]
    [InlineData("1-2-4-5-3")]
    [InlineData("1-5-3-6-2-4")]
    [InlineData("1-8-4-3-6-5-7-2")]
    [InlineData("1-7-5-11-3-9-6-12-2-8-4-10")]
    public async Task Route_knows_every_cap(string order)
    {
        var cylinders = order.Split('-');
        string[] found = [cylinders[1], cylinders[0], .. cylinders[2..]];

        var run = await CommandRun.OfAsync(
            "route", "--firing-order", order, "--rotation", "clockwise", "--first-tower", "1", "--found", string.Join(',', found), "--json");

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal("[1,2]", answer.GetProperty("wrong").GetRawText());
        Assert.Equal("[[1,2]]", answer.GetProperty("swaps").GetRawText());
        Assert.Equal(
            $"fires cylinder {cylinders[1]} on cylinder {cylinders[0]}'s turn", answer.GetProperty("effects")[0].GetString());
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

    /// <summary>IEC 60034-1, constant 235: 3.00 Ω at 20 °C is 3.705882 Ω at 80 °C (formula, computed).</summary>
    [Fact]
    public async Task Refer_follows_the_standard()
    {
        var run = await CommandRun.OfAsync("refer", "--value", "3.00", "--unit", "Ω", "--at", "20", "--to", "80", "--json");

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(3.705882, answer.GetProperty("value").GetDouble(), 6);
        Assert.Equal(0, answer.GetProperty("standardUncertainty").GetDouble());
    }

    /// <summary>IEC 60034-1 with its constant, 234.5 for annealed copper, and the coefficient 0.00393 at 20 °C of handbooks;
    /// computed by their formulas.</summary>
    [Theory]
    [InlineData(3.705882)]
    [InlineData(3.707269, "--constant", "234.5")]
    [InlineData(3.707400, "--alpha", "0.00393")]
    public async Task Refer_takes_another_constant_or_a_coefficient(double referred, params string[] options)
    {
        var run = await CommandRun.OfAsync(
            ["refer", "--value", "3.00", "--unit", "ohm", "--at", "20", "--to", "80", "--json", .. options]);

        Assert.Equal(referred, JsonDocument.Parse(run.Out).RootElement.GetProperty("value").GetDouble(), 6);
    }

    /// <summary>By hand: 8.4 kΩ at 65 °C is 7.14 kΩ at 20 °C; each degree is 1/300 of it, and ±3 °C is 1.732 °C.</summary>
    [Fact]
    public async Task Refer_carries_both_uncertainties()
    {
        var run = await CommandRun.OfAsync(
            "refer", "--value", "8.4", "--unit", "kΩ", "--uncertainty", "0.03", "--at", "65", "--within", "3", "--json");

        var answer = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(7.14, answer.GetProperty("value").GetDouble(), 12);
        Assert.Equal(
            double.Hypot(0.0255, 7.14 / 300 * Math.Sqrt(3)), answer.GetProperty("standardUncertainty").GetDouble(), 12);
    }

    [Theory]
    [InlineData("7.14\u00a0kΩ\n")]
    [InlineData("7.140\u00a0kΩ ± 0.051\u00a0kΩ (k = 2)\n", "--uncertainty", "0.03")]
    public async Task Refer_says_the_value_in_words(string text, params string[] options)
    {
        var run = await CommandRun.OfAsync(["refer", "--value", "8.4", "--unit", "kΩ", "--at", "65", .. options]);

        Assert.Equal(text, run.Out.ReplaceLineEndings("\n"));
    }

    [Theory]
    [InlineData("Give the resistance with --value", "--at", "65")]
    [InlineData("Give the winding's temperature with --at", "--value", "8.4")]
    [InlineData("\"mohm\" can mean MΩ or mΩ", "--value", "8.4", "--at", "65", "--unit", "mohm")]
    [InlineData("0 or more", "--value", "-8.4", "--at", "65")]
    [InlineData("near 235", "--value", "8.4", "--at", "65", "--constant", "20")]
    public async Task Refer_says_what_it_lacks(string reason, params string[] arguments)
    {
        string[] unit = arguments.Contains("--unit") ? [] : ["--unit", "kohm"];
        var run = await CommandRun.OfAsync(["refer", .. unit, .. arguments]);

        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
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
