using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

/// <summary>A winding's temperature on the command line: 71.0 °C and 49.0 K by IEC 60034-1, 8.6.2 (from memory). The
/// uncertainties are worked out by hand in the tests of the measuring room.</summary>
public sealed class RiseTests
{
    private static readonly string[] Given =
        ["refer", "--rise", "--cold", "3.00", "--cold-at", "20", "--hot", "3.60", "--coolant", "22", "--unit", "Ω"];

    [Fact]
    public async Task Rise_is_said_in_words() =>
        Assert.Equal(
            "Winding 71.0 °C, a rise of 49.0 K.", Assert.Single((await CommandRun.OfAsync(Given)).Lines));

    [Theory]
    [InlineData(1.8196)]
    [InlineData(2.9472, "--two-meters")]
    [InlineData(1.5845, "--one-thermometer")]
    public async Task Rise_carries_meter_and_temperatures(double u, params string[] options)
    {
        var run = await CommandRun.OfAsync(
            [.. Given, "--accuracy", "0.5%+2", "--resolution", "0.01", "--within", "1", "--json", .. options]);

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(49, answer.GetProperty("rise").GetDouble(), 9);
        Assert.Equal(71, answer.GetProperty("temperature").GetDouble(), 9);
        Assert.Equal(u, answer.GetProperty("riseStandardUncertainty").GetDouble(), 4);
        Assert.InRange(answer.GetProperty("riseExpandedUncertainty").GetDouble(), 1.5 * u, 2 * u);
    }

    // By hand: 0.01 Ω of each: 255·1.2·0.01·√(1/3.6² + 1/3²) = 1.3278 K, twice that with k = 2.
    [Fact]
    public async Task Uncertainty_of_each_resistance_may_be_given_as_such() =>
        Assert.Contains(
            "a rise of 49.0 K ± 2.7 K (95.45 %).",
            (await CommandRun.OfAsync([.. Given, "--uncertainty", "0.01"])).Out, StringComparison.Ordinal);

    [Theory]
    [InlineData("Give --hot: a rise needs", "--rise", "--cold", "3", "--unit", "Ω")]
    [InlineData("--cold goes with --rise", "--cold", "3", "--value", "3", "--at", "20", "--unit", "Ω")]
    [InlineData("--at is for referring", "--rise", "--cold", "3", "--hot", "4", "--cold-at", "20", "--coolant", "20", "--at", "5", "--unit", "Ω")]
    [InlineData("--value is for referring", "--rise", "--value", "3", "--unit", "Ω")]
    [InlineData("is not a unit of resistance", "--rise", "--cold", "3", "--hot", "4", "--cold-at", "20", "--coolant", "20", "--unit", "V")]
    [InlineData("above 0", "--rise", "--cold", "0", "--hot", "4", "--cold-at", "20", "--coolant", "20", "--unit", "Ω")]
    [InlineData("−60 and 300", "--rise", "--cold", "3", "--hot", "4", "--cold-at", "999", "--coolant", "20", "--unit", "Ω")]
    [InlineData("not both", "--rise", "--cold", "3", "--hot", "4", "--cold-at", "20", "--coolant", "20", "--unit", "Ω", "--uncertainty", "1", "--accuracy", "1%")]
    public async Task What_cannot_be_used_is_said(string says, params string[] options)
    {
        var run = await CommandRun.OfAsync(["refer", .. options]);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }
}
