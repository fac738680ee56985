namespace InspectLog.Dictation.Understanding.Doubting;

/// <summary>Puts reasons for doubt together.</summary>
internal static class Doubts
{
    private const string NoNumbers = "no numbers were said: taken as all";
    private const string NotNamed = " was named";
    private const string Unfit = " does not fit ";
    private const string Either = "this may be ";

    /// <summary>Why a finding of every cylinder is in doubt where none was named.</summary>
    public static string TakenAsAll(int cylinders) => $"{NoNumbers} {cylinders}";

    /// <summary>Why a number is in doubt that only the open check makes a value of.</summary>
    public const string BareNumber = "only a number was said, among other words";

    /// <summary>Why a finding is in doubt whose cylinder or check was not named.</summary>
    public static string Unnamed(string what) => $"no {what}{NotNamed}";

    /// <summary>Why a value is in doubt whose unit measures something else.</summary>
    public static string WrongUnit(string unit, string check, string right) => $"{unit}{Unfit}{check}, which is measured in {right}";

    /// <summary>Why a value is in doubt that may be of two checks.</summary>
    public static string OneOf(string check, string other) => $"{Either}{check} or {other}";

    /// <summary>Whether a doubt says that it is open of what cylinder, of what check or in what unit something was found.</summary>
    public static bool IsVague(string doubt) => doubt.Contains(NotNamed, StringComparison.Ordinal)
        || doubt.Contains(NoNumbers, StringComparison.Ordinal) || doubt.Contains(Unfit, StringComparison.Ordinal);

    /// <summary>Whether a doubt says that another check may be meant.</summary>
    public static bool IsOneOf(string doubt) => doubt.Contains(Either, StringComparison.Ordinal);

    /// <summary>Whether nothing else is in doubt.</summary>
    public static bool IsTakenAsAll(string doubt) => doubt.StartsWith(NoNumbers, StringComparison.Ordinal) && !doubt.Contains(';', StringComparison.Ordinal);

    public static string? Join(params string?[] doubts)
    {
        var said = doubts.Where(doubt => doubt is not null).Distinct().ToList();
        return said.Count == 0 ? null : string.Join("; ", said);
    }
}
