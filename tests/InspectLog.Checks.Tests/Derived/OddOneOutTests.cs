using InspectLog.Checks.Derived;

namespace InspectLog.Checks.Tests.Derived;

public class OddOneOutTests
{
    // Uranium data of NIST/SEMATECH e-Handbook 1.3.5.17.1: G = 2.468765, two-sided 5 % critical value 2.126 (2.1266).
    // Modified z (formula of Iglewicz and Hoaglin) calculated: shared table of check values, 4.4.
    [Fact]
    public void Published_outlier_is_found_by_both_tests()
    {
        var odd = Of(199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57);

        Assert.Equal(2.468765, odd.Grubbs!.Value.Statistic, 5e-7);
        Assert.Equal(2.1266, odd.Grubbs.Value.Critical, 5e-5);
        Assert.Equal(new CylinderValue(8, 245.57), odd.Farthest);
        double[] expected = [-1.3965, -1.2473, -0.7999, -0.3728, 0.3728, 0.3932, 0.5491, 29.9627];
        Assert.All(expected.Zip(odd.Scores!), pair => Assert.Equal(pair.First, pair.Second.Value, 5e-5));
        Assert.Equal([8], odd.Odd);
        Assert.Equal("Cylinder 8 differs from the others by more than chance.", odd.Sentence);
    }

    // By hand: with two of eight far out, s grows so much that G stays below its critical value.
    [Fact]
    public void Outliers_that_hide_each_other_from_grubbs_are_found_by_modified_z()
    {
        var odd = Of(8.0, 8.1, 8.2, 8.0, 8.3, 8.1, 14.0, 14.2);

        Assert.False(odd.Grubbs!.Value.IsOutlier);
        Assert.Equal([7, 8], odd.Odd);
        Assert.Equal("Cylinders 7 and 8 differ from the others by more than chance.", odd.Sentence);
    }

    [Fact]
    public void Like_values_have_no_odd_one()
    {
        var odd = Of(8.0, 8.4, 8.2, 8.1, 8.3, 8.5);

        Assert.Empty(odd.Odd);
        Assert.StartsWith("No cylinder differs", odd.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_values_have_no_spread_to_judge_by()
    {
        var odd = Of(8, 8, 8, 8);

        Assert.Null(odd.Grubbs);
        Assert.Null(odd.Scores);
        Assert.Empty(odd.Steps);
        Assert.Equal("All values are equal.", odd.Sentence);
    }

    [Fact]
    public void More_than_half_equal_leaves_grubbs_alone()
    {
        var odd = Of(8, 8, 8, 8, 8, 12);

        Assert.Null(odd.Scores);
        Assert.Equal([6], odd.Odd);
        Assert.Equal(["Grubbs' G", "Critical G"], odd.Steps.Select(step => step.Result.Name));
    }

    [Fact]
    public void Working_shows_both_tests()
    {
        var steps = Of(199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57).Steps;

        Assert.Equal(["2.469", "2.127", "29.96"], steps.Select(step => step.Result.Text));
        Assert.Equal(["245.6 kΩ", "206.4 kΩ", "15.85 kΩ"], steps[0].Inputs.Select(input => input.Text));
    }

    [Fact]
    public void Two_values_are_too_few() =>
        Assert.Contains(
            "Three values or more", Assert.Throws<ArgumentException>(() => Of(8, 9)).Message, StringComparison.Ordinal);

    private static OddOneOut Of(params double[] values) =>
        OddOneOut.Of(CylinderSpread.Of([.. values.Select((value, index) => new CylinderValue(index + 1, value))], "kΩ"));
}
