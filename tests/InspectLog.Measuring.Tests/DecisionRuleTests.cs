using CsCheck;

namespace InspectLog.Measuring.Tests;

public partial class DecisionRuleTests
{
    private static Decision Decide(double value, double u, Limits limits, DecisionRule rule) =>
        ConformityRule.Decide(Some.With(value, u), limits, rule).Decision;

    // ILAC-G8:09/2019, 4.2.1 and 4.2.2.
    [Theory]
    [InlineData(3.30, Decision.Pass, Decision.Pass)]
    [InlineData(3.31, Decision.Pass, Decision.Fail)]
    [InlineData(3.40, Decision.Pass, Decision.Fail)]
    [InlineData(3.41, Decision.Fail, Decision.Fail)]
    [InlineData(2.79, Decision.Fail, Decision.Fail)]
    public void Binary_rules_say_pass_or_fail_only(double value, Decision simple, Decision guarded)
    {
        var limits = Limits.Of(2.80, 3.40);

        Assert.Equal(simple, Decide(value, 0.05, limits, DecisionRule.Simple));
        Assert.Equal(guarded, Decide(value, 0.05, limits, DecisionRule.GuardFactor(1)));
    }

    // ISO 14253-1:2017 (M): 5 % gives a guard band of 1.645u; the older default U (k = 2) is a factor of 1.
    [Fact]
    public void Risk_rule_draws_the_limits_in_as_ISO_14253()
    {
        var limits = Limits.Of(null, 3.40);
        var estimate = Estimate.Of(Some.With(3, 0.05));

        Close.ToDecimals(3.317757, DecisionRule.Risk(0.05).AcceptanceZone(estimate, limits)?.Upper ?? 0, 6);
        Close.ToDecimals(3.300, DecisionRule.GuardFactor(1).AcceptanceZone(estimate, limits)?.Upper ?? 0, 9);
        Assert.Equal(Decision.Pass, Decide(3.3177, 0.05, limits, DecisionRule.Risk(0.05)));
        Assert.Equal(Decision.Fail, Decide(3.3178, 0.05, limits, DecisionRule.Risk(0.05)));
        Close.ToDecimals(0.950529, Estimate.Of(Some.With(3.3175, 0.05)).ShareWithin(limits), 6);
        Close.ToDecimals(0.977250, Estimate.Of(Some.With(3.300, 0.05)).ShareWithin(limits), 6);
    }

    // JCGM 106:2012, Table 1 (M): the z for a wanted probability of conformity.
    [Theory]
    [InlineData(0.20, 0.841621)]
    [InlineData(0.10, 1.281552)]
    [InlineData(0.05, 1.644854)]
    [InlineData(0.01, 2.326348)]
    [InlineData(0.001, 3.090232)]
    public void Guard_band_for_a_risk_agrees_with_JCGM_106(double risk, double z)
    {
        var zone = DecisionRule.Risk(risk).AcceptanceZone(Estimate.Of(Some.With(0, 1)), Limits.Of(0, null));

        Close.ToDecimals(z, zone?.Lower ?? 0, 5);
        Assert.Null(zone?.Upper);
    }

    // JCGM 106:2012, 8.3.2 example: a speed limit of 100 km/h, u of 2 %; a charge needs 99.9 %, which begins at 107 km/h.
    [Fact]
    public void Speed_at_which_a_limit_is_surely_passed_agrees_with_JCGM_106()
    {
        var fastest = 100 / (1 - (-NormalDistribution.Quantile(0.001) * 0.02));

        Close.ToDecimals(106.59, fastest, 2);
        Close.ToDigits(0.999, Estimate.Of(Some.With(fastest, 0.02 * fastest)).ShareWithin(Limits.Of(100, null)), 9);
    }

    // ILAC-G8:09/2019, Table 1 (M): w = 3U below 1 ppm, 1.5U below 0.16 %, U below 2.5 %, 0.83U below 5 %, 0 up to 50 %.
    [Theory]
    [InlineData(0.5, 0.15866, 5)]
    [InlineData(0.83, 0.04846, 4)]
    [InlineData(1, 0.02275, 4)]
    [InlineData(1.5, 0.001350, 4)]
    [InlineData(3, 9.87e-10, 3)]
    public void Risk_at_the_acceptance_limit_agrees_with_ILAC_G8(double factor, double risk, int digits)
    {
        var limits = Limits.Of(null, 0.0);
        var zone = DecisionRule.GuardFactor(factor).AcceptanceZone(Estimate.Of(Some.With(0, 1)), limits);
        var conformity = ConformityRule.Decide(Some.With(zone?.Upper ?? 0, 1), limits, DecisionRule.GuardFactor(factor));

        Assert.Equal(Decision.Pass, conformity.Decision);
        Close.ToDigits(risk, Estimate.Of(Some.With(zone?.Upper ?? 0, 1)).ShareOutside(limits), digits);
        Assert.Equal(risk, conformity.ConsumersRisk().GetValueOrDefault(), 5e-6);
    }

