using CsCheck;

namespace InspectLog.Measuring.Tests;

public partial class TrendTests
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
}
