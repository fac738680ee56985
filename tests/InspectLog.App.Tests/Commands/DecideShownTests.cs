namespace InspectLog.App.Tests.Commands;

/// <summary>What no instrument shows is refused in a sentence and never decided.</summary>
public sealed class DecideShownTests
{
    private static readonly string[] Meter = ["--accuracy", "0.8%+3", "--resolution", "0.1"];

    [Theory]
    [InlineData("9.4 kΩ is more than the 200 Ω range shows", "kΩ", "--value", "9.4", "--range", "0.2")]
    [InlineData("shows steps of 0.1 Ω, not 0.75 Ω: was it 0.7 Ω or 0.8 Ω?", "Ω", "--value", "0.75")]
    [InlineData("not 1.95 Ω: was it 1.9 Ω or 2.0 Ω?", "Ω", "--value", "1.9", "--value", "1.95")]
    [InlineData("The resistance cannot be below zero", "Ω", "--value", "-0.2")]
    [InlineData("The resistance cannot be below zero", "Ω", "--value", "0.2", "--leads=-0.1")]
    [InlineData("The test leads read more than the part", "Ω", "--value", "0.2", "--leads", "3.1")]
    [InlineData("The length cannot be below zero", "mm", "--value", "-0.3")]
    [InlineData("\"1e308\" given with --value is too large to work with", "Ω", "--value", "1e308")]
    public async Task Displayed_value_that_no_meter_shows_is_refused(string reason, string unit, params string[] value)
    {
        AssertRefused(await CommandRun.OfAsync(["decide", "--upper", "2", "--unit", unit, .. Meter, .. value]), reason);
    }

    [Theory]
    [InlineData("The size of a gauge cannot be below zero", "--goes=-0.30", "--stops", "0.35")]
    [InlineData("The size of a gauge cannot be below zero", "--goes", "0.5", "--goes=-0.2", "--stops", "0.35")]
    [InlineData("The length cannot be below zero", "--value", "-1", "--uncertainty", "0.1")]
    public async Task Gauge_or_known_value_below_zero_is_refused(string reason, params string[] reading)
    {
        AssertRefused(await CommandRun.OfAsync(["decide", "--upper", "2", "--unit", "mm", .. reading]), reason);
    }

    [Theory]
    [InlineData("--upper", "1e308", "--value", "1e308", "--uncertainty", "1e308")]
    [InlineData("--upper", "2", "--value", "1", "--uncertainty", "1e308")]
    [InlineData("--lower=-1e308", "--value", "1", "--uncertainty", "1")]
    [InlineData("--upper", "1e308", "--goes", "1", "--stops", "1e308")]
    [InlineData("--upper", "2", "--value", "1", "--accuracy", "1%+1", "--resolution", "1e308")]
    [InlineData("--upper", "2", "--value", "1", "--accuracy", "1%+1", "--resolution", "1", "--range", "1e308")]
    [InlineData("--upper", "2", "--value", "1", "--accuracy", "1%+1", "--resolution", "1", "--allow", "method=1e308")]
    public async Task Number_too_large_to_work_with_gets_a_sentence(params string[] arguments)
    {
        AssertRefused(await CommandRun.OfAsync(["decide", "--unit", "kohm", "--budget", .. arguments]), "too large");
    }

    [Fact]
    public async Task Voltage_may_be_below_zero()
    {
        var run = await CommandRun.OfAsync(["decide", "--upper", "2", "--unit", "V", "--value=-0.2", .. Meter]);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Fact]
    public async Task Part_as_good_as_zero_is_decided_and_said_so()
    {
        var run = await CommandRun.OfAsync(["decide", "--upper", "2", "--unit", "Ω", "--value", "0.2", "--leads", "0.3", .. Meter]);

        Assert.Contains("as good as 0", run.Out, StringComparison.Ordinal);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    private static void AssertRefused(CommandRun run, string reason)
    {
        Assert.Contains(reason, run.Error.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }
}
