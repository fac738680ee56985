using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

/// <content>Rules, zones, blades, units, and what is refused.</content>
public sealed partial class DecideBudgetTests
{
    /// <summary>JCGM 106:2012, 7.4 (motor oil, prints 0.66), the Zener and burst-pressure examples (from memory), and a
    /// workshop case; figures recomputed by the formulas of clause 7.</summary>
    [Theory]
    [InlineData("13.6", "1.8", "12.5", "16.3", 0.662630)]
    [InlineData("-5.47", "0.05", null, "-5.40", 0.919243)]
    [InlineData("509.7", "8.6", "490", null, 0.989010)]
    [InlineData("3.42", "0.05", "2.80", "3.40", 0.344578)]
    public async Task Known_uncertainty_gives_the_published_probability(
        string value, string u, string? lower, string? upper, double probability)
    {
        string[] limits = [.. lower is null ? Array.Empty<string>() : ["--lower", lower], .. upper is null ? Array.Empty<string>() : ["--upper", upper]];
        var json = await JsonAsync(["--unit", "V", "--value", value, "--uncertainty", u, .. limits]);

        Assert.Equal(probability, Number(json, "probabilityOfConformity"), 6);
        var accepted = json.GetProperty("consumersRisk").ValueKind == JsonValueKind.Number;
        Assert.Equal(
            accepted ? 1 - probability : probability, Number(json, accepted ? "consumersRisk" : "producersRisk"), 6);
    }

