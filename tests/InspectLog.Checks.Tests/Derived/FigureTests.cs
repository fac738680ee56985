using InspectLog.Checks.Derived;

namespace InspectLog.Checks.Tests.Derived;

public class FigureTests
{
    [Theory]
    [InlineData(0, "A", "0 A")]
    [InlineData(4, "A", "4 A")]
    [InlineData(4.66666, "A", "4.667 A")]
    [InlineData(-0.333333, "ms", "-0.3333 ms")]
    [InlineData(19685.04, "Ω", "19685 Ω")]
    [InlineData(0.000123456, "in", "0.0001235 in")]
    [InlineData(12, "°", "12°")]
    [InlineData(66.6667, "%", "66.67%")]
    [InlineData(1.5, "", "1.5")]
    public void Text_has_four_significant_digits(double value, string unit, string text) =>
        Assert.Equal(text, new Figure("Any", value, unit).Text);
}
