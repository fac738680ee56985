using CsCheck;
using InspectLog.Checks.Derived;

namespace InspectLog.Checks.Tests.Derived;

public class DwellTests
{
    // Worked examples of ignitioncarsystem.wixsite.com (cam dwell angle), recomputed.
    [Fact]
    public void Four_cylinders_at_60_degrees_and_5000_rpm()
    {
        var dwell = Dwell.FromAngle(4, 5000, 60);

        Assert.Equal(2.0 / 3, dwell.Duty, 12);
        Assert.Equal(166.7, dwell.SparksPerSecond, 0.05);
        Assert.Equal(6.0, 1000 * dwell.SparkInterval, 1e-9);
        Assert.Equal(4.0, 1000 * dwell.ChargeTime, 1e-9);
    }

    [Fact]
    public void Six_cylinders_at_35_degrees_and_5000_rpm()
    {
        var dwell = Dwell.FromAngle(6, 5000, 35);

        Assert.Equal(0.58333, dwell.Duty, 5e-6);
        Assert.Equal(250, dwell.SparksPerSecond, 1e-9);
        Assert.Equal(4.0, 1000 * dwell.SparkInterval, 1e-9);
    }

    // A forum post in a stored text set, recomputed: 14.27 ms of 19.21 ms with eight cylinders.
    [Fact]
    public void Two_times_off_an_oscilloscope_give_the_angle()
    {
        var dwell = Dwell.FromTimes(8, 0.01427, 0.01921);

        Assert.Equal(33.4279, dwell.Angle, 5e-5);
        Assert.Equal(780.8, dwell.Rpm, 0.05);
    }

    // Sector of one cylinder: same page as the first example.
    [Theory]
    [InlineData(4, 90)]
    [InlineData(6, 60)]
    [InlineData(8, 45)]
    public void Sector_is_the_share_of_a_turn(int cylinders, double sector) =>
        Assert.Equal(sector, Dwell.FromDuty(cylinders, 1000, 0.5).Sector);

    // duty = dwell × N / 360: shared table of check values, 9.2.
    [Theory]
    [InlineData(54, 4, 60.0)]
    [InlineData(38, 6, 63.33)]
    [InlineData(41, 6, 68.33)]
    [InlineData(28, 8, 62.22)]
    [InlineData(30, 8, 66.67)]
    [InlineData(33, 8, 73.33)]
    public void Duty_of_an_angle(double angle, int cylinders, double percent) =>
        Assert.Equal(percent, 100 * Dwell.FromAngle(cylinders, 900, angle).Duty, 5e-3);

    // 120 000 / (rpm × N) ms: shared table of check values, 9.2. The 3000 rpm row is also in pt10.ru/html/16.
    [Theory]
    [InlineData(600, 4, 50)]
    [InlineData(600, 6, 33.33)]
    [InlineData(600, 8, 25)]
    [InlineData(3000, 4, 10)]
    [InlineData(6000, 4, 5)]
    [InlineData(6000, 6, 3.333)]
    [InlineData(6000, 8, 2.5)]
    public void Interval_between_sparks(double rpm, int cylinders, double milliseconds) =>
        Assert.Equal(milliseconds, 1000 * Dwell.FromDuty(cylinders, rpm, 0.5).SparkInterval, 5e-3);

    [Fact]
    public void Angle_duty_and_time_lead_back_to_each_other() =>
        Gen.Select(Gen.Int[1, 16], Gen.Double[100, 9000], Gen.Double[0.01, 0.99]).Sample((cylinders, rpm, duty) =>
        {
            var said = Dwell.FromDuty(cylinders, rpm, duty);
            var byAngle = Dwell.FromAngle(cylinders, rpm, said.Angle);
            var byTime = Dwell.FromTime(cylinders, rpm, byAngle.ChargeTime);
            return Math.Abs(byTime.Duty - duty) < 1e-12 && Math.Abs(byTime.Angle - said.Angle) < 1e-9;
        });

    [Fact]
    public void Working_starts_from_what_was_measured()
    {
        Assert.Equal(
            ["66.67%", "6 ms", "4 ms"], Dwell.FromAngle(4, 5000, 60).Steps.Select(step => step.Result.Text));
        Assert.Equal(
            ["60°", "6 ms", "4 ms"], Dwell.FromDuty(4, 5000, 2.0 / 3).Steps.Select(step => step.Result.Text));
        Assert.Equal(
            ["6 ms", "66.67%", "60°"], Dwell.FromTime(4, 5000, 0.004).Steps.Select(step => step.Result.Text));
    }

    [Theory]
    [InlineData(0, 900, 30, "number of cylinders must lie within 1 and 16")]
    [InlineData(17, 900, 30, "number of cylinders")]
    [InlineData(6, 0, 30, "engine speed")]
    [InlineData(6, 900, 0, "dwell angle")]
    [InlineData(6, 900, 60, "never be switched off")]
    [InlineData(6, 900, double.NaN, "dwell angle")]
    public void Number_out_of_range_is_refused(int cylinders, double rpm, double angle, string says) =>
        Assert.Contains(
            says,
            Assert.Throws<ArgumentException>(() => Dwell.FromAngle(cylinders, rpm, angle)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Duty_and_times_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Dwell.FromDuty(6, 900, 1));
        Assert.Throws<ArgumentException>(() => Dwell.FromDuty(6, 900, -0.1));
        Assert.Throws<ArgumentException>(() => Dwell.FromTime(6, 900, 0.1));
        Assert.Throws<ArgumentException>(() => Dwell.FromTimes(6, 0.001, 0));
        Assert.Throws<ArgumentException>(() => Dwell.FromTimes(0, 0.001, 0.01));
    }
}
