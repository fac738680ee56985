using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

/// <summary>Which instrument it was, how long its calibration is good, and what its test leads may read.</summary>
public sealed class DecidePapersTests
{
    private static readonly string[] Reading =
        ["decide", "--lower", "0.6", "--upper", "2", "--unit", "ohm", "--value", "1.2", "--accuracy", "0.8%+3", "--resolution", "0.01"];

    [Theory]
    [InlineData("Serial number 4711. Overdue: its calibration was good until 31 March 2026.", "2026-04-01")]
    [InlineData("Serial number 4711. Calibration due on 31 March 2026.", "2026-03-31")]
    public async Task Instrument_is_named_and_said_to_be_overdue_from_the_day_after(string says, string readOn)
    {
        var run = await CommandRun.OfAsync([.. Reading, "--serial", "4711", "--due", "2026-03-31", "--read-on", readOn]);

        Assert.Equal(0, run.ExitCode);
        Assert.Contains(says, run.Lines);
    }

    [Fact]
    public async Task Day_of_reading_is_today_where_none_is_given() =>
        Assert.Contains(
            "Overdue: its calibration was good until 31 March 1999.",
            (await CommandRun.OfAsync([.. Reading, "--due", "1999-03-31"])).Lines);

    [Fact]
    public async Task Json_says_whether_it_was_overdue_and_nothing_where_nothing_was_given()
    {
        var overdue = JsonDocument.Parse((await CommandRun.OfAsync([.. Reading, "--due", "1999-03-31", "--serial", "7", "--json"])).Out).RootElement;
        var plain = JsonDocument.Parse((await CommandRun.OfAsync([.. Reading, "--json"])).Out).RootElement;

        Assert.True(overdue.GetProperty("overdue").GetBoolean());
        Assert.Equal("7", overdue.GetProperty("serialNumber").GetString());
        Assert.False(plain.TryGetProperty("overdue", out _));
        Assert.False(plain.TryGetProperty("serialNumber", out _));
    }

    [Theory]
    [InlineData("--due is a day such as", "--due", "31.3.2026")]
    [InlineData("--read-on is a day such as", "--due", "2026-03-31", "--read-on", "today")]
    [InlineData("--read-on goes with --due", "--read-on", "2026-03-31")]
    [InlineData("Test leads: Your meter shows steps of 0.01\u00a0Ω, not 0.215\u00a0Ω", "--leads", "0.215")]
    [InlineData("Test leads: 30\u00a0Ω is more than the 20\u00a0Ω range shows", "--leads", "30", "--range", "20")]
    public async Task What_cannot_be_is_said(string says, params string[] options)
    {
        var run = await CommandRun.OfAsync([.. Reading, .. options]);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    // Another instrument read them: its steps are its own.
    [Fact]
    public async Task Leads_of_another_instrument_are_not_held_against_this_one() =>
        Assert.Equal(0, (await CommandRun.OfAsync(
            [.. Reading, "--leads", "0.215", "--leads-accuracy", "0.1%+1", "--leads-resolution", "0.001"])).ExitCode);
}
