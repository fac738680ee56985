using System.Text.Json;

namespace InspectLog.App.Tests.Commands;

/// <content>The verb trend.</content>
public sealed partial class DerivedVerbTests
{
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

    /// <summary>GUM H.3 (Table H.6): a thermometer's corrections; printed are the line, its standard errors, their
    /// correlation, and the correction foretold for 30 °C with its uncertainty.</summary>
    [Fact]
    public async Task Trend_foretells_as_the_GUM_does()
    {
        const string data = """
            temperature - 20,correction
            1.521, -.171
            2.012, -.169
            2.512, -.166
            3.003, -.159
            3.507, -.164
            3.999, -.165
            4.513, -.156
            5.002, -.157
            5.503, -.159
            6.010, -.161
            6.511, -.160
            """;

        var run = await CommandRun.WithAsync(null!, data, "trend", "--at", "10", "--json");

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(-0.1712, answer.GetProperty("intercept").GetDouble(), 4);
        Assert.Equal(0.0029, answer.GetProperty("interceptStandardError").GetDouble(), 4);
        Assert.Equal(0.00218, answer.GetProperty("slope").GetDouble(), 5);
        Assert.Equal(0.00067, answer.GetProperty("slopeStandardError").GetDouble(), 5);
        Assert.Equal(0.0035, answer.GetProperty("residualStandardDeviation").GetDouble(), 4);
        Assert.Equal(-0.930, answer.GetProperty("slopeInterceptCorrelation").GetDouble(), 3);
        Assert.Equal(11, answer.GetProperty("points").GetInt32());
        var foretold = answer.GetProperty("predictions")[0];
        Assert.Equal(-0.1494, foretold.GetProperty("y").GetDouble(), 4);
        Assert.Equal(0.0041, foretold.GetProperty("standardError").GetDouble(), 4);
        Assert.Contains("no limit", answer.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    /// <summary>A line by hand, y = 2 + 0.5 x, on a large odometer value, written in all the ways the input may be.</summary>
    [Theory]
    [InlineData("1000000,2\n1000001,2.5\n1000002,3\n1000003,3.5\n")]
    [InlineData("\uFEFFkm,ohm\r\n\r\n 1000000 , 2.0 \r\n1000001,\t2.5\r\n\r\n1.000002e6,3E0\r\n+1000003,3.50")]
    [InlineData("\n\"odometer\",\"value\"\n1000003,3.5\n1000001,2.5\n1000002,3\n1000000,2\n\n")]
    public async Task Trend_takes_headings_blank_lines_spaces_and_exponents(string input)
    {
        var run = await CommandRun.WithAsync(null!, input, "trend", "--upper", "7", "--json");

        var answer = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(0.5, answer.GetProperty("slope").GetDouble(), 12);
        Assert.Equal(-499998, answer.GetProperty("intercept").GetDouble(), 6);
        Assert.Equal(0, answer.GetProperty("residualStandardDeviation").GetDouble(), 12);
        Assert.Equal(1000010, answer.GetProperty("meetsLimitAt").GetDouble(), 6);
        Assert.Equal(1000010, answer.GetProperty("lineMeetsLimitAt").GetDouble(), 6);
    }

    [Fact]
    public async Task Trend_falling_to_its_lower_limit_can_have_met_it_already()
    {
        var run = await CommandRun.WithAsync(
            null!, "0,9\n1,8\n2,7\n3,6\n", "trend", "--lower", "7.5", "--upper", "20", "--json");

        Assert.Equal(1.5, JsonDocument.Parse(run.Out).RootElement.GetProperty("meetsLimitAt").GetDouble(), 9);
    }

    [Fact]
    public async Task Trend_says_in_words_what_it_found()
    {
        var run = await CommandRun.WithAsync(
            null!, "0,9\n1,8.1\n2,7\n3,6\n", "trend", "--lower", "2", "--at", "4");

        Assert.Contains("Slope −1.01", run.Out.Replace('-', '−'), StringComparison.Ordinal);
        Assert.Equal(2, run.Out.Split("(standard error ").Length - 1);
        Assert.Contains("At 4: 5", run.Out, StringComparison.Ordinal);
        Assert.Contains("The edge of the prediction interval meets the limit at 6", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trend_without_readings_says_so()
    {
        var run = await CommandRun.WithAsync(null!, "", "trend", "--json");

        var answer = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("slope").ValueKind);
        Assert.Contains("no readings", answer.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1;2\n", "Line 1, \"1;2\", is not a pair")]
    [InlineData("one,two\n", "no x,y line after it")]
    [InlineData("1,2,3\n", "Line 1")]
    [InlineData("x,y\n1,2\na,b\n", "Line 3")]
    [InlineData("1O,2\n1,2\n", "Line 1")]
    [InlineData("1,2\n2,NaN\n", "finite")]
    [InlineData("1,2\n2,1e999\n", "finite")]
    [InlineData("1,1.8.5\n", "Line 1")]
    [InlineData("1,\n", "Line 1")]
    public async Task Trend_refuses_lines_that_are_no_pairs(string input, string reason)
    {
        var run = await CommandRun.WithAsync(null!, input, "trend", "--json");

        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }

    [Theory]
    [InlineData("Nothing can be foretold with --at. Not enough data", "1,2\n2,3\n", "--at", "5")]
    [InlineData("The upper limit must lie above", "1,2\n2,3\n", "--lower", "5", "--upper", "4")]
    public async Task Trend_refuses_what_it_cannot_do(string reason, string input, params string[] arguments)
    {
        var run = await CommandRun.WithAsync(null!, input, ["trend", .. arguments]);

        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }
}
