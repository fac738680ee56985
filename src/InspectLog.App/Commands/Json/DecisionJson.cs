using System.Text.Json.Serialization;
using InspectLog.Measuring;

namespace InspectLog.App.Commands.Json;

/// <summary>What <c>decide --json</c> writes. All values are in the unit given on the command line; probabilities and
/// risks are from 0 to 1.</summary>
/// <param name="DegreesOfFreedom">Effective degrees of freedom; null where they are infinite.</param>
/// <param name="ConsumersRisk">Probability that an accepted value is outside the limits; null for a rejected one.</param>
/// <param name="ProducersRisk">Probability that a rejected value is within the limits; null for an accepted one.</param>
/// <param name="Rule">Short name of the rule.</param>
/// <param name="AcceptanceZone">The values the rule passes; null where the uncertainty is too large for any.</param>
/// <param name="CapabilityIndex">C_m = T/(4u) (JCGM 106:2012, 7.5); null for a single limit.</param>
/// <param name="Evaluation">How the expanded uncertainty was found: distribution or classical.</param>
/// <param name="Coverage">The share of the distribution within ±U, 0 to 1.</param>
/// <param name="ScatterUnknown">Whether there is one reading only, and nothing says how far a second would lie from it.
/// </param>
/// <param name="LimitSource">With <c>--sheet</c>, where its limits count: where they come from.</param>
/// <param name="OverParts">With <c>--parts-mean</c>: share of all parts that are accepted though outside (consumers), and
/// rejected though within (producers).</param>
/// <param name="Budget">With <c>--budget</c>: the contributions, largest first.</param>
/// <param name="Advice">With <c>--budget</c>: what would make the answer clear.</param>
internal sealed record DecisionJson(
    double Value,
    double StandardUncertainty,
    double ExpandedUncertainty,
    double CoverageFactor,
    double ProbabilityOfConformity,
    string Decision,
    double? DegreesOfFreedom,
    double? ConsumersRisk,
    double? ProducersRisk,
    string Rule,
    AcceptanceZone? AcceptanceZone,
    double? CapabilityIndex,
    string Evaluation,
    double Coverage,
    bool ScatterUnknown,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? LimitSource,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? SerialNumber,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] bool? Overdue,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] GlobalRisk? OverParts,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<BudgetLineJson>? Budget,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] AdviceJson? Advice)
{
    public static DecisionJson From(Decided decided, bool withBudget)
    {
        var (estimate, conformity) = (decided.Given.Estimate, decided.Conformity);
        return new(
            conformity.Value,
            conformity.StandardUncertainty,
            conformity.ExpandedUncertainty,
            conformity.CoverageFactor,
            conformity.ProbabilityOfConformity,
            conformity.Decision.Words(),
            JsonLines.Finite(estimate.DegreesOfFreedom),
            decided.IsAccepted ? estimate.ShareOutside(decided.Limits) : null,
            conformity.ProducersRisk(),
            decided.Rule.Id,
            decided.Rule.AcceptanceZone(estimate, decided.Limits),
            estimate.CapabilityIndex(decided.Limits) is { } index ? JsonLines.Finite(index) : null,
            estimate.Evaluation.Method == EvaluationMethod.Classical ? "classical" : "distribution",
            estimate.Evaluation.Coverage,
            estimate.ScatterUnknown,
            decided.LimitSource,
            decided.Papers.SerialNumber,
            decided.Papers.IsOverdue,
            decided.OverParts,
            withBudget ? [.. decided.Budget.Select(BudgetLineJson.From)] : null,
            withBudget ? AdviceJson.From(decided.Advice) : null);
    }
}

/// <summary>One line of the budget.</summary>
/// <param name="Name">What contributes.</param>
/// <param name="Evaluation">A from repeats, B from what is known (JCGM 100:2008, 4.2 and 4.3).</param>
/// <param name="InputUncertainty">Standard uncertainty of the quantity itself; in °C for a winding's temperature.</param>
/// <param name="Sensitivity">How far the value moves for each unit of the quantity.</param>
/// <param name="StandardUncertainty">The contribution: size of the sensitivity times the input's uncertainty.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom; null where they are infinite.</param>
/// <param name="Share">Share of the combined variance, 0 to 1.</param>
/// <param name="ExpandedWithout">What the expanded uncertainty would come down to without it.</param>
/// <param name="Shape">How likely the values within it are: even, triangular, normal or student.</param>
/// <param name="Divisor">What its half-width was divided by; null where it was found as a standard uncertainty.</param>
internal sealed record BudgetLineJson(
    string Name,
    string Evaluation,
    double InputUncertainty,
    double Sensitivity,
    double StandardUncertainty,
    double? DegreesOfFreedom,
    double Share,
    double ExpandedWithout,
    string? Shape,
    double? Divisor)
{
    public static BudgetLineJson From(BudgetLine line) => new(
        line.Contribution.Name,
        line.IsTypeA ? "A" : "B",
        line.InputUncertainty,
        line.Sensitivity,
        line.Contribution.StandardUncertainty,
        JsonLines.Finite(line.Contribution.DegreesOfFreedom),
        line.Share,
        line.ExpandedWithout,
        line.Contribution.Shape?.ToString().ToLowerInvariant(),
        line.Contribution.Divisor());
}

/// <summary>What would make a doubtful answer clear, by the non-binary rule.</summary>
/// <param name="UncertaintyNeeded">The largest expanded uncertainty that would do; 0 for a value on its limit.</param>
/// <param name="ReadingsNeeded">How many readings in all would do; null where no sensible number does.</param>
/// <param name="AccuracyNeeded">The instrument accuracy, ±, that would do; null where none does.</param>
/// <param name="Improvements">What can be done, best first.</param>
internal sealed record AdviceJson(
    double UncertaintyNeeded, int? ReadingsNeeded, double? AccuracyNeeded, IReadOnlyList<ImprovementJson> Improvements)
{
    public static AdviceJson From(Advice advice) => new(
        advice.UncertaintyNeeded,
        advice.ReadingsNeeded,
        advice.AccuracyNeeded,
        [.. advice.Improvements.Select(one => new ImprovementJson(one.Action, one.ExpandedUncertainty, one.Settles(advice)))]);
}

/// <summary>Something that can be done.</summary>
/// <param name="Action">What to do.</param>
/// <param name="ExpandedUncertainty">What the expanded uncertainty would come down to.</param>
/// <param name="Settles">Whether the answer would then be clear, if the value stays where it is.</param>
internal sealed record ImprovementJson(string Action, double ExpandedUncertainty, bool Settles);
