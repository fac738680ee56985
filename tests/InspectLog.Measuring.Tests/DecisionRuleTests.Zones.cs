using CsCheck;

namespace InspectLog.Measuring.Tests;

/// <content>Risks told, acceptance zones, and names of rules.</content>
public partial class DecisionRuleTests
{
    [Fact]
    public void Risks_are_told_for_the_side_decided_on()
    {
        var limits = Limits.Of(2.80, 3.40);
        var accepted = ConformityRule.Decide(Some.With(3.35, 0.05), limits);
        var rejected = ConformityRule.Decide(Some.With(3.42, 0.05), limits);

        Close.ToDecimals(1 - 0.841345, accepted.ConsumersRisk().GetValueOrDefault(), 6);
        Assert.Null(accepted.ProducersRisk());
        Close.ToDecimals(0.344578, rejected.ProducersRisk().GetValueOrDefault(), 6);
        Assert.Null(rejected.ConsumersRisk());
    }

    [Fact]
    public void Uncertainty_too_large_for_the_limits_leaves_no_acceptance_zone()
    {
        var limits = Limits.Of(0.25, 0.35);
        var coarse = Some.With(0.30, 0.03);

        foreach (var rule in new[] { DecisionRule.NonBinary, DecisionRule.GuardFactor(1), DecisionRule.Risk(0.05) })
        {
            Assert.Null(rule.AcceptanceZone(Estimate.Of(coarse), limits));
            var conformity = ConformityRule.Decide(coarse, limits, rule);
            Assert.True(conformity.AcceptanceZoneIsEmpty);
            Assert.NotEqual(Decision.Pass, conformity.Decision);
        }

        Assert.Equal(new AcceptanceZone(0.25, 0.35), DecisionRule.Simple.AcceptanceZone(Estimate.Of(coarse), limits));
    }

    [Fact]
    public void Acceptance_zone_may_be_a_single_value()
    {
        var zone = DecisionRule.NonBinary.AcceptanceZone(Estimate.Of(Some.With(1, 0.05)), Limits.Of(0.90, 1.10));

        Close.ToDigits(1, zone?.Lower ?? 0, 12);
        Close.ToDigits(1, zone?.Upper ?? 0, 12);
    }

    [Fact]
    public void Acceptance_zone_ends_where_the_rule_stops_passing() =>
        Gen.Select(Gen.Double[0.01, 0.5], Gen.Double[0.01, 1], Gen.Double[-5, 5], Gen.Double[0.1, 10], Gen.Bool, Gen.Bool)
            .Sample((risk, u, lower, width, bothSides, bracket) =>
            {
                var limits = bothSides ? Limits.Of(lower, lower + width) : Limits.Of(null, lower + width);
                var rule = DecisionRule.Risk(risk);
                var estimate = Estimate.Of(bracket ? new Bracket(0, u) : Some.With(0, u));
                if (rule.AcceptanceZone(estimate, limits) is not { Upper: { } upper } zone)
                {
                    return !rule.CanAccept(estimate, limits);
                }

                return rule.Decide(estimate with { Value = upper }, limits) == Decision.Pass
                    && rule.Decide(estimate with { Value = upper + (1e-6 * (1 + width)) }, limits) == Decision.Fail
                    && (!bothSides || Math.Abs(zone.Lower.GetValueOrDefault() - lower - (lower + width - upper)) < 1e-9);
            });

    [Fact]
    public void Rules_are_found_by_their_names()
    {
        foreach (var rule in new[]
        {
            DecisionRule.NonBinary, DecisionRule.Simple, DecisionRule.GuardFactor(0.83), DecisionRule.Risk(0.05),
        })
        {
            Assert.Equal(rule, DecisionRule.Find(rule.Id));
            Assert.EndsWith(".", rule.Statement, StringComparison.Ordinal);
        }

        Assert.Equal("risk 0.05", DecisionRule.Risk(0.05).Id);
        Assert.Equal("guard band 0.83", DecisionRule.GuardFactor(0.83).Id);
        Assert.Contains("at most 5 %", DecisionRule.Risk(0.05).Statement, StringComparison.Ordinal);
        Assert.Contains("0.83 times", DecisionRule.GuardFactor(0.83).Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("strict")]
    [InlineData("risk ")]
    [InlineData("risk 0")]
    [InlineData("risk 0.6")]
    [InlineData("risk -0.1")]
    [InlineData("guard band 0")]
    [InlineData("guard band 6")]
    [InlineData("guard band 1,5")]
    [InlineData("Non-binary")]
    public void Unknown_rule_is_not_found(string id) => Assert.Null(DecisionRule.Find(id));

    [Theory]
    [InlineData(0)]
    [InlineData(0.51)]
    [InlineData(double.NaN)]
    public void Risk_out_of_range_is_refused(double risk) =>
        Assert.Contains(
            "at most 50 %",
            Assert.Throws<ArgumentException>(() => DecisionRule.Risk(risk)).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(5.1)]
    [InlineData(double.NaN)]
    public void Guard_factor_out_of_range_is_refused(double factor) =>
        Assert.Contains(
            "at most 5 expanded",
            Assert.Throws<ArgumentException>(() => DecisionRule.GuardFactor(factor)).Message,
            StringComparison.Ordinal);
}
