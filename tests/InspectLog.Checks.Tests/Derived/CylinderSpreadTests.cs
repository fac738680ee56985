using InspectLog.Checks.Derived;

namespace InspectLog.Checks.Tests.Derived;

public class CylinderSpreadTests
{
    // Lowest at least 75 % of highest: vehicle service manuals of 1992 and 1997 (lemon-manuals.org.ua) and 2012
    // (recarea.com). The cases are calculated: shared table of check values, 9.6.
    [Theory]
    [InlineData(new[] { 150.0, 145, 140, 115 }, 0.76667, true)]
    [InlineData(new[] { 150.0, 145, 140, 110 }, 0.73333, false)]
    [InlineData(new[] { 150.0, 140, 145, 112.5 }, 0.75000, true)]
    [InlineData(new[] { 11.0, 10.8, 8.2, 10.9 }, 0.74545, false)]
    public void Lowest_must_reach_a_share_of_the_highest(double[] values, double share, bool meets)
    {
        var spread = Spread(values);

        Assert.Equal(share, spread.Share!.Value, 5e-6);
        Assert.Equal(meets, spread.Meets(BalanceRule.Compression[0]));
    }

    // Lowest at least 70 % of highest: manual of 2006 (gm.saturn.team), example 150 psi and 105 psi.
    [Fact]
    public void Share_itself_is_allowed() => Assert.True(Spread(150, 105).Meets(BalanceRule.Compression[1]));

    [Fact]
    public void Spread_names_the_cylinders_of_its_ends()
    {
        var spread = CylinderSpread.Of([new(3, 7), new(1, 9), new(2, 5)], "kΩ");

        Assert.Equal((new(2, 5), new(1, 9), 4), (spread.Lowest, spread.Highest, spread.Range));
        Assert.Equal(["4 kΩ", "55.56%"], spread.Steps.Select(step => step.Result.Text));
        Assert.Equal(["Highest, cylinder 1", "Lowest, cylinder 2"], spread.Steps[0].Inputs.Select(input => input.Name));
    }

    [Theory]
    [InlineData(-1, 5)]
    [InlineData(0, 0)]
    public void Share_of_nothing_or_below_is_none(double low, double high)
    {
        var spread = Spread(low, high);

        Assert.Null(spread.Share);
        Assert.Null(spread.Meets(BalanceRule.Compression[0]));
    }

    [Fact]
    public void One_value_no_number_and_a_cylinder_twice_are_refused()
    {
        Assert.Contains("at least two", Refusal(new CylinderValue(1, 5)), StringComparison.Ordinal);
        Assert.Contains("value of cylinder 2", Refusal(new(1, 5), new(2, double.NaN)), StringComparison.Ordinal);
        Assert.Contains("Cylinder 1 is given twice", Refusal(new(1, 5), new(1, 6)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "Manual")]
    [InlineData(1.01, "Manual")]
    [InlineData(double.NaN, "Manual")]
    [InlineData(0.75, " ")]
    public void Rule_out_of_range_or_without_a_source_is_refused(double share, string source) =>
        Assert.Throws<ArgumentException>(() => new BalanceRule(share, source));

    private static CylinderSpread Spread(params double[] values) =>
        CylinderSpread.Of([.. values.Select((value, index) => new CylinderValue(index + 1, value))], "");

    private static string Refusal(params CylinderValue[] values) =>
        Assert.Throws<ArgumentException>(() => CylinderSpread.Of(values, "")).Message;
}
