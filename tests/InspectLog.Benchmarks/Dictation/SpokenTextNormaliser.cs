using System.Globalization;
using System.Text.RegularExpressions;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Brings what was said and what was written to one form before words are compared.</summary>
/// <remarks>
/// In this order: lower case; bracketed remarks out; "mr" and "mrs" spelled out; thousands separators out; a unit
/// letter parted from its number ("9.4k", "12.4v"); everything but letters, digits and decimal points becomes a space;
/// number words become digits ("nine point four", "twelve thousand three hundred", "a hundred and twenty", "oh point
/// six"); units and spellings with several common forms take one ("kΩ", "kilohms", "k ohms"; "millimeters"; "center").
/// It follows the idea of the English normaliser published with Whisper, whose word errors it should resemble; it is
/// written anew, and shares nothing with the program's own reading of numbers.
/// </remarks>
public static partial class SpokenTextNormaliser
{
    private static readonly Dictionary<string, string[]> OneForm = new(StringComparer.Ordinal)
    {
        ["mr"] = ["mister"], ["mrs"] = ["missus"], ["ok"] = ["okay"],
        ["kω"] = ["k", "ohms"], ["kohm"] = ["k", "ohms"], ["kohms"] = ["k", "ohms"], ["kilohm"] = ["k", "ohms"],
        ["kilohms"] = ["k", "ohms"], ["kiloohm"] = ["k", "ohms"], ["kiloohms"] = ["k", "ohms"], ["kilo"] = ["k"],
        ["ω"] = ["ohms"], ["ohm"] = ["ohms"], ["v"] = ["volts"], ["volt"] = ["volts"],
        ["mm"] = ["millimetres"], ["millimeter"] = ["millimetres"], ["millimeters"] = ["millimetres"], ["millimetre"] = ["millimetres"],
        ["degree"] = ["degrees"], ["center"] = ["centre"], ["color"] = ["colour"],
    };

    /// <summary>The normalised words of a text.</summary>
    public static IReadOnlyList<string> Words(string text)
    {
        var plain = Remarks().Replace(text.ToLowerInvariant(), " ");
        plain = Thousands().Replace(plain, "$1$2");
        plain = plain.Replace("°", " degrees ", StringComparison.Ordinal);
        plain = NumberThenLetter().Replace(plain, "$1 $2");
        plain = Apostrophes().Replace(plain, string.Empty);
        plain = NotAWord().Replace(plain, " ");
        var words = plain.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(InOneForm);
        return [.. NumberWords.ToDigits([.. words])];
    }

    private static IEnumerable<string> InOneForm(string word)
    {
        if (OneForm.TryGetValue(word, out var form))
            return form;
        return decimal.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? [number.ToString("0.#########", CultureInfo.InvariantCulture)]
            : [word];
    }

    [GeneratedRegex(@"\[[^\]]*\]|\([^)]*\)")]
    private static partial Regex Remarks();

    [GeneratedRegex(@"(\d),(\d{3})(?!\d)")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"(\d)(\p{L})")]
    private static partial Regex NumberThenLetter();

    [GeneratedRegex(@"['’]")]
    private static partial Regex Apostrophes();

    /// <summary>Everything but letters, digits, and points with a digit after them.</summary>
    [GeneratedRegex(@"[^\p{L}\d.]|\.(?!\d)")]
    private static partial Regex NotAWord();
}
