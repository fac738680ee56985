namespace InspectLog.Measuring.Tests;

public partial class ConformityRuleTests
{
    [Fact]
    public void Single_reading_is_decided_with_accuracy_and_display_step()
    {
        // 0.8 % of 0.7 plus 3 counts of 0.1 is ±0.3056; half a step is ±0.05.
        var conformity = ConformityRule.Decide(Some.Reading([0.7], 0.8, 3, 0.1), Limits.Of(0.6, 2.0));

        Close.ToDigits(Math.Sqrt(((0.3056 * 0.3056) + (0.05 * 0.05)) / 3), conformity.StandardUncertainty, 12);
        // Two boxes make a trapezoid; the middle 95.45 % of it ends on its slope (EA-4/02 S10, from memory).
        Close.ToDigits(0.3556 - Math.Sqrt((1 - Coverage.Probability) * 0.6112 * 0.1), conformity.ExpandedUncertainty, 9);
        Close.ToDigits(conformity.ExpandedUncertainty / conformity.StandardUncertainty, conformity.CoverageFactor, 12);
        Assert.Equal(Decision.ConditionalPass, conformity.Decision);
        Assert.Equal(["instrument accuracy", "display step"], conformity.Contributions.Select(c => c.Name));
    }

    [Fact]
    public void Repeats_bring_their_spread_and_a_larger_coverage_factor()
    {
        var conformity = ConformityRule.Decide(
            Some.Reading([1.50, 1.62, 1.54], 0.1, 0, 0.01), Limits.Of(0.6, 2.0));
        var repeats = conformity.Contributions[0];
        var share = repeats.StandardUncertainty / conformity.StandardUncertainty;

        Assert.Equal("spread of the repeats", repeats.Name);
        Assert.Equal(2, repeats.DegreesOfFreedom);
        // Deviations −0.16/3, 0.20/3 and −0.04/3 from the mean: s² = 0.0672/9/2.
        Close.ToDigits(Math.Sqrt(0.0672 / 9 / 2 / 3), repeats.StandardUncertainty, 12);
        Assert.InRange(conformity.CoverageFactor, 4.4, Coverage.Factor(2));

        // JCGM 100:2008, G.4: the classical factor goes by the effective degrees of freedom.
        var classical = Estimate.Of(Some.Reading([1.50, 1.62, 1.54], 0.1, 0, 0.01), Evaluation.Classical);
        Close.ToDigits(Coverage.Factor(2 / Math.Pow(share, 4)), classical.CoverageFactor, 9);
    }

    [Fact]
    public void Contributions_come_largest_first()
    {
        var conformity = ConformityRule.Decide(Some.Reading([5, 5.001], 0, 0, 0.1), Limits.Of(0, 10));

        Assert.Equal(
            ["display step", "spread of the repeats", "instrument accuracy"],
            conformity.Contributions.Select(c => c.Name));
    }

    [Fact]
    public void Identical_repeats_are_worth_what_one_of_them_is()
    {
        var single = Estimate.Of(Some.Reading([0.75], 0.5, 1, 0.01));
        var same = Estimate.Of(Some.Reading([0.75, 0.75, 0.75], 0.5, 1, 0.01));

        Assert.Equal((0.75, single.ExpandedUncertainty), (same.Value, same.ExpandedUncertainty));
        Assert.True(single.ScatterUnknown);
        Assert.False(same.ScatterUnknown);
    }

    // The tie rule: an edge belongs to the better side.
    [Theory]
    [InlineData(1.90, Decision.Pass)]
    [InlineData(1.9000001, Decision.ConditionalPass)]
    [InlineData(2.00, Decision.ConditionalPass)]
    [InlineData(2.0000001, Decision.ConditionalFail)]
    [InlineData(2.10, Decision.ConditionalFail)]
    [InlineData(2.1000001, Decision.Fail)]
    [InlineData(0.70, Decision.Pass)]
    [InlineData(0.6999999, Decision.ConditionalPass)]
    [InlineData(0.60, Decision.ConditionalPass)]
    [InlineData(0.5999999, Decision.ConditionalFail)]
    [InlineData(0.50, Decision.ConditionalFail)]
    [InlineData(0.4999999, Decision.Fail)]
    public void Value_exactly_on_an_edge_belongs_to_the_better_side(double value, Decision expected) =>
        Assert.Equal(expected, ConformityRule.Decide(Some.With(value, 0.05), Limits.Of(0.6, 2.0)).Decision);

