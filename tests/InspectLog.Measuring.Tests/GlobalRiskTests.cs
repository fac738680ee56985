using MathNet.Numerics.Distributions;

namespace InspectLog.Measuring.Tests;

public class GlobalRiskTests
{
    private static readonly Func<double, double> Process = x => Normal.PDF(0, 1, x);

    private static readonly PlausibleSpan AllOfIt = new(-9, 9);

    // JCGM 106:2012, 9.5.4: run-out of ball bearings, gamma distributed with shape 4 and mean 1 µm, limit 2 µm,
    // u = 0.25 µm. Printed: 4.2 % outside, consumer's risk 0.8 %; with the acceptance limit at 1.67 µm 0.1 %. The further
    // digits and the producer's risks are the integrals of 9.5.2 and 9.5.3, by the quadrature of mpmath 1.3.0 to 25 digits.
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

    // JCGM 106:2012, 9.5.2 and 9.5.3: the consumer's risk is the integral of g(x)·F(x) over what is outside the limits, the
    // producer's that of g(x)·(1 − F(x)) within, where g is the density of the parts and
    // F(x) = Φ((A − x)/u) − Φ((−A − x)/u) the chance of being accepted. By the quadrature of mpmath 1.3.0 to 25 digits.
    [Theory]
    [InlineData(0.3, 1.6, 0.0198157829, 0.0356108585)]
    [InlineData(0.45, 1.35, 0.0126536280, 0.121342742)]
    public void Normal_parts_agree_with_the_integrals_of_JCGM_106(double u, double accepted, double consumers, double producers)
    {
        var risk = GlobalRisk.Of(
            Process, AllOfIt, Limits.Of(-1.6, 1.6), new AcceptanceZone(-accepted, accepted), u);

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
