namespace InspectLog.Dictation.Understanding;

/// <summary>Puts reasons for doubt together.</summary>
internal static class Doubts
{
    public static string? Join(params string?[] doubts)
    {
        var said = doubts.Where(doubt => doubt is not null).Distinct().ToList();
        return said.Count == 0 ? null : string.Join("; ", said);
    }
}
