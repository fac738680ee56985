using System.Text.Json;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>What is compared of a finding: everything it says, not where it was said.</summary>
internal sealed record ExpectedFinding(
    string Kind, string Check, int? Cylinder, double? Value, (double Goes, double Stops)? Bracket, string? Condition,
    bool Negated, string? Action)
{
    private const double RelativeTolerance = 5e-4; // labels are rounded where a unit was converted

    public static ExpectedFinding From(JsonElement json) => new(
        json.GetProperty("kind").GetString()!,
        json.GetProperty("check").GetString()!,
        json.TryGetProperty("place", out var place) && place.ValueKind == JsonValueKind.Object
            ? place.GetProperty("cylinder").GetInt32() : null,
        Number(json, "value"),
        json.TryGetProperty("bracket", out var bracket) && bracket.ValueKind == JsonValueKind.Object
            ? (bracket.GetProperty("goes").GetDouble(), bracket.GetProperty("stops").GetDouble()) : null,
        Text(json, "condition"),
        json.TryGetProperty("negated", out var negated) && negated.ValueKind == JsonValueKind.True,
        Text(json, "action"));

    public static ExpectedFinding From(Finding finding) => new(
        finding.Kind.ToString().ToLowerInvariant(), finding.Check, finding.Place?.Cylinder, finding.Value,
        finding.Bracket is { } bracket ? (bracket.Goes, bracket.Stops) : null,
        finding.Condition, finding.Negated, finding.Action);

    public bool Same(ExpectedFinding other) =>
        Kind == other.Kind && Check == other.Check && Cylinder == other.Cylinder && Condition == other.Condition
        && Negated == other.Negated && Action == other.Action && Close(Value, other.Value)
        && Close(Bracket?.Goes, other.Bracket?.Goes) && Close(Bracket?.Stops, other.Bracket?.Stops);

    public override string ToString() => string.Join(' ', new[]
    {
        Kind, Check, Cylinder is { } cylinder ? $"@{cylinder}" : null, Value?.ToString("R", null),
        Bracket is { } gauges ? $"{gauges.Goes}|{gauges.Stops}" : null, Negated ? "no" : null, Condition, Action,
    }.Where(part => part is not null));

    private static bool Close(double? a, double? b) =>
        a is null == b is null && Math.Abs((a ?? 0) - (b ?? 0)) <= RelativeTolerance * Math.Max(Math.Abs(a ?? 0), 1e-9);

    private static double? Number(JsonElement json, string name) =>
        json.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : null;

    private static string? Text(JsonElement json, string name) =>
        json.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
}
