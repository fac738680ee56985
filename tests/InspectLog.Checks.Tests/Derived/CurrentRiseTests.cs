using CsCheck;
using InspectLog.Checks.Derived;

namespace InspectLog.Checks.Tests.Derived;

public class CurrentRiseTests
{
    // Calculated from I = U/R (1 - exp(-tR/L)), E = LI²/2: shared table of check values, 9.4 "rise".
    [Theory]
    [InlineData(12, 2, 2.1105, 17.82)]
    [InlineData(12, 4, 3.1075, 38.63)]
    [InlineData(12, 8, 3.8009, 57.79)]
    [InlineData(14, 2, 2.4623, 24.25)]
    [InlineData(14, 4, 3.6254, 52.57)]
    [InlineData(14, 8, 4.4343, 78.65)]
    public void Current_and_energy_rise_with_time(
        double supply, double milliseconds, double current, double millijoules)
    {
        var point = new CurrentRise(0.008, 3.0, supply).After(milliseconds / 1000);

        Assert.Equal(current, point.Current, 5e-5);
        Assert.Equal(millijoules, 1000 * point.Energy, 5e-3);
    }

    [Theory]
    [InlineData(12, 3.6, 6.1402)] // 90 % of the end current
    [InlineData(12, 3.0, 3.69678)]
    [InlineData(14, 3.0, 2.74565)]
    public void Time_to_a_current(double supply, double current, double milliseconds) =>
        Assert.Equal(milliseconds, 1000 * new CurrentRise(0.008, 3.0, supply).TimeTo(current)!.Value, 5e-5);

    [Fact]
    public void Time_constant_and_end_current()
    {
        var rise = new CurrentRise(0.008, 3.0, 12);

        Assert.Equal(2.66667, 1000 * rise.TimeConstant, 5e-6);
        Assert.Equal(4.0, rise.FinalCurrent);
    }

    // ½ L I² of 8 mH at 4 A: shared table of check values, 9.4 "energy".
    [Fact]
    public void Energy_at_the_end_current() =>
        Assert.Equal(64.0, 1000 * new CurrentRise(0.008, 3.0, 12).After(1).Energy, 1e-9);

    // Worked example of ignitioncarsystem.wixsite.com: 90 % after 4.4 ms, so 87 % after 4 ms.
    [Fact]
    public void Time_constant_from_a_known_fraction()
    {
        var constant = CurrentRise.TimeConstantFrom(0.9, 0.0044);

        Assert.Equal(1.9109, 1000 * constant, 5e-5);
        Assert.Equal(0.8767, CurrentRise.FractionAfter(0.004, constant), 5e-5);
    }

    [Fact]
    public void Current_that_is_never_reached_has_no_time() =>
        Assert.Null(new CurrentRise(0.008, 3.0, 12).TimeTo(4.0));

    [Fact]
    public void Time_to_the_current_after_a_time_is_that_time() =>
        Gen.Select(Gen.Double[0.001, 0.02], Gen.Double[0.5, 5], Gen.Double[6, 16], Gen.Double[0, 0.003])
            .Sample((inductance, resistance, supply, time) =>
            {
                var rise = new CurrentRise(inductance, resistance, supply);
                return Math.Abs(rise.TimeTo(rise.After(time).Current)!.Value - time) < 1e-9;
            });

    [Fact]
    public void Working_ends_with_the_energy()
    {
        var steps = new CurrentRise(0.008, 3.0, 12).After(0.004).Steps;

        Assert.Equal(["2.667 ms", "4 A", "77.69%", "3.107 A", "38.63 mJ"], steps.Select(step => step.Result.Text));
    }

    [Theory]
    [InlineData(0, 3, 12)]
    [InlineData(0.008, -1, 12)]
    [InlineData(0.008, 3, double.NaN)]
    public void Number_not_above_zero_is_refused(double inductance, double resistance, double supply) =>
        Assert.Contains(
            "must be a number above 0",
            Assert.Throws<ArgumentException>(() => new CurrentRise(inductance, resistance, supply)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Time_or_current_below_zero_is_refused()
    {
        var rise = new CurrentRise(0.008, 3, 12);

        Assert.Throws<ArgumentException>(() => rise.After(-0.001));
        Assert.Throws<ArgumentException>(() => rise.TimeTo(-1));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void Fraction_that_is_none_is_refused(double fraction) =>
        Assert.Throws<ArgumentException>(() => CurrentRise.TimeConstantFrom(fraction, 0.004));
}
