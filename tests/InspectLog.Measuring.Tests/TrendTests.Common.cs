using CsCheck;

namespace InspectLog.Measuring.Tests;

/// <content>What all readings have in common, and readings beyond their only limit.</content>
public partial class TrendTests
{
    private static readonly TrendPoint[] Steady = [new(10, 5.0), new(11, 5.9), new(12, 7.1), new(13, 8.0), new(14, 9.1)];

    [Fact]
    public void Common_part_widens_the_band_and_brings_the_limit_nearer()
    {
        var alone = Trend.Of(Steady, Limits.Of(null, 13));
        var common = Trend.Of(Steady, Limits.Of(null, 13), 0.4);
        var (line, edge) = (common.Line!, common.MeetsLimitAt!.Value);

        Close.ToDigits(double.Hypot(line.PredictionHalfWidth(16), 0.4), line.PredictionHalfWidth(16, common: 0.4), 12);
        Close.ToDigits(13, line.At(edge) + line.PredictionHalfWidth(edge, common: 0.4), 10);
        Assert.True(edge < alone.MeetsLimitAt);
        Assert.Equal(alone.LineMeetsLimitAt, common.LineMeetsLimitAt);
    }

    [Fact]
    public void Edge_is_where_the_widened_band_meets_the_limit() =>
        Gen.Select(Gen.Double[-0.1, 0.1].Array[4, 8], Gen.Double[0, 2], Gen.Double[12, 30]).Sample((scatter, common, limit) =>
        {
            TrendPoint[] points = [.. scatter.Select((off, i) => new TrendPoint(i, i + off))];
            return Trend.Of(points, Limits.Of(null, limit), common) is not { MeetsLimitAt: { } edge, Line: { } line }
                || Math.Abs(line.At(edge) + line.PredictionHalfWidth(edge, common: common) - limit) < 1e-6;
        });

    [Theory]
    [InlineData(20, "lie beyond the limit and move back towards it")]
    [InlineData(2, "move away from the limit")]
    public void Readings_beyond_their_only_limit_are_said_to_come_back(double lower, string words) =>
        Assert.Contains(words, Trend.Of(Steady, Limits.Of(lower, null)).Reason, StringComparison.Ordinal);
}
