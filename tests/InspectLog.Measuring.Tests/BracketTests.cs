namespace InspectLog.Measuring.Tests;

public class BracketTests
{
    [Fact]
    public void Bracket_is_a_box_between_its_gauges()
    {
        var conformity = ConformityRule.Decide(new Bracket(0.25, 0.35), Limits.Of(0.2, 0.4));

        Close.ToDigits(0.3, conformity.Value, 15);
        Close.ToDigits(0.1 / Math.Sqrt(12), conformity.StandardUncertainty, 12);
        Close.ToDigits(0.05 * Coverage.Probability, conformity.ExpandedUncertainty, 12);
        Assert.Equal(1, conformity.ProbabilityOfConformity, 1e-12);
        Assert.Equal(Decision.Pass, conformity.Decision);
        Assert.Equal("gap between the gauges", Assert.Single(conformity.Contributions).Name);
    }

    [Theory]
    [InlineData(0.25, 0.35, 0.2, 0.35, Decision.Pass, 1)]
    [InlineData(0.2, 0.3, 0.2, 0.4, Decision.Pass, 1)]
    [InlineData(0.25, 0.35, 0.2, 0.348, Decision.Pass, 0.98)]
    [InlineData(0.25, 0.35, 0.2, 0.347, Decision.ConditionalPass, 0.97)]
    [InlineData(0.25, 0.35, 0.2, 0.30, Decision.ConditionalPass, 0.5)]
    [InlineData(0.25, 0.35, 0.2, 0.29, Decision.ConditionalFail, 0.4)]
    [InlineData(0.25, 0.35, 0.2, 0.253, Decision.ConditionalFail, 0.03)]
    [InlineData(0.25, 0.35, 0.2, 0.252, Decision.Fail, 0.02)]
    [InlineData(0.4, 0.5, 0.2, 0.4, Decision.Fail, 0)]
    [InlineData(0.25, 0.35, 0.32, null, Decision.ConditionalFail, 0.3)]
    [InlineData(0.25, 0.35, null, 0.32, Decision.ConditionalPass, 0.7)]
    [InlineData(0.1, 0.5, 0.2, 0.4, Decision.ConditionalPass, 0.5)]
    [InlineData(0.0, 0.1, 0.2, 0.4, Decision.Fail, 0)]
    public void Bracket_is_decided_by_the_share_within_the_limits(
        double goes, double stops, double? lower, double? upper, Decision decision, double probability)
    {
        var conformity = ConformityRule.Decide(new Bracket(goes, stops), Limits.Of(lower, upper));

        Assert.Equal(decision, conformity.Decision);
        Assert.Equal(probability, conformity.ProbabilityOfConformity, 1e-9);
    }

    [Fact]
    public void Bracket_wider_than_the_limits_can_never_pass() =>
        Assert.True(ConformityRule.Decide(new Bracket(0.1, 0.5), Limits.Of(0.2, 0.4)).AcceptanceZoneIsEmpty);
}