    /// <summary>ILAC-G8:09/2019, 4.2; ISO 14253-1:2017 (from memory): a guard band of 1.645 u, so 3.3178 of 3.40 with
    /// u = 0.05.</summary>
    [Theory]
    [InlineData("3.35", "conditional pass", "non-binary", 3.30)]
    [InlineData("3.35", "conditional pass", "non-binary", 3.30, "--rule", "ilac-g8")]
    [InlineData("3.35", "pass", "simple", 3.40, "--rule", "simple")]
    [InlineData("3.35", "fail", "guard band 1", 3.30, "--rule", "guard-band")]
    [InlineData("3.31", "pass", "guard band 0.83", 3.317, "--rule", "guard-band", "--guard-factor", "0.83")]
    [InlineData("3.317", "proven conforming", "iso-14253-1", 3.317757, "--rule", "iso-14253-1")]
    [InlineData("3.318", "neither proven", "iso-14253-1", 3.317757, "--rule", "iso-14253-1")]
    [InlineData("3.33", "neither proven", "iso-14253-1", 3.317757, "--rule", "iso-14253-1")]
    [InlineData("3.48", "neither proven", "iso-14253-1", 3.317757, "--rule", "iso-14253-1")]
    [InlineData("3.483", "proven non-conforming", "iso-14253-1", 3.317757, "--rule", "iso-14253-1")]
    [InlineData("3.318", "fail", "risk 0.05", 3.317757, "--rule", "risk")]
    [InlineData("3.318", "pass", "risk 0.1", 3.335922, "--rule", "RISK", "--risk", "0.1")]
    public async Task Rule_can_be_chosen(string value, string decision, string rule, double acceptance, params string[] options)
    {
        var json = await JsonAsync(["--upper", "3.4", "--unit", "Ω", "--value", value, "--uncertainty", "0.05", .. options]);

        Assert.Equal(decision, json.GetProperty("decision").GetString());
        Assert.Equal(rule, json.GetProperty("rule").GetString());
        Assert.Equal(acceptance, Number(json.GetProperty("acceptanceZone"), "upper"), 6);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("acceptanceZone").GetProperty("lower").ValueKind);
    }

    [Fact]
    public async Task Acceptance_zone_that_is_empty_is_null()
    {
        var json = await JsonAsync("--lower", "0.25", "--upper", "0.35", "--unit", "mm", "--value", "0.3", "--uncertainty", "0.03");

        Assert.Equal(JsonValueKind.Null, json.GetProperty("acceptanceZone").ValueKind);
        // JCGM 106:2012, 7.5: C_m = 0.1/(4·0.03).
        Assert.Equal(0.833333, Number(json, "capabilityIndex"), 6);
    }

    [Fact]
    public async Task Small_risk_keeps_its_digits_and_degrees_of_freedom_set_the_factor()
    {
        string[] arguments = ["--upper", "10", "--unit", "Ω", "--value", "0", "--uncertainty", "1"];
        var known = await JsonAsync(arguments);
        var json = await JsonAsync([.. arguments, "--degrees-of-freedom", "4"]);

        // Upper tail of a normal distribution at 10 (from memory of printed tables): 7.6199e-24. That of t with 4 degrees of
        // freedom, by Abramowitz and Stegun 26.7.4: ½ − ⅜·(10/√26)·(1 − 100/312). NIST TN 1297, Table B.1:
        // t(95.45 %, 4) = 2.87.
        Assert.Equal(1, Number(known, "consumersRisk") / 7.6199e-24, 4);
        Assert.Equal(0.5 - (3 / 8.0 * 10 / Math.Sqrt(26) * (1 - (100 / 312.0))), Number(json, "consumersRisk"), 12);
        Assert.Equal(2.87, Number(json, "coverageFactor"), 2);
        Assert.Equal(4, Number(json, "degreesOfFreedom"));
    }

    [Fact]
    public async Task Blades_may_be_stacked_and_have_a_tolerance()
    {
        var json = await JsonAsync(
            "--lower", "0.2", "--upper", "0.4", "--unit", "mm", "--goes", "0.25", "--goes", "0.10", "--stops", "0.40",
            "--blade-tolerance", "0.003", "--budget");

        Assert.Equal(0.375, Number(json, "value"), 12);
        // Three blades of ±0.003, rectangular, a third of their variances: see the measuring room.
        Assert.Equal(0.003 * Math.Sqrt(3 / 9.0), Number(Line(json, "size of the gauges"), "standardUncertainty"), 12);
    }

    /// <summary>A percentage of a reading in °F is one of its number in °F, and an uncertainty has no zero point.</summary>
    [Fact]
    public async Task Fahrenheit_is_worked_out_in_Fahrenheit()
    {
        string[] arguments = ["--upper", "212", "--unit", "°F", "--value", "211", "--accuracy", "1%+0", "--resolution", "0.1"];
        var json = await JsonAsync(arguments);
        var run = await CommandRun.OfAsync(["decide", .. arguments]);

        Assert.Equal(double.Hypot(2.11, 0.05) / Math.Sqrt(3), Number(json, "standardUncertainty"), 12);
        Assert.Equal(211, Number(json, "value"));
        Assert.StartsWith("211.0\u00a0°F ± 2.0\u00a0°F: conditional pass.", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3\u00a0Ω is more than the 2\u00a0Ω range shows", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--range", "2")]
    [InlineData("Give the range in use with --range", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--other-range", "2")]
    [InlineData("each --other-range above 0", "--value", "1", "--accuracy", "1%+1", "--resolution", "1", "--range", "2", "--other-range", "0")]
    [InlineData("Give both --leads-accuracy and --leads-resolution", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--leads", "1", "--leads-resolution", "1")]
    [InlineData("--leads-accuracy goes with --leads", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--leads-accuracy", "1%")]
    [InlineData("\"dog=1\" given with --allow is not an allowance", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--allow", "dog=1")]
    [InlineData("\"operator=1,5\" given with --allow", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--allow", "operator=1,5")]
    [InlineData("An allowance must be 0 or more", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--allow", "operator=-1")]
    [InlineData("Give the winding's temperature with --at", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--to", "20")]
    [InlineData("between −60 and 300", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--at", "999")]
    [InlineData("--constant or --alpha, not both", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--at", "30", "--constant", "235", "--alpha", "0.004")]
    [InlineData("must be above 0", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--at", "30", "--alpha", "0")]
    [InlineData("--degrees-of-freedom goes with --uncertainty", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--degrees-of-freedom", "3")]
    [InlineData("--blade-tolerance goes with --goes and --stops", "--value", "3", "--accuracy", "1%+1", "--resolution", "1", "--blade-tolerance", "3")]
    [InlineData("--accuracy cannot be given with --uncertainty", "--value", "3", "--accuracy", "1%+1", "--uncertainty", "1")]
    [InlineData("Give one --value with --uncertainty", "--value", "3", "--value", "4", "--uncertainty", "1")]
    [InlineData("A standard uncertainty must be 0 or more", "--value", "3", "--uncertainty", "-1")]
    [InlineData("1 degree of freedom or more", "--value", "3", "--uncertainty", "1", "--degrees-of-freedom", "0")]
    [InlineData("--leads is for a displayed value", "--goes", "3", "--stops", "4", "--leads", "0.2")]
    [InlineData("must be above 0", "--goes", "-3", "--stops", "4", "--blade-tolerance", "0.1")]
    [InlineData("\"strict\" given with --rule is not known here", "--value", "3", "--uncertainty", "1", "--rule", "strict")]
    [InlineData("--risk goes with --rule risk alone", "--value", "3", "--uncertainty", "1", "--risk", "0.1")]
    [InlineData("--guard-factor goes with --rule guard-band alone", "--value", "3", "--uncertainty", "1", "--rule", "simple", "--guard-factor", "1")]
    [InlineData("at most 50 %", "--value", "3", "--uncertainty", "1", "--rule", "risk", "--risk", "0.6")]
    [InlineData("at most 5 expanded uncertainties", "--value", "3", "--uncertainty", "1", "--rule", "guard-band", "--guard-factor", "9")]
    public async Task What_does_not_fit_together_is_refused_with_a_reason(string reason, params string[] arguments)
    {
        var run = await CommandRun.OfAsync(["decide", "--upper", "5", "--unit", "Ω", .. arguments]);

        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }

    [Theory]
    [InlineData("V", "Test leads are subtracted from a resistance only", "--leads", "0.2")]
    [InlineData("V", "V is not a unit of resistance", "--at", "30")]
    public async Task What_needs_a_resistance_is_refused_for_other_units(string unit, string reason, params string[] arguments)
    {
        var run = await CommandRun.OfAsync(
            ["decide", "--upper", "5", "--unit", unit, "--value", "1", "--accuracy", "1%+1", "--resolution", "1", .. arguments]);

        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }
}
