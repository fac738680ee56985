namespace InspectLog.Dictation.Understanding;

/// <summary>Puts reasons for doubt together.</summary>
internal static class Doubts
{
    private const string NoNumbers = "no numbers were said: taken as all";

    /// <summary>Why a finding of every cylinder is in doubt where none was named.</summary>
    public static string TakenAsAll(int cylinders) => $"{NoNumbers} {cylinders}";

    /// <summary>Whether nothing else is in doubt.</summary>
    public static bool IsTakenAsAll(string doubt) => doubt.StartsWith(NoNumbers, StringComparison.Ordinal) && !doubt.Contains(';', StringComparison.Ordinal);

    public static string? Join(params string?[] doubts)
    {
        var said = doubts.Where(doubt => doubt is not null).Distinct().ToList();
        return said.Count == 0 ? null : string.Join("; ", said);
    }
}
