using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

/// <summary>Instruments described on the command line as their papers do.</summary>
public sealed class DecideInstrumentTests
{
    // A bench meter's manual: 5 V on the 10 V range, ±(0.0020 % of reading + 0.0005 % of range): 150 µV.
    [Fact]
    public async Task Share_of_the_range_is_taken_of_range()
    {
        var json = await JsonAsync(
            "--upper", "6", "--unit", "V", "--value", "5", "--accuracy", "0.0020% rdg + 0.0005% rng", "--range", "10", "--resolution", "0.00001");

        Assert.Equal(double.Hypot(150e-6, 5e-6) / Math.Sqrt(3), json.GetProperty("standardUncertainty").GetDouble(), 12);
    }

    [Fact]
    public async Task Fixed_size_is_read_in_its_own_unit_and_used_in_that_of_the_command_line()
    {
        var json = await JsonAsync("--upper", "6", "--unit", "kΩ", "--value", "5", "--accuracy", "0%+0+50 Ω", "--resolution", "0.01");

        Assert.Equal(double.Hypot(0.05, 0.005) / Math.Sqrt(3), json.GetProperty("standardUncertainty").GetDouble(), 12);
    }

    [Theory]
    [InlineData("33", 1.5)]
    [InlineData("20", 1)]
    public async Task Accuracy_is_widened_outside_the_stated_temperatures(string ambient, double times)
    {
        var json = await JsonAsync(
            "--upper", "20", "--unit", "V", "--value", "10", "--accuracy", "1%", "--resolution", "0.1", "--temperature-coefficient", "0.1 x accuracy",
            "--ambient", ambient);

        Assert.Equal(double.Hypot(0.1 * times, 0.05) / Math.Sqrt(3), json.GetProperty("standardUncertainty").GetDouble(), 12);
    }

    [Fact]
    public async Task Value_is_corrected_along_the_certificate_s_points()
    {
        string[] meter = ["--upper", "20", "--unit", "V", "--accuracy", "1%", "--resolution", "0.1", "--correction", "15=-0.3", "--correction", "5=0.1"];

        Assert.Equal(9.9, (await JsonAsync([.. meter, "--value", "10"])).GetProperty("value").GetDouble(), 12);
        Assert.Equal(16, (await JsonAsync([.. meter, "--value", "16"])).GetProperty("value").GetDouble(), 12);
        var with = await JsonAsync([.. meter, "--value", "10", "--certificate-uncertainty", "0.4"]);
        Assert.Equal(Math.Sqrt((0.01 + 0.0025) / 3 + 0.04), with.GetProperty("standardUncertainty").GetDouble(), 12);
    }

    [Theory]
    [InlineData("0.15", 0.0001, 0.2)]
    [InlineData("1.5", 0.001, 2)]
    [InlineData("15", 0.01, 20)]
    public async Task Meter_that_chooses_its_range_is_read_on_the_finest_that_shows_the_value(string value, double step, double range)
    {
        var json = await JsonAsync(
            "--upper", "20", "--unit", "kΩ", "--value", value, "--accuracy", "0.1% rng", "--resolution", "0.01", "--range", "20",
            "--other-range", "2", "--other-range", "0.2", "--auto-range");

        Assert.Equal(double.Hypot(range / 1000, step / 2) / Math.Sqrt(3), json.GetProperty("standardUncertainty").GetDouble(), 12);
    }

    [Theory]
    [InlineData("give the range in use with --range", "--accuracy", "1% rng")]
    [InlineData("V is a unit of voltage", "--accuracy", "1% + 0.1 V")]
    [InlineData("two percentages of the reading", "--accuracy", "1% + 2%")]
    [InlineData("is not a correction", "--accuracy", "1%", "--correction", "5")]
    [InlineData("is not a correction", "--accuracy", "1%", "--correction", "5=1e300")]
    [InlineData("two corrections for one reading", "--accuracy", "1%", "--correction", "5=1", "--correction", "5=2")]
    [InlineData("--certificate-uncertainty must be above 0", "--accuracy", "1%", "--certificate-uncertainty", "0")]
    [InlineData("Give the temperature of the air with --ambient", "--accuracy", "1%", "--temperature-coefficient", "0.1x")]
    [InlineData("Give what the data sheet adds", "--accuracy", "1%", "--ambient", "33")]
    [InlineData("temperatures the accuracy is stated for", "--accuracy", "1%", "--ambient", "33", "--temperature-coefficient", "0.1x", "--stated-at", "warm")]
    [InlineData("Give --auto-range its ranges", "--accuracy", "1%", "--auto-range")]
    [InlineData("60\u00a0Ω is more than the 50\u00a0Ω range", "--accuracy", "1%", "--auto-range", "--range", "5", "--other-range", "50", "--value", "60")]
    public async Task What_no_papers_say_is_refused_with_a_reason(string reason, params string[] arguments)
    {
        var run = await CommandRun.OfAsync(["decide", "--upper", "9", "--unit", "Ω", "--value", "5", "--resolution", "1", .. arguments]);

        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }

    private static async Task<JsonElement> JsonAsync(params string[] arguments)
    {
        var run = await CommandRun.OfAsync(["decide", "--json", .. arguments]);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        return JsonDocument.Parse(run.Out).RootElement.Clone();
    }
}
