using CsCheck;

namespace InspectLog.Measuring.Tests;

/// <content>When a limit will be met, and why that cannot be said.</content>
public partial class TrendTests
{
    [Fact]
    public void Forecast_is_where_the_edge_of_the_prediction_interval_meets_the_limit()
    {
        TrendPoint[] points = [new(0, 8.0), new(100, 8.4), new(200, 8.7), new(300, 9.2), new(400, 9.5)];
        var trend = Trend.Of(points, Limits.Of(5, 13));

        Assert.Null(trend.Reason);
        var line = trend.Line;
        Assert.NotNull(line);
        var edge = trend.MeetsLimitAt.GetValueOrDefault();
        var middle = trend.LineMeetsLimitAt.GetValueOrDefault();
        Close.ToDigits(13, line.At(edge) + line.PredictionHalfWidth(edge), 12);
        Close.ToDigits(13, line.At(middle), 12);
        Assert.InRange(edge, 400, middle);
    }

    [Fact]
    public void Falling_readings_meet_the_lower_limit()
    {
        TrendPoint[] points = [new(0, 12.6), new(1, 12.4), new(2, 12.25), new(3, 12.0), new(4, 11.85)];
        var trend = Trend.Of(points, Limits.Of(11, null));
        var line = trend.Line;
        Assert.NotNull(line);

        var edge = trend.MeetsLimitAt.GetValueOrDefault();
        Close.ToDigits(11, line.At(edge) - line.PredictionHalfWidth(edge), 12);
    }

    [Fact]
    public void Exact_line_meets_its_limit_exactly()
    {
        var trend = Trend.Of([new(0, 1), new(1, 2), new(2, 3), new(3, 4)], Limits.Of(null, 10));

        Close.ToDigits(9, trend.MeetsLimitAt.GetValueOrDefault(), 14);
        Close.ToDigits(9, trend.LineMeetsLimitAt.GetValueOrDefault(), 14);
    }

    [Fact]
    public void Limit_already_met_is_dated_before_the_last_reading()
    {
        var trend = Trend.Of([new(0, 1), new(1, 2), new(2, 3), new(3, 4)], Limits.Of(null, 3));

        Close.ToDigits(2, trend.MeetsLimitAt.GetValueOrDefault(), 14);
    }

    [Fact]
    public void Limit_met_before_the_first_reading_is_dated_before_it()
    {
        var trend = Trend.Of([new(10, 5.0), new(11, 5.9), new(12, 7.1), new(13, 8.0)], Limits.Of(null, 2));
        var line = trend.Line;
        Assert.NotNull(line);

        var edge = trend.MeetsLimitAt.GetValueOrDefault();
        Assert.True(edge < 10);
        Close.ToDigits(2, line.At(edge) + line.PredictionHalfWidth(edge), 12);
    }

    [Fact]
    public void Falling_readings_mirror_rising_ones() =>
        Gen.Select(Gen.Double[-5, 5].Array[4, 12], Gen.Double[0.1, 10], Gen.Double[1, 100]).Sample((noise, slope, limit) =>
        {
            TrendPoint[] rising = [.. noise.Select((off, i) => new TrendPoint(i, (slope * i) + off))];
            TrendPoint[] falling = [.. rising.Select(point => point with { Y = -point.Y })];
            var up = Trend.Of(rising, Limits.Of(-1000, limit));
            var down = Trend.Of(falling, Limits.Of(-limit, 1000));
            return up.Reason == down.Reason && up.MeetsLimitAt == down.MeetsLimitAt
                && (up.MeetsLimitAt is not { } edge || up.Line!.Slope < 0
                    || Math.Abs(up.Line.At(edge) + up.Line.PredictionHalfWidth(edge) - limit) < 1e-6 * (1 + Math.Abs(edge)));
        });

