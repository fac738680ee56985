using InspectLog.Dictation.Understanding;
using InspectLog.Journal.Entries;

namespace InspectLog.Inspecting.Proposals;

/// <summary>Writes what the dictation room found in the journal room's words.</summary>
public static class ProposedFindings
{
    /// <summary>The journal's entry for a finding.</summary>
    public static ProposedFinding From(Finding finding) => new(
        finding.Kind switch
        {
            FindingKind.Reading => "reading",
            FindingKind.Observation => "observation",
            _ => "action",
        },
        finding.Check,
        finding.Place?.Cylinder,
        finding.Value,
        finding.Bracket?.Goes,
        finding.Bracket?.Stops,
        finding.Condition,
        finding.Negated,
        finding.Action,
        finding.Words,
        finding.Start,
        finding.End,
        [.. finding.Doubts]);
}
