using CsCheck;

namespace InspectLog.Measuring.Tests;

public class TrendTests
{
    private static TrendPoint[] Points(double[] x, double[] y) => [.. x.Zip(y, (a, b) => new TrendPoint(a, b))];

    // NIST StRD, linear regression.
    [Fact]
    public void Line_agrees_with_NIST_Norris()
    {
        var line = TrendLine.Through(Points(NistData.NorrisX, NistData.NorrisY));

        Close.ToDigits(-0.262323073774029, line.Intercept, 11);
        Close.ToDigits(0.232818234301152, line.InterceptStandardError, 12);
        Close.ToDigits(1.00211681802045, line.Slope, 14);
        Close.ToDigits(0.429796848199937E-03, line.SlopeStandardError, 12);
        Close.ToDigits(0.884796396144373, line.ResidualStandardDeviation, 12);
        Close.ToDigits(0.999993745883712, line.RSquared, 14);
        var f = line.Slope * line.Slope / (line.SlopeStandardError * line.SlopeStandardError);
        Close.ToDigits(5436385.54079785, f, 12);
        Close.ToDigits(26.6173985294224, 34 * line.ResidualStandardDeviation * line.ResidualStandardDeviation, 12);
        Close.ToDigits(4255954.13232369, line.Slope * line.Slope * line.SumOfSquaresX, 13);
    }

    // The same readings on top of a large odometer value and a large offset: nothing but the intercept may change. This is
    // to lines what StRD's NumAcc sets are to means.
    [Theory]
    [InlineData(1_000_000, 0)]
    [InlineData(0, 10_000_000)]
    [InlineData(1_000_000_000, 10_000_000)]
    [InlineData(1_000_000_000_000, 1_000_000_000_000)]
    public void Large_offsets_leave_the_figures_of_Norris(long addX, long addY)
    {
        static double[] Plus(double[] values, long offset) => [.. values.Select(value => (double)((decimal)value + offset))];
        var line = TrendLine.Through(Points(Plus(NistData.NorrisX, addX), Plus(NistData.NorrisY, addY)));

        Close.ToDigits(1.00211681802045, line.Slope, 13);
        Close.ToDigits(0.429796848199937E-03, line.SlopeStandardError, 12);
        Close.ToDigits(0.884796396144373, line.ResidualStandardDeviation, 12);
        Close.ToDigits(0.999993745883712, line.RSquared, 13);
        Close.ToDigits(-0.262323073774029 + addY - (1.00211681802045 * addX), line.Intercept, 10);
    }

    // Readings that hardly move on a large offset, in decimal steps: exact in decimal, far from it in binary.
    [Fact]
    public void Small_steps_on_a_large_offset_are_a_straight_line()
    {
        TrendPoint[] points = [.. Enumerable.Range(0, 10).Select(i => new TrendPoint(10_000_000 + i, (double)(10_000_000.2m + (i * 0.1m))))];
        var trend = Trend.Of(points, Limits.Of(null, 10_000_010));

        Close.ToDigits(0.1, trend.Line!.Slope, 13);
        Assert.InRange(trend.Line.ResidualStandardDeviation, 0, 1e-14);
        Close.ToDigits(10_000_098, trend.MeetsLimitAt.GetValueOrDefault(), 14);
    }

    [Fact]
    public void Proportion_agrees_with_NIST_NoInt1()
    {
        var fit = Proportion.Through(
            [.. Enumerable.Range(60, 11).Select(x => new TrendPoint(x, x + 70))]);

        Close.ToDigits(2.07438016528926, fit.Slope, 14);
        Close.ToDigits(0.165289256198347E-01, fit.SlopeStandardError, 13);
        Close.ToDigits(3.56753034006338, fit.ResidualStandardDeviation, 13);
        Close.ToDigits(0.999365492298663, fit.RSquared, 14);
        Close.ToDigits(15750.25, fit.Slope * fit.Slope / (fit.SlopeStandardError * fit.SlopeStandardError), 12);
    }

    [Fact]
    public void Proportion_agrees_with_NIST_NoInt2()
    {
        var fit = Proportion.Through([new(4, 3), new(5, 4), new(6, 4)]);

        Close.ToDigits(0.727272727272727, fit.Slope, 14);
        Close.ToDigits(0.0420827318078432, fit.SlopeStandardError, 13);
        Close.ToDigits(0.369274472937998, fit.ResidualStandardDeviation, 13);
        Close.ToDigits(0.993348115299335, fit.RSquared, 14);
    }

    // Natrella, NBS Handbook 91, 5-4.1: Young's modulus against temperature.
    [Fact]
    public void Line_agrees_with_NBS_Handbook_91()
    {
        double[] x = [30, .. Enumerable.Range(1, 15).Select(i => 100.0 * i)];
        double[] y = [4642, 4612, 4565, 4513, 4476, 4433, 4389, 4347, 4303, 4251, 4201, 4140, 4100, 4073, 4024, 3999];
        var line = TrendLine.Through(Points(x, y));

        Close.ToDigits(-0.44985482, line.Slope, 8);
        Close.ToDigits(4654.9846, line.Intercept, 8);
        Close.ToDigits(9.277617, line.ResidualStandardDeviation, 7);
        Close.ToDigits(0.000025649045, line.SlopeStandardError * line.SlopeStandardError, 8);
        Close.ToDigits(19.879453, line.InterceptStandardError * line.InterceptStandardError, 8);
    }

    // GUM H.3: a thermometer's correction against temperature, and the correction foretold for 30 °C.
    [Fact]
    public void Line_agrees_with_GUM_H_3()
    {
        double[] t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
        double[] b = [-.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160];
        var line = TrendLine.Through([.. t.Zip(b, (x, y) => new TrendPoint(x - 20, y))]);

        Close.ToDecimals(-0.1712, line.Intercept, 4);
        Close.ToDecimals(0.0029, line.InterceptStandardError, 4);
        Close.ToDecimals(0.00218, line.Slope, 5);
        Close.ToDecimals(0.00067, line.SlopeStandardError, 5);
        Close.ToDecimals(-0.930, line.Correlation, 3);
        Close.ToDecimals(0.0035, line.ResidualStandardDeviation, 4);
        Close.ToDecimals(-0.1494, line.At(10), 4);
        Close.ToDecimals(0.0041, line.StandardErrorAt(10), 4);
    }

    // Anscombe 1973, first set; the residual deviation is recomputed, since the data file's header has another.
    [Fact]
    public void Line_agrees_with_Anscombe()
    {
        var line = TrendLine.Through(Points(NistData.AnscombeX, NistData.AnscombeY));

        Close.ToDecimals(0.5000909, line.Slope, 7);
        Close.ToDecimals(3.0000909, line.Intercept, 7);
        Close.ToDecimals(1.236603, line.ResidualStandardDeviation, 6);
        Close.ToDecimals(0.8164205, Math.Sqrt(line.RSquared), 7);
    }

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
