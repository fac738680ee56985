using InspectLog.Checks.Derived;
using InspectLog.Measuring;

namespace InspectLog.Checks.Tests.Derived;

public class ResistanceRiseTests
{
    // IEC 60034-1, 8.6.2 (from memory): 3.00 Ω at 20 °C, 3.60 Ω hot, air at 22 °C: 71.0 °C, a rise of 49.0 K. 8.2 kΩ at 20 °C
    // have 8.2·320/255 = 10.290196 kΩ at 85 °C.
    [Theory]
    [InlineData(3.00, 20, 3.60, 22, 71.0, 49.0)]
    [InlineData(8.2, 20, 10.290196, 25, 85.0, 60.0)]
    [InlineData(3.00, 20, 3.00, 20, 20.0, 0.0)]
    public void Rise_follows_the_standard(double cold, double at, double hot, double air, double temperature, double rise)
    {
        var worked = ResistanceRise.From(cold, at, hot, air, Units.Ohm);

        Assert.Equal(temperature, worked.Temperature, 4);
        Assert.Equal(rise, worked.Rise, 4);
        Assert.Equal(worked.Rise, worked.Steps[1].Result.Value);
    }

    [Theory]
    [InlineData(0, 20, 3, 22, "The resistance cold must be a number above 0.")]
    [InlineData(3, 20, -3, 22, "The resistance hot must be a number above 0.")]
    [InlineData(3, 400, 3, 22, "must lie between −60 and 300 °C")]
    [InlineData(3, 20, 3, -80, "must lie between −60 and 300 °C")]
    public void Numbers_out_of_range_are_refused(double cold, double at, double hot, double air, string says) =>
        Assert.Contains(
            says,
            Assert.Throws<ArgumentException>(() => ResistanceRise.From(cold, at, hot, air, Units.Ohm)).Message,
            StringComparison.Ordinal);
}
