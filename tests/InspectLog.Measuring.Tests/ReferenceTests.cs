namespace InspectLog.Measuring.Tests;

/// <summary>Twenty thousand cases against figures worked out apart from the program, in high precision.</summary>
public partial class ReferenceTests
{
    // Of what is worked out the same way: the search for U ends at 1e-11 of it, the sum over t at 1e-9.
    private const double Exact = 1e-6;
    private const double ExactShare = 1e-7;

    // Two boxes and one t at the most: what the program does not approximate.
    [Fact]
    public void Decisions_agree_with_the_reference() =>
        Reference.AllAgree("decide.csv", 7_800, Decided, of => of[0] == "x");

    [Fact]
    public void Classical_decisions_agree_with_the_reference() =>
        Reference.AllAgree("decide.csv", 1_500, Decided, of => of[0] == "c");

    [Fact]
    public void Decisions_from_many_boxes_are_near_the_reference() =>
        Reference.AllAgree("decide.csv", 3_770, Decided, of => of[0] == "a");

    // JCGM 101:2008: the sum of two t, whatever it is put together from.
    [Fact]
    public void Uncertainty_from_two_repeated_readings_is_no_smaller_than_the_reference() =>
        Reference.AllAgree("decide.csv", 930, Decided, of => of[0] is "s" or "b");

    [Fact]
    public void Trends_agree_with_the_reference() => Reference.AllAgree("trend.csv", 3_000, Foretold);

    [Fact]
    public void Windings_agree_with_the_reference() => Reference.AllAgree("refer.csv", 3_000, Referred);

    // kind, reading, coverage, lower, upper, rule, value, U, outside, decision, edge, u, degrees
    private static string? Decided(string[] of)
    {
        var evaluation = new Evaluation(
            of[0] == "c" ? EvaluationMethod.Classical : EvaluationMethod.Distribution, Reference.Number(of[2]));
        var limits = Reference.Limits(of[3], of[4]);
        var estimate = ReferenceReading.Estimate(of[1], evaluation);
        return !Reference.Near(Reference.Number(of[6]), estimate.Value, 1e-10, estimate.StandardUncertainty)
            ? $"the value is {estimate.Value:R}"
            : WrongUncertainty(of, estimate) ?? WrongShare(of, estimate, limits) ?? WrongDecision(of, estimate, limits);
    }

    private static string? WrongUncertainty(string[] of, Estimate estimate)
    {
        var off = Reference.Number(of[7]) is var expected and > 0
            ? (estimate.ExpandedUncertainty / expected) - 1
            : estimate.ExpandedUncertainty;
        var (less, more) = Allowed(of);
        return !(off >= -less && off <= more) ? $"U is off by {off:0.0e+0}"
            : of[0] == "c" && !Reference.Near(Reference.Number(of[11]), estimate.StandardUncertainty, 1e-9)
                ? $"u is {estimate.StandardUncertainty:R}"
            : of[0] == "c" && !SameDegrees(Reference.Maybe(of[12]), estimate.DegreesOfFreedom)
                ? $"the degrees of freedom are {estimate.DegreesOfFreedom:R}"
            : null;
    }

    // How much less and how much more U may be. Of more than two boxes (a triangle is two) the program says 1 % at 95.45 %;
    // beside a t of one degree of freedom it is a little more. Nearer to certainty it errs on the safe side, since a normal
    // has no ends.
    private static (double Less, double More) Allowed(string[] of)
    {
        var usual = Reference.Number(of[2]) < 0.955;
        const double Many = 0.012;
        return of[0] switch
        {
            "x" or "c" => (Exact, Exact),
            "a" => (Many, usual ? Many : 0.1),
            "s" => (Exact, double.PositiveInfinity),
            _ => (Many, double.PositiveInfinity),
        };
    }

    private static bool SameDegrees(double? expected, double found) =>
        expected is { } finite ? Reference.Near(finite, found, 1e-8) : double.IsPositiveInfinity(found);

    private static string? WrongShare(string[] of, Estimate estimate, Limits limits)
    {
        var outside = Reference.Number(of[8]);
        var off = Math.Max(
            Math.Abs(estimate.ShareOutside(limits) - outside), Math.Abs(1 - estimate.ShareWithin(limits) - outside));
        return of[0] is "x" or "c" && off > ExactShare ? $"the share outside is off by {off:0.0e+0}" : null;
    }

    private static string? WrongDecision(string[] of, Estimate estimate, Limits limits)
    {
        var rule = Rule(of[5]);
        var conformity = ConformityRule.Decide(estimate, limits, rule);
        var found = Letter(conformity.Decision) + (conformity.AcceptanceZoneIsEmpty && of[5][0] is 'N' or 'S' or 'G' ? "e" : "");
        var exact = of[0] is "x" or "c";
        return of[9] != "?" && found != of[9] && (exact || of[0] == "a") ? $"the decision is {found}"
            : exact && of[10].Length > 0 && !AcceptsUpTo(Reference.Number(of[10]), rule.AcceptanceZone(estimate, limits), estimate)
                ? $"the zone accepted is {rule.AcceptanceZone(estimate, limits)}"
            : null;
    }

    private static bool AcceptsUpTo(double edge, AcceptanceZone? zone, Estimate estimate) =>
        zone is { } accepted && Reference.Near(edge, accepted.Upper ?? accepted.Lower, Exact, estimate.ExpandedUncertainty);

    private static DecisionRule Rule(string text) => text[0] switch
    {
        'N' => DecisionRule.NonBinary,
        'S' => DecisionRule.Simple,
        'I' => DecisionRule.Iso14253,
        'G' => DecisionRule.GuardFactor(Reference.Number(text[1..])),
        _ => DecisionRule.Risk(Reference.Number(text[1..])),
    };

    private static string Letter(Decision decision) => decision switch
    {
        Decision.Pass => "P",
        Decision.ConditionalPass => "p",
        Decision.ConditionalFail => "f",
        Decision.Fail => "F",
        Decision.ProvenConforming => "C",
        Decision.ProvenNonConforming => "N",
        _ => "n",
    };
}
