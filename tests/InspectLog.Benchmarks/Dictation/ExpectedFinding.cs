using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>A finding as the corpus states it.</summary>
public sealed record ExpectedFinding(
    FindingKind Kind,
    string Check,
    Place? Place = null,
    double? Value = null,
    GaugeBracket? Bracket = null,
    string? Condition = null,
    bool Negated = false,
    string? Action = null)
{
    private const double Tolerance = 1e-6;

    /// <summary>Whether a list of findings says the same, in the same order.</summary>
    public static bool Same(IReadOnlyList<ExpectedFinding> expected, IReadOnlyList<Finding> found) =>
        expected.Count == found.Count && expected.Zip(found).All(pair => pair.First.Is(pair.Second));

    /// <summary>Whether a finding says the same: its words and its doubt are not compared.</summary>
    public bool Is(Finding found) =>
        Kind == found.Kind
        && Check == found.Check
        && Place == found.Place
        && Close(Value, found.Value)
        && Close(Bracket?.Goes, found.Bracket?.Goes)
        && Close(Bracket?.Stops, found.Bracket?.Stops)
        && Condition == found.Condition
        && Negated == found.Negated
        && Action == found.Action;

    private static bool Close(double? a, double? b) =>
        a is null || b is null ? a is null && b is null : Math.Abs(a.Value - b.Value) <= Tolerance * Math.Max(1, Math.Abs(a.Value));
}
