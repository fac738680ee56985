using System.Globalization;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Reads texts on the built-in sheet and writes the findings in one short line each.</summary>
internal static class Read
{
    public static FindingReader Reader { get; } = new(BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!);

    /// <summary>The findings as "check @place value", "check @place no condition" or "check @place action".</summary>
    public static string Line(string text, string? open = null) =>
        string.Join("; ", Reader.Read(text, open).Select(Short));

    public static Finding Single(string text, string? open = null) => Assert.Single(Reader.Read(text, open));

    public static string Short(Finding finding) => string.Join(' ', new[]
    {
        finding.Check,
        finding.Place is { } place ? $"@{place.Cylinder}" : null,
        finding.Value?.ToString("R", CultureInfo.InvariantCulture),
        finding.Bracket is { } bracket ? string.Create(CultureInfo.InvariantCulture, $"{bracket.Goes}|{bracket.Stops}") : null,
        finding.Negated ? "no" : null,
        finding.Condition,
        finding.Action,
    }.Where(part => part is not null));
}
