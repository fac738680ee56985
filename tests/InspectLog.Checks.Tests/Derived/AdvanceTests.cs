using InspectLog.Checks.Derived;

namespace InspectLog.Checks.Tests.Derived;

public class AdvanceTests
{
    // t = deg / (6 rpm): shared table of check values, 9.3.
    [Theory]
    [InlineData(10, 600, 2.7778)]
    [InlineData(10, 3000, 0.55556)]
    [InlineData(34, 4000, 1.41667)]
    [InlineData(1, 1000, 0.166667)]
    [InlineData(-2, 1000, -0.333333)]
    public void Angle_takes_a_time_and_time_an_angle(double degrees, double rpm, double milliseconds)
    {
        var advance = Advance.FromDegrees(degrees, rpm);

        Assert.Equal(milliseconds, 1000 * advance.Time, 5e-5);
        Assert.Equal(degrees, Advance.FromTime(advance.Time, rpm).Degrees, 1e-12);
    }

    // Distributor = crank / 2: onallcylinders.com, 2020/09/11.
    [Fact]
    public void Distributor_turns_half_as_far() => Assert.Equal(17, Advance.FromDegrees(34, 4000).DistributorDegrees);

    [Fact]
    public void Working_shows_the_time_and_the_distributor_angle()
    {
        Assert.Equal(["2.778 ms", "5°"], Advance.FromDegrees(10, 600).Steps.Select(step => step.Result.Text));
        Assert.Equal(["10°", "5°"], Advance.FromTime(0.01 / 3.6, 600).Steps.Select(step => step.Result.Text));
    }

    [Theory]
    [InlineData(double.NaN, 600)]
    [InlineData(10, 0)]
    [InlineData(10, double.PositiveInfinity)]
    public void Number_out_of_range_is_refused(double number, double rpm)
    {
        Assert.Throws<ArgumentException>(() => Advance.FromDegrees(number, rpm));
        Assert.Throws<ArgumentException>(() => Advance.FromTime(number, rpm));
    }
}