    public static TheoryData<TrendPoint[], Limits?, string> NothingForetold => new()
    {
        { [], Limits.Of(0, 1), "no readings" },
        { [new(0, 1)], Limits.Of(0, 1), "Not enough data: a forecast needs at least 4 readings, and there is 1." },
        { [new(0, 1), new(1, 2)], Limits.Of(0, 1), "and there are 2." },
        { [new(0, 1), new(1, 2), new(2, 3.1)], Limits.Of(0, 1), "there are 3" },
        { [new(5, 1), new(5, 2), new(5, 3), new(5, 4)], Limits.Of(0, 1), "same time" },
        { [new(0, 1), new(1, 1), new(2, 1), new(3, 1)], Limits.Of(0, 2), "No clear slope" },
        { [new(0, 1), new(1, 1.5), new(2, 0.8), new(3, 1.2)], Limits.Of(0, 2), "No clear slope" },
        { [new(0, 1), new(1, 2), new(2, 3), new(3, 4)], null, "no limit" },
        { [new(0, 1), new(1, 2), new(2, 3), new(3, 4)], Limits.Of(0, null), "away from the limit" },
        { [new(0, 4), new(1, 3), new(2, 2), new(3, 1)], Limits.Of(null, 5), "away from the limit" },
        { [new(0, 1e-320), new(1, 2e-320), new(2, 3e-320), new(3, 4e-320)], Limits.Of(null, 1), "too far away" },
    };

    [Theory]
    [MemberData(nameof(NothingForetold))]
    public void Nothing_foretold_comes_with_its_reason(TrendPoint[] points, Limits? limits, string reason)
    {
        var trend = Trend.Of(points, limits);

        Assert.Null(trend.MeetsLimitAt);
        Assert.Null(trend.LineMeetsLimitAt);
        Assert.Contains(reason, trend.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Line_of_three_points_is_still_given() =>
        Assert.NotNull(Trend.Of([new(0, 1), new(1, 2), new(2, 3.1)], null).Line);

    [Fact]
    public void Numbers_that_are_not_finite_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Trend.Of([new(0, double.NaN)], null));
        Assert.Throws<ArgumentException>(() => Trend.Of([new(double.PositiveInfinity, 0)], null));
        Assert.Throws<ArgumentException>(() => Trend.Of([new(0, 0), new(1e200, 1), new(2e200, 2)], null));
    }

    [Fact]
    public void Line_through_too_little_is_refused()
    {
        Assert.Throws<ArgumentException>(() => TrendLine.Through([new(0, 1), new(1, 2)]));
        Assert.Throws<ArgumentException>(() => TrendLine.Through([new(1, 1), new(1, 2), new(1, 3)]));
        Assert.Throws<ArgumentException>(() => Proportion.Through([new(1, 1)]));
        Assert.Throws<ArgumentException>(() => Proportion.Through([new(0, 1), new(0, 2)]));
    }

    [Fact]
    public void Forecast_holds_for_any_clear_trend() =>
        Gen.Select(Gen.Double[-3, 3], Gen.Double[-1, 1].Array[4, 12], Gen.Double[-20, 20], Gen.Double[-20, 20])
            .Sample((slope, scatter, one, other) =>
            {
                TrendPoint[] points = [.. scatter.Select((noise, x) => new TrendPoint(x, (slope * x) + noise))];
                var limits = Limits.Of(Math.Min(one, other), Math.Max(one, other) + 0.1);
                var trend = Trend.Of(points, limits);
                if (trend is not { Line: { } line, MeetsLimitAt: { } x })
                {
                    return trend.Reason is not null;
                }

                var towards = Math.Sign(line.Slope);
                var limit = (towards > 0 ? limits.Upper : limits.Lower).GetValueOrDefault();
                var edge = line.At(x) + (towards * line.PredictionHalfWidth(x));
                return Math.Abs(edge - limit) < 1e-6 * (1 + Math.Abs(x)) && x <= trend.LineMeetsLimitAt + 1e-9;
            });
}
