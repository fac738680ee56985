namespace InspectLog.App.Tests.Commands;

/// <content>How the uncertainty is found, what is known of scatter, and risks over many parts.</content>
public sealed partial class DecideBudgetTests
{
    /// <summary>EA-4/02 S9 (from memory): a step of 0.1 V, a calibrator within 0.011 V of u = 0.001 V; U = 0.05 V at 95 %,
    /// since a rectangle dominates. By k = 2 it would be 0.06 V.</summary>
    [Fact]
    public async Task Coverage_and_evaluation_can_be_chosen()
    {
        string[] arguments =
        [
            "--upper", "101", "--unit", "V", "--value", "100.1", "--accuracy", "+0", "--resolution", "0.1", "--allow", "method=0.011",
            "--allow", "reference=0.002",
        ];

        Assert.Equal(0.05, Math.Round(Number(await JsonAsync([.. arguments, "--coverage", "95"]), "expandedUncertainty"), 2));
        var classical = await JsonAsync([.. arguments, "--evaluation", "classical"]);
        Assert.Equal((2, "classical"), (Number(classical, "coverageFactor"), classical.GetProperty("evaluation").GetString()));
        Assert.Equal(0.06, Math.Round(Number(classical, "expandedUncertainty"), 2));
        Assert.True(Number(await JsonAsync([.. arguments, "--coverage", "99"]), "expandedUncertainty") > 0.05);
    }

    [Fact]
    public async Task Known_scatter_makes_two_readings_worth_something()
    {
        string[] arguments =
            ["--upper", "9.6", "--unit", "Ω", "--value", "9.00", "--value", "9.10", "--accuracy", "0.1%+1", "--resolution", "0.01"];

        var alone = await JsonAsync(arguments);
        var among = await JsonAsync([.. arguments, "--scatter", "0.06", "--scatter-degrees", "12"]);

        Assert.Equal("conditional pass", alone.GetProperty("decision").GetString());
        Assert.Equal("pass", among.GetProperty("decision").GetString());
        Assert.True(Number(alone, "consumersRisk") > 0.02);
    }

    [Theory]
    [InlineData("--coverage is in percent", "--coverage", "0.95")]
    [InlineData("--coverage is in percent", "--coverage", "100")]
    [InlineData("--scatter-degrees goes with --scatter", "--scatter-degrees", "3")]
    [InlineData("known scatter is 0 or more", "--scatter", "-1")]
    [InlineData("Use one of distribution, classical", "--evaluation", "guess")]
    public async Task Evaluation_that_makes_no_sense_is_refused(string reason, string option, string value)
    {
        var run = await CommandRun.OfAsync(
            "decide", "--upper", "9.6", "--unit", "Ω", "--value", "9.00", "--accuracy", "0.1%+1", "--resolution", "0.01", option, value);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
    }

    /// <summary>Parts N(0, 1), readings with u = 0.25, limits ±2, simple acceptance: 0.8 % and 1.5 % (recomputed by JCGM
    /// 106:2012, 9.5).</summary>
    [Fact]
    public async Task Risks_over_many_parts_can_be_asked_for()
    {
        string[] arguments =
        [
            "--lower=-2", "--upper", "2", "--unit", "V", "--value", "0", "--uncertainty", "0.25", "--rule", "simple", "--parts-mean", "0",
            "--parts-scatter", "1",
        ];
        var over = (await JsonAsync(arguments)).GetProperty("overParts");
        var text = await CommandRun.OfAsync(["decide", .. arguments]);

        Assert.Equal(0.00800608, Number(over, "consumers"), 6);
        Assert.Equal(0.0148509, Number(over, "producers"), 6);
        Assert.Contains("accept 0.801 % that are outside, and reject 1.49 % that are within", text.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Give both --parts-mean and --parts-scatter", "--parts-mean", "1")]
    [InlineData("scatter of parts must be above 0", "--parts-mean", "1", "--parts-scatter", "0")]
    public async Task Parts_that_make_no_sense_are_refused(string reason, params string[] options)
    {
        var run = await CommandRun.OfAsync(["decide", "--upper", "2", "--unit", "V", "--value", "1", "--uncertainty", "0.25", .. options]);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
    }
}
