using MathNet.Numerics.Distributions;

namespace InspectLog.Measuring.Tests;

public class GlobalRiskTests
{
    private static readonly Func<double, double> Process = x => Normal.PDF(0, 1, x);

    private static readonly PlausibleSpan AllOfIt = new(-9, 9);

    // JCGM 106:2012, 9.5.4, as in sandialabs/suncal "Risk - Ball Bearing": run-out of ball bearings, gamma distributed
    // with shape 4 and mean 1 µm, limit 2 µm, u = 0.25 µm. Printed: 4.2 % outside, consumer's risk 0.8 %; with the
    // acceptance limit at 1.67 µm 0.1 %. Producer's risks computed.
    [Theory]
    [InlineData(2, 0.00801911, 0.0174445)]
    [InlineData(1.671829, 0.00100000, 0.07549)]
    public void Ball_bearings_agree_with_JCGM_106(double accepted, double consumers, double producers)
    {
        static double Bearings(double x) => x <= 0 ? 0 : Gamma.PDF(4, 4, x);
        var risk = GlobalRisk.Of(
            Bearings, new(0, 15), Limits.Of(null, 2), new AcceptanceZone(null, accepted), 0.25);

        Close.ToDigits(consumers, risk.Consumers, 6);
        Close.ToDigits(producers, risk.Producers, 4);
    }

    // sandialabs/suncal, test/test_risk.py, after Deaver; it prints three decimals, the rest is computed.
    [Theory]
    [InlineData(0.25, 2, 0.00800608, 0.0148509)]
    [InlineData(0.5, 1.82, 0.00805161, 0.0661065)]
    public void False_accept_and_reject_agree_with_suncal(double u, double accepted, double consumers, double producers)
    {
        var risk = GlobalRisk.Of(
            Process, AllOfIt, Limits.Of(-2, 2), new AcceptanceZone(-accepted, accepted), u);

        Close.ToDigits(consumers, risk.Consumers, 6);
        Close.ToDigits(producers, risk.Producers, 6);
    }

    // The ball bearings upside down: what is too large becomes too small, and the risks stay.
    [Fact]
    public void Lower_limits_mirror_upper_ones()
    {
        static double Upside(double x) => x >= 0 ? 0 : Gamma.PDF(4, 4, -x);
        var risk = GlobalRisk.Of(Upside, new(-15, 0), Limits.Of(-2, null), new AcceptanceZone(-1.671829, null), 0.25);

        Close.ToDigits(0.001, risk.Consumers, 6);
        Close.ToDigits(0.07549, risk.Producers, 4);
    }

    [Fact]
    public void Limits_beyond_all_parts_leave_no_wrong_acceptance() =>
        Assert.Equal(
            0, GlobalRisk.Of(Process, AllOfIt, Limits.Of(-20, 20), new AcceptanceZone(-20, 20), 1).Consumers);

    [Theory]
    [InlineData(0, -9, 9)]
    [InlineData(double.NaN, -9, 9)]
    [InlineData(1, 9, -9)]
    [InlineData(1, double.NegativeInfinity, 9)]
    [InlineData(1, 9, 9)]
    [InlineData(1, -1.5e308, 1.5e308)]
    public void Risks_of_nothing_are_refused(double u, double from, double to) =>
        Assert.Contains(
            "above 0 and a finite span",
            Assert.Throws<ArgumentException>(() => GlobalRisk.Of(
                Process, new(from, to), Limits.Of(-2, 2), new AcceptanceZone(-2, 2), u)).Message,
            StringComparison.Ordinal);
}
