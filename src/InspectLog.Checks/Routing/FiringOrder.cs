using System.Globalization;

namespace InspectLog.Checks.Routing;

/// <summary>Reads firing orders and lists of cylinders as people write them.</summary>
public static class FiringOrder
{
    internal const string WastedSpark =
        "Cylinders written in pairs fire by wasted spark: each coil serves two at once and there is no rotor, so no "
        + "lead has a turn of its own. Lead routing is for a distributor with one tower for each cylinder.";

    /// <summary>The engines that have layouts here: one tower for each cylinder.</summary>
    public static IReadOnlyList<int> CylinderCounts { get; } = [3, 4, 5, 6, 8, 12];

    private static readonly char[] Separators = ['-', '–', '−', ',', ';', ' '];

    private const string Example = "Name the cylinders in order, such as 1-5-3-6-2-4.";

    private static readonly char[] PairMarks = ['/', '+', '&', '|'];

    /// <summary>Reads a list such as <c>1-5-3-6-2-4</c>, <c>1,5,3,6,2,4</c> or <c>153624</c>.</summary>
    /// <param name="text">The list as written.</param>
    /// <returns>The cylinder numbers in the order written; whether they make sense together is for
    /// <see cref="CapLayout.Of"/> to say.</returns>
    /// <exception cref="ArgumentException">The text is no list of cylinder numbers, or writes cylinders in pairs. The
    /// message is written for the person who typed it.</exception>
    public static IReadOnlyList<int> Parse(string text)
    {
        if (text.IndexOfAny(PairMarks) >= 0)
        {
            throw new ArgumentException(WastedSpark);
        }

        var words = text.Split(Separators, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words is [var digits] && CylinderCounts.Contains(digits.Length) && digits.Length < 10)
        {
            words = [.. digits.Select(digit => digit.ToString())];
        }

        return words.Length > 0
            ? [.. words.Select(Number)]
            : throw new ArgumentException(Example);
    }

    private static int Number(string word) =>
        int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0
            ? number
            : throw new ArgumentException($"'{word}' is not a cylinder number. {Example}");
}
