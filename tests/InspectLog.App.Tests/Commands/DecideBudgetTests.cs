using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

/// <summary>The budget, the rules and the kinds of uncertainty of the verb decide.</summary>
public sealed partial class DecideBudgetTests
{
    private static readonly string[] Coil =
        ["--lower", "1.3", "--upper", "1.7", "--unit", "Ω", "--accuracy", "0.8%+3", "--resolution", "0.01"];

    private static async Task<JsonElement> JsonAsync(params string[] arguments)
    {
        var run = await CommandRun.OfAsync(["decide", .. arguments, "--json"]);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        return JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
    }

    private static double Number(JsonElement json, string name) => json.GetProperty(name).GetDouble();

    private static JsonElement Line(JsonElement json, string name) =>
        json.GetProperty("budget").EnumerateArray().Single(line => line.GetProperty("name").GetString() == name);

    /// <summary>The model of JCGM 100:2008 worked out by hand: y = (1.79 − 0.22)·255/270, the error in percent being common
    /// to both readings.</summary>
    [Fact]
    public async Task Budget_lists_each_contribution_with_its_sensitivity_and_share()
    {
        var json = await JsonAsync(
            [.. Coil, "--value", "1.79", "--leads", "0.22", "--allow", "operator=0.01", "--at", "35", "--within", "5", "--budget",
                "--evaluation", "classical"]);

        const double factor = 255.0 / 270;
        var accuracy = ((0.008 * 1.57) + 0.03) / Math.Sqrt(3);
        double[] parts =
        [
            factor * accuracy, factor * 0.03 / Math.Sqrt(3), factor * 0.005 / Math.Sqrt(3), factor * 0.005 / Math.Sqrt(3),
            factor * 0.01 / Math.Sqrt(3), 1.57 * factor / 270 * 5 / Math.Sqrt(3),
        ];
        var combined = Math.Sqrt(parts.Sum(part => part * part));
        Assert.Equal(1.57 * factor, Number(json, "value"), 12);
        Assert.Equal(combined, Number(json, "standardUncertainty"), 12);
        Assert.Equal(2 * combined, Number(json, "expandedUncertainty"), 12);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("degreesOfFreedom").ValueKind);
        Assert.Equal(6, json.GetProperty("budget").GetArrayLength());
        Assert.Equal(1, json.GetProperty("budget").EnumerateArray().Sum(line => Number(line, "share")), 12);

