using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Findings in one line, for a person to compare.</summary>
internal static class FindingText
{
    public static string Of(IReadOnlyList<Finding> findings) =>
        findings.Count == 0 ? "nothing" : string.Join("; ", findings.Select(Of));

    private static string Of(Finding finding)
    {
        var place = finding.Place is { } cylinder ? $" {cylinder.Cylinder}" : string.Empty;
        var said = finding.Kind switch
        {
            FindingKind.Reading when finding.Bracket is { } bracket => $"between {bracket.Goes} and {bracket.Stops} {finding.Unit}",
            FindingKind.Reading => $"{finding.Value} {finding.Unit}",
            FindingKind.Observation => (finding.Negated ? "not " : string.Empty) + finding.Condition,
            _ => finding.Action,
        };
        return $"{finding.Check}{place}: {said}{(finding.Doubt is null ? string.Empty : " (doubtful)")}";
    }
}
