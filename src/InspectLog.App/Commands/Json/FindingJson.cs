using InspectLog.Inspecting.Words;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Doubts;

namespace InspectLog.App.Commands.Json;

/// <summary>A finding as <c>understand</c> and <c>transcribe</c> write it; members as in <see cref="Finding"/>.</summary>
/// <param name="Kind">What sort of finding.</param>
/// <param name="Check">Id of the check.</param>
/// <param name="Place">The cylinder.</param>
/// <param name="Value">Value of a reading, base unit.</param>
/// <param name="Unit">Symbol of the base unit.</param>
/// <param name="Bracket">Bracket of a reading taken with gauges.</param>
/// <param name="Condition">Condition of an observation.</param>
/// <param name="Negated">Whether it was said to be absent.</param>
/// <param name="Action">What was done.</param>
/// <param name="Words">The words it came from.</param>
/// <param name="Start">Where they start.</param>
/// <param name="End">Where they end.</param>
/// <param name="Doubts">Why to look twice, each with its kind and arguments; empty without doubt.</param>
/// <param name="Doubt">The same in words; null without doubt.</param>
internal sealed record FindingJson(
    FindingKind Kind,
    string Check,
    Place? Place,
    double? Value,
    string? Unit,
    GaugeBracket? Bracket,
    string? Condition,
    bool Negated,
    string? Action,
    string Words,
    int Start,
    int End,
    IReadOnlyList<Doubt> Doubts,
    string? Doubt)
{
    public static FindingJson From(Finding finding, CheckSheet sheet) => new(
        finding.Kind,
        finding.Check,
        finding.Place,
        finding.Value,
        finding.Unit,
        finding.Bracket,
        finding.Condition,
        finding.Negated,
        finding.Action,
        finding.Words,
        finding.Start,
        finding.End,
        [.. finding.Doubts],
        DoubtWords.Of(finding.Doubts, sheet));
}
