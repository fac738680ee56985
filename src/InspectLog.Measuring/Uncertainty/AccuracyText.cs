using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace InspectLog.Measuring;

/// <summary>Reads and writes <see cref="Accuracy"/> as text.</summary>
internal static partial class AccuracyText
{
    private const string Example = "Write percent of the reading and counts, such as 0.8% + 3.";

    private const int LongestText = 60;

    internal static bool TryRead(
        string? text, [NotNullWhen(true)] out Accuracy? accuracy, [NotNullWhen(false)] out string? problem)
    {
        accuracy = null;
        if (string.IsNullOrWhiteSpace(text))
        {
            problem = $"The accuracy is missing. {Example}";
            return false;
        }

        if (text.Length > LongestText)
        {
            problem = $"That is too long for an accuracy. {Example}";
            return false;
        }

        var match = Shape().Match(text);
        var percent = match.Groups["percent"];
        var counts = match.Groups["counts"];
        problem = BareNumber().IsMatch(text) ? $"It is not clear whether this is percent or counts. {Example}"
            : Negative().IsMatch(text) ? $"An accuracy cannot be negative. {Example}"
            : !match.Success || !(percent.Success || counts.Success) ? $"This is not an accuracy. {Example}"
            : null;
        if (problem is not null)
        {
            return false;
        }

        var p = percent.Success ? Number(percent.Value) : 0;
        var n = counts.Success ? Number(counts.Value) : 0;
        problem = p > 100 ? "An accuracy of more than 100 % of the reading cannot be right."
            : n > 1_000_000 ? "An accuracy of more than a million counts cannot be right."
            : null;
        accuracy = problem is null ? new Accuracy(p, n) : null;
        return accuracy is not null;
    }

    internal static string Write(Accuracy accuracy) => string.Create(
        CultureInfo.InvariantCulture, $"±({accuracy.PercentOfReading} % + {accuracy.Counts})");

    private static double Number(string text) =>
        double.Parse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    // A comma followed by exactly three digits is left out: it could be a thousands mark.
    [GeneratedRegex(
        """
        ^\s*(?:±|\+\s*/?\s*[-−])?\s*(?<open>\()?\s*
        (?:(?<percent>[0-9]+(?:\.[0-9]+|,[0-9]{1,2})?|\.[0-9]+)\s*%\s*(?:of\ )?(?:the\ )?(?:reading|rdg|rd)?\.?\s*)?
        (?:\+\s*(?<counts>[0-9]+(?:\.[0-9]+|,[0-9]{1,2})?|\.[0-9]+)\s*(?:counts?|digits?|dgts?|d|lsd)?\.?\s*)?
        (?(open)\))\s*$
        """,
        RegexOptions.IgnorePatternWhitespace | RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    [GeneratedRegex(@"^\s*[0-9.,]+\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex BareNumber();

    [GeneratedRegex(@"(?:^|\+)\s*[-−]\s*[0-9.]", RegexOptions.CultureInvariant)]
    private static partial Regex Negative();
}