        var first = Line(json, "instrument accuracy");
        Assert.Equal(accuracy, Number(first, "inputUncertainty"), 12);
        Assert.Equal(factor, Number(first, "sensitivity"), 12);
        Assert.Equal(factor * accuracy, Number(first, "standardUncertainty"), 12);
        Assert.Equal(Math.Pow(factor * accuracy / combined, 2), Number(first, "share"), 12);
        Assert.Equal("B", first.GetProperty("evaluation").GetString());
        Assert.Equal(JsonValueKind.Null, first.GetProperty("degreesOfFreedom").ValueKind);
        Assert.Equal(-factor, Number(Line(json, "counts of the test-lead reading"), "sensitivity"), 12);
        Assert.Equal(-1.57 * factor / 270, Number(Line(json, "winding temperature"), "sensitivity"), 12);
        Assert.Equal(5 / Math.Sqrt(3), Number(Line(json, "winding temperature"), "inputUncertainty"), 12);
    }

    [Fact]
    public async Task Repeats_of_reading_and_leads_are_type_A()
    {
        var json = await JsonAsync(
            [.. Coil, "--value", "1.79", "--value", "1.82", "--value", "1.80", "--leads", "0.22", "--leads", "0.24", "--budget"]);

        var repeats = Line(json, "spread of the repeats");
        Assert.Equal("A", repeats.GetProperty("evaluation").GetString());
        Assert.Equal(2, Number(repeats, "degreesOfFreedom"));
        Assert.Equal(1, Number(Line(json, "spread of the test-lead readings"), "degreesOfFreedom"));
        Assert.InRange(Number(json, "degreesOfFreedom"), 2, 1000);
        Assert.True(Number(json, "coverageFactor") > 2);
    }

    [Fact]
    public async Task Leads_of_another_instrument_keep_their_own_error()
    {
        var json = await JsonAsync(
            [.. Coil, "--value", "1.79", "--leads", "0.220", "--leads-accuracy", "0.5%+2", "--leads-resolution", "0.001", "--budget"]);

        Assert.Equal(((0.005 * 0.22) + 0.002) / Math.Sqrt(3), Number(Line(json, "accuracy of the test-lead reading"), "standardUncertainty"), 12);
        Assert.Equal(((0.008 * 1.79) + 0.03) / Math.Sqrt(3), Number(Line(json, "instrument accuracy"), "standardUncertainty"), 12);
    }

    [Fact]
    public async Task Advice_says_what_each_step_would_bring_down_to()
    {
        var json = await JsonAsync(
            "--upper", "1.8", "--unit", "kΩ", "--value", "1.7", "--accuracy", "0.8%+3", "--resolution", "0.1",
            "--range", "200", "--other-range", "20", "--other-range", "2", "--budget");

        var advice = json.GetProperty("advice");
        Assert.Equal(0.1, Number(advice, "uncertaintyNeeded"), 12);
        var best = advice.GetProperty("improvements")[0];
        Assert.Equal("use the 2\u00a0kΩ range", best.GetProperty("action").GetString());
        // The display's step only rounds the corners of the accuracy's rectangle, outside its middle 95.45 %.
        Assert.Equal(0.9544997361 * ((0.008 * 1.7) + 0.003), Number(best, "expandedUncertainty"), 9);
        Assert.True(best.GetProperty("settles").GetBoolean());
    }

    [Fact]
    public async Task Text_shows_the_budget_as_a_table_and_the_advice()
    {
        var run = await CommandRun.OfAsync(
            ["decide", .. Coil, "--value", "1.88", "--leads", "0.22", "--allow", "leads=0.05", "--at", "20", "--within", "5", "--budget"]);

        Assert.Contains("contribution ", run.Out, StringComparison.Ordinal);
        Assert.Contains("2.887 °C", run.Out, StringComparison.Ordinal);
        Assert.Contains(" Ω/°C", run.Out, StringComparison.Ordinal);
        Assert.Contains("effective degrees of freedom ∞, coverage factor k = 1.", run.Out, StringComparison.Ordinal);
        Assert.Contains(" for 95.45 %, expanded uncertainty", run.Out, StringComparison.Ordinal);
        Assert.Contains("distribution that the contributions add up to", run.Out, StringComparison.Ordinal);
        Assert.Contains("A single reading hides", run.Out, StringComparison.Ordinal);
        Assert.Contains("Non-binary rule of ILAC-G8:09/2019", run.Out, StringComparison.Ordinal);
        Assert.Contains("specific consumer's risk", run.Out, StringComparison.Ordinal);
        Assert.Contains("would have to come down to", run.Out, StringComparison.Ordinal);
        Assert.Contains("Null the test leads: down to", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Text_of_a_rejected_value_tells_the_producers_risk_and_an_empty_zone()
    {
        var run = await CommandRun.OfAsync(
            "decide", "--lower", "0.25", "--upper", "0.35", "--unit", "mm", "--value", "0.36", "--uncertainty", "0.03", "--budget");

        Assert.Contains("specific producer's risk", run.Out, StringComparison.Ordinal);
        Assert.Contains("no value could pass", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Value_on_its_limit_cannot_be_made_clear()
    {
        var run = await CommandRun.OfAsync(
            "decide", "--upper", "2", "--unit", "Ω", "--value", "2", "--uncertainty", "0.03", "--budget");

        Assert.Contains("no uncertainty is small enough", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Clear_answer_needs_no_advice()
    {
        var run = await CommandRun.OfAsync(
            "decide", "--upper", "2", "--unit", "Ω", "--value", "1", "--uncertainty", "0.03", "--budget");

        Assert.Contains("The answer is clear of its limit by 1.0 Ω.", run.Out, StringComparison.Ordinal);
    }
}
