using System.Globalization;

namespace InspectLog.Checks;

/// <summary>Numbers listed in a sentence.</summary>
public static class ListedNumbers
{
    /// <summary>"6", "4 or 6", "3, 4 or 6".</summary>
    public static string OneOf(IReadOnlyList<int> numbers) => Joined(numbers, "or");

    /// <summary>"6", "4 and 6", "3, 4 and 6".</summary>
    public static string AllOf(IReadOnlyList<int> numbers) => Joined(numbers, "and");

    private static string Joined(IReadOnlyList<int> numbers, string last)
    {
        var texts = numbers.Select(number => number.ToString(CultureInfo.InvariantCulture)).ToList();
        return texts.Count < 2 ? string.Concat(texts) : $"{string.Join(", ", texts[..^1])} {last} {texts[^1]}";
    }
}
