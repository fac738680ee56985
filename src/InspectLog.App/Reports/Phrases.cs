namespace InspectLog.App.Reports;

/// <summary>Puts phrases together into sentences.</summary>
internal static class Phrases
{
    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string Joined(IReadOnlyList<string> items) =>
        items.Count == 0 ? "" : items.Count == 1 ? items[0] : $"{string.Join(", ", items.SkipLast(1))} and {items[^1]}";

    /// <summary>The text with a small first letter.</summary>
    public static string Lower(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];

    /// <summary>The text with a capital first letter.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>"1 note", "2 notes".</summary>
    public static string Count(int count, string one, string? several = null) => count == 1 ? $"1 {one}" : $"{count} {several ?? one + "s"}";
}
