using CsCheck;

namespace InspectLog.Measuring.Tests;

/// <content>Uncertainties that are known, small risks, budgets of brackets.</content>
public partial class EstimateTests
{
    [Fact]
    public void Known_uncertainty_is_taken_as_it_is()
    {
        var estimate = Estimate.Known(3.31, 0.05, 4);

        Assert.Equal((3.31, 0.05, 4), (estimate.Value, estimate.StandardUncertainty, estimate.DegreesOfFreedom));
        Close.ToDecimals(2.87, estimate.CoverageFactor, 2);
        Assert.Equal("uncertainty as stated", Assert.Single(estimate.Contributions).Name);
        Assert.Equal(2, Estimate.Known(3.31, 0.05).CoverageFactor);
    }

    [Theory]
    [InlineData(double.NaN, 0.1, 5, "finite")]
    [InlineData(1, -0.1, 5, "0 or more")]
    [InlineData(1, double.PositiveInfinity, 5, "0 or more")]
    [InlineData(1, 0.1, 0.9, "1 degree of freedom")]
    [InlineData(1, 0.1, double.NaN, "1 degree of freedom")]
    public void Known_uncertainty_out_of_range_is_refused(double value, double u, double degrees, string reason) =>
        Assert.Contains(
            reason,
            Assert.Throws<ArgumentException>(() => Estimate.Known(value, u, degrees)).Message,
            StringComparison.Ordinal);

    // Upper tails of the normal distribution at 8 and 10, from memory of printed tables of extreme tails: 6.2210e-16
    // and 7.6199e-24.
    [Theory]
    [InlineData(8, 6.2210e-16)]
    [InlineData(10, 7.6199e-24)]
    public void Small_risk_keeps_its_digits(double distance, double risk)
    {
        var estimate = Estimate.Known(0, 1);

        Close.ToDigits(risk, estimate.ShareOutside(Limits.Of(null, distance)), 5);
        Close.ToDigits(risk, estimate.ShareOutside(Limits.Of(-distance, null)), 5);
        Close.ToDigits(2 * risk, estimate.ShareOutside(Limits.Of(-distance, distance)), 5);
    }

    [Fact]
    public void Shares_within_and_outside_add_up_to_one() =>
        Gen.Select(Gen.Double[-20, 20], Gen.Double[0.01, 10], Gen.Double[-10, 10], Gen.Double[0.1, 10], Gen.Int[0, 2], Gen.Bool)
            .Sample((value, u, lower, width, sides, bracket) =>
            {
                var limits = Limits.Of(sides == 0 ? null : lower, sides == 1 ? null : lower + width);
                var estimate = bracket ? Estimate.Of(new Bracket(value, value + u)) : Estimate.Known(value, u);
                return Math.Abs(estimate.ShareWithin(limits) + estimate.ShareOutside(limits) - 1) < 1e-12;
            });

    [Theory]
    [InlineData(2.0, 0)]
    [InlineData(2.001, 1)]
    [InlineData(0.6, 0)]
    [InlineData(0.599, 1)]
    public void Value_known_exactly_is_outside_or_not(double value, double share)
    {
        Assert.Equal(share, Estimate.Known(value, 0, 1).ShareOutside(Limits.Of(0.6, 2.0)));
        Assert.Equal(1 - share, Estimate.Known(value, 0).ShareWithin(Limits.Of(0.6, 2.0)));
    }

    [Fact]
    public void Contributions_of_one_size_stay_in_the_order_they_were_named() =>
        Assert.Equal(
            ["temperature", "method", "operator"],
            Estimate.Of(Some.With(1, 0) with
            {
                Allowances =
                [
                    new(AllowanceSource.Method, 1), new(AllowanceSource.Operator, 1), new(AllowanceSource.Temperature, 2),
                ],
            }).Contributions.Take(3).Select(contribution => contribution.Name));

    [Fact]
    public void Budget_table_of_nothing_has_no_shares() =>
        Assert.All(
            BudgetTable.Of(Estimate.Of(Some.Reading([1], 0, 0, double.Epsilon))), line => Assert.Equal(0, line.Share));

    [Fact]
    public void Budget_table_of_a_bracket_says_what_its_blades_are_worth()
    {
        var lines = BudgetTable.Of(Estimate.Of(FeelerBlades.Bracket([new(0.30, 0.005)], [new(0.35, 0.005)])));

        Assert.Equal(["gap between the gauges", "size of the gauges"], lines.Select(line => line.Contribution.Name));
        Assert.Equal(1, lines.Sum(line => line.Share), 1e-12);
        Close.ToDigits(0.025 * Coverage.Probability, lines[1].ExpandedWithout, 12);
    }

    // JCGM 106:2012, 7.5 (M): T = 0.6, u = 0.05 gives C_m = 3.0.
    [Fact]
    public void Capability_index_agrees_with_JCGM_106()
    {
        var estimate = Estimate.Of(Some.With(1, 0.05));

        Close.ToDigits(3.0, estimate.CapabilityIndex(Limits.Of(0.6, 1.2)).GetValueOrDefault(), 12);
        Assert.Null(estimate.CapabilityIndex(Limits.Of(0.6, null)));
    }
}