    [Theory]
    [InlineData(0.1 + 0.2, null, 0.3)]
    [InlineData(0.3, 0.1 + 0.2, null)]
    [InlineData(1.1 * 3, null, 3.3)]
    public void Value_that_misses_a_limit_only_in_the_sixteenth_digit_is_on_it(double value, double? lower, double? upper) =>
        Assert.Equal(
            Decision.ConditionalPass, ConformityRule.Decide(Some.With(value, 0.05), Limits.Of(lower, upper)).Decision);

    // With a guard band of 1 at a limit of 0, the slack is a millionth of a millionth itself.
    [Theory]
    [InlineData(1e-12, Decision.ConditionalPass)]
    [InlineData(1.001e-12, Decision.ConditionalFail)]
    [InlineData(1 + 1e-12, Decision.ConditionalFail)]
    [InlineData(1 + 1.001e-12, Decision.Fail)]
    [InlineData(-1 + 1e-12, Decision.Pass)]
    [InlineData(-1 + 1.001e-12, Decision.ConditionalPass)]
    public void Slack_ends_at_a_millionth_of_a_millionth(double value, Decision expected) =>
        Assert.Equal(
            expected,
            ConformityRule.Decide(Estimate.Known(value, 0.5), Limits.Of(null, 0.0), DecisionRule.NonBinary).Decision);

    // A value that misses an edge by its last digit is on it, at every size and on either side; one that misses it by a
    // thousandth is not.
    [Theory]
    [InlineData(1e9)]
    [InlineData(1)]
    [InlineData(1e-9)]
    public void Edges_are_as_wide_as_the_last_digit_at_every_size(double size)
    {
        var (above, below) = ((0.1 + 0.2) * size, 0.3 * size);
        var tiny = 1e-9 * size;

        Assert.NotEqual(above, below);
        Assert.Equal(Decision.ConditionalPass, Decide(above, tiny, Limits.Of(null, below)));
        Assert.Equal(Decision.ConditionalPass, Decide(below, tiny, Limits.Of(above, null)));
        Assert.Equal(Decision.Fail, Decide(0.3003 * size, tiny, Limits.Of(null, below)));
        Assert.Equal(Decision.Fail, Decide(0.2997 * size, tiny, Limits.Of(above, null)));
        // A guard band that is larger than the value is inside by less than its last digit.
        Assert.Equal(Decision.Pass, Decide(-below, above / 2, Limits.Of(null, 0.0)));
        Assert.Equal(Decision.ConditionalFail, Decide(above, below / 2, Limits.Of(null, 0.0)));

        static Decision Decide(double value, double u, Limits limits) =>
            ConformityRule.Decide(Estimate.Known(value, u), limits, DecisionRule.NonBinary).Decision;
    }

    [Theory]
    [InlineData(2.0, Decision.Pass)]
    [InlineData(1.0, Decision.Pass)]
    [InlineData(2.001, Decision.Fail)]
    [InlineData(0.599, Decision.Fail)]
    public void Vanishing_uncertainty_decides_by_the_limits_alone(double value, Decision expected)
    {
        var conformity = ConformityRule.Decide(Some.Reading([value], 0, 0, 1e-300), Limits.Of(0.6, 2.0));

        Assert.Equal(expected, conformity.Decision);
        Assert.InRange(conformity.ProbabilityOfConformity, 0, 1);
        Assert.All(conformity.Contributions, c => Assert.True(double.IsFinite(c.StandardUncertainty)));
    }

    [Theory]
    [InlineData(2.0, 1)]
    [InlineData(2.001, 0)]
    public void Uncertainty_too_small_for_a_number_still_gives_a_probability(double value, double probability)
    {
        var conformity = ConformityRule.Decide(Some.Reading([value], 0, 0, double.Epsilon), Limits.Of(0.6, 2.0));

        Assert.Equal(0, conformity.StandardUncertainty);
        Assert.Equal(probability, conformity.ProbabilityOfConformity);
    }

    [Theory]
    [InlineData(0.25)]
    [InlineData(0.28)]
    [InlineData(0.30)]
    [InlineData(0.33)]
    [InlineData(0.35)]
    public void Uncertainty_wider_than_the_limits_never_passes_and_says_so(double value)
    {
        var conformity = ConformityRule.Decide(Some.With(value, 0.03), Limits.Of(0.25, 0.35));

        Assert.Equal(Decision.ConditionalPass, conformity.Decision);
        Assert.True(conformity.AcceptanceZoneIsEmpty);
    }

    [Fact]
    public void One_sided_limit_never_has_an_empty_acceptance_zone() =>
        Assert.False(ConformityRule.Decide(Some.With(1, 100), Limits.Of(0, null)).AcceptanceZoneIsEmpty);
}
