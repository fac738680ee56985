namespace InspectLog.Dictation.Understanding;

/// <summary>What a finding says, wherever it was said.</summary>
internal sealed record FindingContent(
    FindingKind Kind, string Check, Place? Place, double? Value, GaugeBracket? Bracket, string? Condition, bool Negated, string? Action)
{
    public static FindingContent Of(Finding finding) => new(
        finding.Kind, finding.Check, finding.Place, finding.Value, finding.Bracket, finding.Condition, finding.Negated, finding.Action);
}
