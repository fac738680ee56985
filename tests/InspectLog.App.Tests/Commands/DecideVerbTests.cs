using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

public sealed class DecideVerbTests
{
    private static readonly string[] Reading =
        ["--unit", "Ω", "--value", "0.7", "--accuracy", "0.8%+3", "--resolution", "0.1"];

    /// <summary>The figures are worked out here from the model of the README: half-width 0.8 % of 0.7 plus 3 counts
    /// of 0.1; rectangular, so divided by the root of 3; the display's step of 0.1 likewise.</summary>
    [Fact]
    public async Task Json_gives_the_model_s_figures_under_the_documented_names()
    {
        var run = await CommandRun.OfAsync(["decide", "--lower", "0.6", "--upper", "2.0", .. Reading, "--json"]);

        var uncertainty = Math.Sqrt((Math.Pow((0.008 * 0.7) + 0.3, 2) + Math.Pow(0.05, 2)) / 3);
        var json = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(
            [
                "value", "standardUncertainty", "expandedUncertainty", "coverageFactor", "probabilityOfConformity", "decision",
                "degreesOfFreedom", "consumersRisk", "producersRisk", "rule", "acceptanceZone", "capabilityIndex", "evaluation", "coverage",
                "scatterUnknown",
            ],
            json.EnumerateObject().Select(property => property.Name));
        Assert.Equal(0.7, json.GetProperty("value").GetDouble(), 12);
        Assert.Equal(uncertainty, json.GetProperty("standardUncertainty").GetDouble(), 12);

        // The two rectangles add up to a trapezoid from 0.3556 with a top of 0.2556 to either side; its middle 95.45 %
        // ends on the slope (EA-4/02 S10, from memory), and 0.1 of it is 0.1/0.6112 on the top.
        var expanded = 0.3556 - Math.Sqrt(0.0455002639 * 0.6112 * 0.1);
        Assert.Equal(expanded, json.GetProperty("expandedUncertainty").GetDouble(), 9);
        Assert.Equal(expanded / uncertainty, json.GetProperty("coverageFactor").GetDouble(), 8);
        Assert.Equal(0.5 + (0.1 / 0.6112), json.GetProperty("probabilityOfConformity").GetDouble(), 9);
        Assert.Equal("distribution", json.GetProperty("evaluation").GetString());
        Assert.Equal(0.9545, json.GetProperty("coverage").GetDouble(), 4);
        Assert.True(json.GetProperty("scatterUnknown").GetBoolean());
        Assert.Equal("conditional pass", json.GetProperty("decision").GetString());
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Theory]
    [InlineData("1.0", "pass")]
    [InlineData("0.7", "conditional pass")]
    [InlineData("0.5", "conditional fail")]
    [InlineData("0.2", "fail")]
    public async Task Decision_is_one_of_the_four_words(string value, string decision)
    {
        var run = await CommandRun.OfAsync(
            "decide", "--lower", "0.6", "--upper", "2", "--unit", "Ω", "--value", value, "--accuracy", "0.8%+3", "--resolution", "0.1", "--json");

        Assert.Equal(decision, JsonDocument.Parse(run.Out).RootElement.GetProperty("decision").GetString());
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public async Task Figures_stay_in_the_unit_given()
    {
        var run = await CommandRun.OfAsync(
            "decide", "--lower", "8", "--upper", "13", "--unit", "kΩ", "--value", "9.4", "--accuracy", "0.8%+3", "--resolution", "0.01", "--json");

        var json = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(9.4, json.GetProperty("value").GetDouble(), 12);
        var uncertainty = Math.Sqrt((Math.Pow((0.008 * 9.4) + 0.03, 2) + Math.Pow(0.005, 2)) / 3);
        Assert.Equal(uncertainty, json.GetProperty("standardUncertainty").GetDouble(), 12);
    }

    [Fact]
    public async Task Repeats_are_averaged()
    {
        var run = await CommandRun.OfAsync(["decide", "--lower", "0.6", .. Reading, "--value", "0.8", "--json"]);

        Assert.Equal(0.75, JsonDocument.Parse(run.Out).RootElement.GetProperty("value").GetDouble(), 12);
    }

    [Fact]
    public async Task Bracket_between_gauges_is_decided()
    {
        var run = await CommandRun.OfAsync(
            "decide", "--lower", "0.2", "--upper", "0.4", "--unit", "mm", "--goes", "0.35", "--stops", "0.45", "--json");

        var json = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(0.4, json.GetProperty("value").GetDouble(), 12);
        Assert.Equal(0.5, json.GetProperty("probabilityOfConformity").GetDouble(), 12);
        Assert.Equal(0.1 / Math.Sqrt(12), json.GetProperty("standardUncertainty").GetDouble(), 12);
    }

    [Fact]
    public async Task Text_says_the_decision_in_a_sentence()
    {
        var run = await CommandRun.OfAsync(["decide", "--lower", "0.6", "--upper", "2", .. Reading]);

        Assert.StartsWith(
            "0.70\u00a0Ω ± 0.30\u00a0Ω: conditional pass. 66 in 100 that it is within 0.6 to 2.0\u00a0Ω.", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Ω")]
    [InlineData("\u2126")]
    [InlineData("ohm")]
    public async Task Ohms_may_be_written_three_ways(string unit)
    {
        var run = await CommandRun.OfAsync("decide", "--upper", "2", "--unit", unit, "--goes", "1", "--stops", "1.1");

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Theory]
    [InlineData("\"1,5\" given with --lower is not a number", "--lower", "1,5", "--upper", "2")]
    [InlineData("\"NaN\" given with --upper is not a number", "--upper", "NaN")]
    [InlineData("\"Infinity\" given with --upper is not a number", "--upper", "Infinity")]
    [InlineData("\"1e400\" given with --upper is not a number", "--upper", "1e400")]
    [InlineData("\"1 000\" given with --upper is not a number", "--upper", "1 000")]
    [InlineData("The upper limit must lie above the lower limit.", "--lower", "3", "--upper", "2")]
    [InlineData("Give a lower limit, an upper limit, or both.")]
    public async Task Bad_limits_are_refused_with_a_reason(string reason, params string[] limits)
    {
        var run = await CommandRun.OfAsync(["decide", .. limits, .. Reading]);

        AssertRefused(run, reason);
    }

    [Theory]
    [InlineData("Give the reading with --value, or with --goes and --stops.", "--unit", "Ω")]
    [InlineData("\"1,95\" given with --value is not a number", "--unit", "Ω", "--value", "1,95")]
    [InlineData("Give the instrument's accuracy", "--unit", "Ω", "--value", "1", "--resolution", "1")]
    [InlineData("Give the smallest step", "--unit", "Ω", "--value", "1", "--accuracy", "1%+1")]
    [InlineData("The resolution must be above 0", "--unit", "Ω", "--value", "1", "--accuracy", "1%+1", "--resolution", "0")]
    [InlineData("This is not an accuracy.", "--unit", "Ω", "--value", "1", "--accuracy", "good", "--resolution", "1")]
    [InlineData("not clear whether this is percent or counts", "--unit", "Ω", "--value", "1", "--accuracy", "3", "--resolution", "1")]
    [InlineData("Give both gauges", "--unit", "mm", "--goes", "0.3")]
    [InlineData("not both", "--unit", "mm", "--goes", "0.3", "--stops", "0.4", "--value", "1")]
    [InlineData("The gauge that stops must be larger", "--unit", "mm", "--goes", "0.4", "--stops", "0.3")]
    [InlineData("\"kg\" is not a unit known here", "--unit", "kg", "--value", "1")]
    [InlineData("'--unit' is required", "--value", "1")]
    [InlineData("\"--valu\" is not known here", "--unit", "Ω", "--valu", "1")]
    public async Task Bad_readings_are_refused_with_a_reason(string reason, params string[] reading)
    {
        var run = await CommandRun.OfAsync(["decide", "--upper", "2", .. reading]);

        AssertRefused(run, reason);
    }

    private static void AssertRefused(CommandRun run, string reason)
    {
        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }
}
