using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace InspectLog.Measuring;

/// <summary>Reads and writes <see cref="Accuracy"/> as text.</summary>
internal static partial class AccuracyText
{
    private const string Example = "Write it as the data sheet does, such as 0.8% + 3, or 0.5% of reading + 0.1% of range + 2.";

    private const int LongestText = 100;

    internal static bool TryRead(
        string? text,
        QuantityKind? kind,
        [NotNullWhen(true)] out Accuracy? accuracy,
        [NotNullWhen(false)] out string? problem)
    {
        accuracy = null;
        problem = string.IsNullOrWhiteSpace(text) ? $"The accuracy is missing. {Example}"
            : text.Length > LongestText ? $"That is too long for an accuracy. {Example}"
            : BareNumber().IsMatch(text) ? $"It is not clear whether this is percent or counts. {Example}"
            : Negative().IsMatch(text) ? $"An accuracy cannot be negative. {Example}"
            : null;
        if (problem is not null)
        {
            return false;
        }

        problem = AccuracyTerms.Read(Terms(text!), kind, out accuracy) ?? TooLarge(accuracy!);
        accuracy = problem is null ? accuracy : null;
        return accuracy is not null;
    }

    internal static string Write(Accuracy accuracy, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var range = accuracy.PercentOfRange is { } percent ? $" + {Plain(percent)} % of range" : "";
        var fixedSize = accuracy.Fixed is { } size ? $" + {Plain(unit.DifferenceFromBase(size))} {unit.Symbol}" : "";
        return $"±({Plain(accuracy.PercentOfReading)} %{range} + {Plain(accuracy.Counts)}{fixedSize})";
    }

    internal static string NotOne(string? why = null) => $"This is not an accuracy{why}. {Example}";

    /// <summary>The terms of the sum, without the sign and brackets about all of it.</summary>
    private static string[] Terms(string text)
    {
        var inner = Around().Match(text);
        var sum = inner.Groups["terms"].Value.TrimStart();
        return !inner.Success ? [text] : (sum.StartsWith('+') ? sum[1..] : sum).Split('+');
    }

    private static string? TooLarge(Accuracy accuracy) =>
        Math.Max(accuracy.PercentOfReading, accuracy.PercentOfRange.GetValueOrDefault()) > 100
            ? "An accuracy of more than 100 % cannot be right."
            : accuracy.Counts > 1_000_000 ? "An accuracy of more than a million counts cannot be right."
            : !Workable.Is(accuracy.Fixed.GetValueOrDefault()) ? Workable.Problem
            : null;

    // Without an exponent, which no data sheet has; decimal keeps the 15 digits that a person can have typed.
    private static string Plain(double number) => number is > 1e-12 and < 1e15
        ? ((decimal)number).ToString("0.############################", CultureInfo.InvariantCulture)
        : number.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^\s*(?:±|\+\s*/?\s*[-−])?\s*(?:(?<open>\()\s*)?(?<terms>[^()]*?)\s*(?(open)\))\s*$",
        RegexOptions.CultureInvariant)]
    private static partial Regex Around();

    [GeneratedRegex(@"^\s*[0-9.,]+\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex BareNumber();

    [GeneratedRegex(@"(?:^|\+|\()\s*[-−]\s*[0-9.]", RegexOptions.CultureInvariant)]
    private static partial Regex Negative();
}
