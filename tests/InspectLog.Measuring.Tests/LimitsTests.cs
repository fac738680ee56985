namespace InspectLog.Measuring.Tests;

public class LimitsTests
{
    [Theory]
    [InlineData(null, null, "Give a lower limit")]
    [InlineData(double.NaN, null, "finite")]
    [InlineData(null, double.PositiveInfinity, "finite")]
    [InlineData(2.0, 0.6, "above the lower")]
    [InlineData(2.0, 2.0, "above the lower")]
    public void Limits_that_make_no_sense_are_refused(double? lower, double? upper, string reason) =>
        Assert.Contains(
            reason,
            Assert.Throws<ArgumentException>(() => Limits.Of(lower, upper)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Limits_are_equal_by_value() => Assert.Equal(Limits.Of(1, 2), Limits.Of(1, 2));
}