    [Fact]
    public void Simple_acceptance_on_a_limit_is_wrong_half_the_time()
    {
        var conformity = ConformityRule.Decide(Some.With(0, 1), Limits.Of(null, 0.0), DecisionRule.Simple);

        Assert.Equal(Decision.Pass, conformity.Decision);
        Close.ToDigits(0.5, conformity.ConsumersRisk().GetValueOrDefault(), 12);
    }

    // A risk so small that 1 less the probability would lose it: 1e-10 is 6.3613 standard deviations (computed).
    [Fact]
    public void Very_small_risk_still_draws_its_limit()
    {
        var zone = DecisionRule.Risk(1e-10).AcceptanceZone(Estimate.Known(0, 1), Limits.Of(null, 0.0));

        Close.ToDecimals(-6.3613, zone?.Upper ?? 0, 4);
    }

    [Fact]
    public void Wider_uncertainty_never_turns_fail_into_pass_by_any_rule() =>
        Gen.Select(
            Gen.OneOf(
                DecisionRule.NonBinary, DecisionRule.Simple, DecisionRule.GuardFactor(1), DecisionRule.GuardFactor(0.83),
                DecisionRule.Risk(0.05), DecisionRule.Risk(0.5)),
            Gen.Double[-30, 30], Gen.Double[1e-6, 10], Gen.Double[1, 10], Gen.Double[0.1, 20])
            .Sample((rule, value, u, wider, width) =>
            {
                var limits = Limits.Of(-width, width);
                return Decide(value, u, limits, rule) != Decision.Fail
                    || Decide(value, u * wider, limits, rule) != Decision.Pass;
            });

    // ISO 14253-1:2017 (M) on both sides of a tolerance, and on one side with an uncertainty much larger than 1: 1.644854 u.
    [Fact]
    public void Risk_rule_draws_both_limits_in()
    {
        var zone = DecisionRule.Risk(0.05).AcceptanceZone(Estimate.Known(3, 0.05), Limits.Of(2.80, 3.40));

        Close.ToDecimals(2.882243, zone?.Lower ?? 0, 6);
        Close.ToDecimals(3.317757, zone?.Upper ?? 0, 6);
        Close.ToDecimals(
            164.4854, DecisionRule.Risk(0.05).AcceptanceZone(Estimate.Known(0, 100), Limits.Of(0, null))?.Lower ?? 0, 4);
    }

    // A box from 0 to 1 with a limit in it: the share beyond is the risk itself, so the rule just accepts it, whatever the
    // last digit of the arithmetic.
    [Fact]
    public void Risk_that_is_just_met_is_accepted()
    {
        for (var percent = 1; percent <= 50; percent++)
        {
            var limits = Limits.Of(null, 1 - (percent / 100.0));
            var rule = DecisionRule.Risk(percent / 100.0);

            Assert.Equal(Decision.Pass, ConformityRule.Decide(new Bracket(0, 1), limits, rule).Decision);
        }
    }

    [Fact]
    public void Rules_say_what_they_do()
    {
        Assert.StartsWith("Non-binary rule of ILAC-G8:09/2019", DecisionRule.NonBinary.Statement, StringComparison.Ordinal);
        Assert.EndsWith("conditional fail where not.", DecisionRule.NonBinary.Statement, StringComparison.Ordinal);
        Assert.StartsWith("Simple acceptance (ILAC-G8:09/2019)", DecisionRule.Simple.Statement, StringComparison.Ordinal);
        Assert.EndsWith("as likely outside as inside.", DecisionRule.Simple.Statement, StringComparison.Ordinal);
        Assert.StartsWith("Guard-banded acceptance (JCGM 106:2012)", DecisionRule.Risk(0.1).Statement, StringComparison.Ordinal);
        Assert.StartsWith("Guard-banded acceptance (JCGM 106:2012)", DecisionRule.GuardFactor(2).Statement, StringComparison.Ordinal);
        Assert.Equal(("non-binary", "simple"), (DecisionRule.NonBinary.Id, DecisionRule.Simple.Id));
        Assert.Equal("guard band 5", DecisionRule.GuardFactor(5).Id);
    }
}
