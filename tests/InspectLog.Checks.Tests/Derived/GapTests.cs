using CsCheck;
using InspectLog.Checks.Derived;
using InspectLog.Measuring;

namespace InspectLog.Checks.Tests.Derived;

public class GapTests
{
    // 1 in = 25.4 mm exactly (1959 agreement; NIST SP 811, from memory). Table: shared check values, 9.5.
    [Theory]
    [InlineData(0.20, 7.8740)]
    [InlineData(0.25, 9.8425)]
    [InlineData(0.30, 11.8110)]
    [InlineData(0.35, 13.7795)]
    [InlineData(0.40, 15.7480)]
    [InlineData(0.60, 23.6220)]
    [InlineData(0.80, 31.4961)]
    [InlineData(1.00, 39.3701)]
    [InlineData(1.10, 43.3071)]
    public void Millimetres_in_thou(double millimetres, double thou) =>
        Assert.Equal(thou, Gap.From(millimetres, Units.Millimetre).Thou, 5e-5);

    // As above; 28 thou also in TM 5-4310-360-14. Its figure for 30 thou is a misprint and not used.
    [Theory]
    [InlineData(6, 0.1524)]
    [InlineData(8, 0.2032)]
    [InlineData(12, 0.3048)]
    [InlineData(15, 0.3810)]
    [InlineData(16, 0.4064)]
    [InlineData(25, 0.6350)]
    [InlineData(28, 0.7112)]
    [InlineData(30, 0.7620)]
    [InlineData(35, 0.8890)]
    public void Thou_and_inches_in_millimetres(double thou, double millimetres)
    {
        Assert.Equal(millimetres, Gap.From(thou, Units.Thou).Millimetres, 1e-12);
        Assert.Equal(millimetres, Gap.From(thou / 1000, Units.Inch).Millimetres, 1e-12);
    }

    [Fact]
    public void Each_unit_leads_back_to_millimetres() =>
        Gen.Double[0, 10].Sample(millimetres =>
        {
            var gap = Gap.From(millimetres, Units.Millimetre);
            return Math.Abs(Gap.From(gap.Inches, Units.Inch).Millimetres - millimetres) < 1e-12
                && Math.Abs(Gap.From(gap.Thou, Units.Thou).Millimetres - millimetres) < 1e-12;
        });

    [Fact]
    public void Working_goes_by_millimetres()
    {
        Assert.Equal(
            ["0.01181 in", "11.81 thou"], Gap.From(0.3, Units.Millimetre).Steps.Select(step => step.Result.Text));
        var first = Gap.From(12, Units.Thou).Steps[0];
        Assert.Equal(("gap × 0.0254 mm", "0.3048 mm"), (first.Formula, first.Result.Text));
    }

    [Fact]
    public void Gap_below_zero_and_unit_of_another_kind_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Gap.From(-0.1, Units.Millimetre));
        Assert.Contains(
            "Use mm, in or thou",
            Assert.Throws<ArgumentException>(() => Gap.From(0.3, Units.Volt)).Message,
            StringComparison.Ordinal);
    }
}
