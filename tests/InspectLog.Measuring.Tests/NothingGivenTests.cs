namespace InspectLog.Measuring.Tests;

/// <summary>A caller that passes nothing is told which argument it was.</summary>
public class NothingGivenTests
{
    private static readonly Limits Within = Limits.Of(0, 1);
    private static readonly Estimate One = Estimate.Known(1, 0.1);

    public static TheoryData<string, Action> Calls => new()
    {
        { "reading", () => Estimate.Of(null!) },
        { "limits", () => One.ShareWithin(null!) },
        { "limits", () => One.ShareOutside(null!) },
        { "limits", () => One.CapabilityIndex(null!) },
        { "limits", () => Advice.For(new Bracket(0, 1), null!) },
        { "limits", () => Advice.For(One, null!) },
        { "limits", () => ConformityRule.Decide(new Bracket(0, 1), null!) },
        { "rule", () => ConformityRule.Decide(new Bracket(0, 1), Within, null!) },
        { "limits", () => ConformityRule.Decide(One, null!, DecisionRule.Simple) },
        { "rule", () => ConformityRule.Decide(One, Within, null!) },
        { "id", () => DecisionRule.Find(null!) },
        { "limits", () => DecisionRule.Simple.AcceptanceZone(One, null!) },
        { "limits", () => DecisionRule.Risk(0.05).AcceptanceZone(One, null!) },
        { "density", () => GlobalRisk.Of(null!, new(0, 1), Within, new(0, 1), 1) },
        { "limits", () => GlobalRisk.Of(x => x, new(0, 1), null!, new(0, 1), 1) },
        { "accuracy", () => Estimate.Of(new DisplayedReading([1], null!, 1)) },
        { "stack", () => FeelerBlades.Bracket(null!, [new(1, 0)]) },
        { "stack", () => FeelerBlades.Bracket([new(1, 0)], null!) },
        { "text", () => Units.Named(null!) },
    };

    [Theory]
    [MemberData(nameof(Calls))]
    public void Nothing_is_refused_by_name(string name, Action call) =>
        Assert.Equal(name, Assert.Throws<ArgumentNullException>(call).ParamName);
}
