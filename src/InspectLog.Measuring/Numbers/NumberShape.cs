using System.Globalization;
using System.Text.RegularExpressions;

namespace InspectLog.Measuring;

/// <summary>A typed number taken apart: sign, digits with their marks, exponent, and the text after it.</summary>
internal sealed partial class NumberShape
{
    private readonly string _exponent;

    private NumberShape(Match match)
    {
        Negative = match.Groups["sign"].Value == "-";
        LetterMark = match.Groups["letter"].Success;
        Run = LetterMark
            ? match.Groups["whole"].Value.PadLeft(1, '0') + "." + match.Groups["fraction"].Value
            : match.Groups["run"].Value.TrimEnd(' ', '\'');
        UnitText = LetterMark
            ? match.Groups["letter"].Value + match.Groups["tail"].Value
            : match.Groups["unit"].Value.Trim();
        _exponent = match.Groups["exponent"].Value;
    }

    /// <summary>The digits with their points, commas and grouping marks.</summary>
    internal string Run { get; }

    /// <summary>What follows the number; empty for nothing.</summary>
    internal string UnitText { get; }

    internal bool Negative { get; }

    /// <summary>Whether the unit's letter stood where the decimal mark goes: 9k4.</summary>
    internal bool LetterMark { get; }

    /// <summary>Whether any digit is other than 0.</summary>
    internal bool HasValue => Run.AsSpan().IndexOfAnyInRange('1', '9') >= 0;

    /// <summary>Takes a text apart; null where it does not start with a number.</summary>
    internal static NumberShape? Of(string plain)
    {
        var match = Pattern().Match(plain);
        return match.Success ? new NumberShape(match) : null;
    }

    /// <summary>The meanings of the digits, likeliest first: see <see cref="Digits.Meanings"/>.</summary>
    internal IReadOnlyList<string> Meanings() => LetterMark ? [Run] : Digits.Meanings(Run);

    /// <summary>The value one meaning of the digits has in one unit. Adding 0 turns a −0 into 0.</summary>
    internal TypedNumber.Certain Value(string digits, UnitMeaning unit)
    {
        var size = double.Parse(
            digits + _exponent,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture);
        return new(unit.Unit.ToBase((Negative ? -size : size) * unit.Sign) + 0, unit.Unit);
    }

    // The first form is that of component markings (IEC 60062): 9k4, 4R7, R47.
    [GeneratedRegex(
        """
        ^(?<sign>[-+]?)\s*(?:
          (?<whole>[0-9]*)(?<letter>[RrKkMmVv])(?<fraction>[0-9]+)\s*(?<tail>[A-Za-zΩ]*)
        | (?<run>(?:[0-9][0-9.,'\ ]*|[.,][0-9]+))(?<exponent>[eE][-+]?[0-9]{1,4})?(?<unit>.*)
        )$
        """,
        RegexOptions.IgnorePatternWhitespace | RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
