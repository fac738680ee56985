using System.Globalization;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>Decision rules: which one an inspection has pinned, and what it says.</summary>
public static class RuleWords
{
    /// <summary>The rule an inspection has pinned; the non-binary rule for inspections from before sheets named
    /// one.</summary>
    public static DecisionRule Of(InspectionState inspection) =>
        DecisionRule.Find(inspection.How.Rule ?? DecisionRule.NonBinary.Id) ?? DecisionRule.NonBinary;

    /// <summary>How expanded uncertainties are found in an inspection: at the coverage it has pinned.</summary>
    public static Evaluation EvaluationOf(InspectionState inspection) => inspection.How.Coverage is > 0 and < 1 and { } coverage
        ? Evaluation.Default with { Coverage = coverage }
        : Evaluation.Default;

    /// <summary>What the figure after ± is, in a sentence.</summary>
    public static string Spread(Evaluation evaluation) =>
        $"The figure after ± is the expanded uncertainty: half the middle {evaluation.CoverageText()} of what the value may be"
        + (evaluation.IsUsualCoverage ? "; about 95 in 100 such spans hold the true value." : ".");

    /// <summary>The rule a reading was decided by, in a few words: "non-binary rule".</summary>
    /// <param name="recorded">What the reading's entry says: an id, or words in old entries.</param>
    public static string Name(string recorded) => DecisionRule.Find(recorded) is not { } rule ? recorded
        : rule == DecisionRule.NonBinary ? "non-binary rule"
        : rule == DecisionRule.Simple ? "simple acceptance"
        : $"guard-banded acceptance, {recorded}";

    /// <summary>What a rule lets through, in words for the report: how likely a passed value may be outside.</summary>
    /// <remarks>Specific consumer's risk at the edge of the acceptance zone (JCGM 106:2012, 9.3.2), for one limit in
    /// reach and a normal density.</remarks>
    /// <param name="rule">The rule.</param>
    /// <param name="evaluation">How the expanded uncertainty is found, of which guard bands are made.</param>
    public static string Risk(DecisionRule rule, Evaluation evaluation) =>
        rule == DecisionRule.NonBinary
            ? $"A passed value lies outside its limits with a probability of at most about {Percent(Beyond(1, evaluation))}; a conditional pass with up to about 50\u00a0%."
        : rule == DecisionRule.Simple
            ? "A passed value lies outside its limits with a probability of up to about 50\u00a0%; a failed one lies within them as often."
        : $"A passed value lies outside its limits with a probability of at most {Banded(rule.Id, evaluation)}. Near a limit, values that conform are failed too.";

    /// <summary>The largest risk of a guard-banded rule, by its id: "risk 0.05" or "guard band 0.83".</summary>
    private static string Banded(string id, Evaluation evaluation)
    {
        var number = double.Parse(id[(id.LastIndexOf(' ') + 1)..], CultureInfo.InvariantCulture);
        return id.StartsWith("risk", StringComparison.Ordinal) ? Percent(number) : $"about {Percent(Beyond(number, evaluation))}";
    }

    /// <summary>Probability beyond a guard band of so many expanded uncertainties, each two standard ones as usual.</summary>
    private static double Beyond(double factor, Evaluation evaluation) =>
        NormalDistribution.Above(factor * Coverage.Factor(evaluation.Coverage, double.PositiveInfinity));

    private static string Percent(double share) =>
        $"{(100 * share).ToString("0.##", CultureInfo.InvariantCulture)}\u00a0%";
}
