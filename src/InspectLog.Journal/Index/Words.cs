using System.Globalization;
using System.Text;

namespace InspectLog.Journal.Index;

/// <summary>Text cut into words that compare equal whatever their case and accents, and whatever mark parts the decimals
/// of a number.</summary>
internal static class Words
{
    private const int Longest = 60; // an index key has at most 1023 bytes

    // Letters that Unicode does not take apart into a base letter and a mark.
    private static readonly Dictionary<char, string> Spellings = new()
    {
        ['ß'] = "ss", ['æ'] = "ae", ['œ'] = "oe", ['ø'] = "o", ['đ'] = "d", ['ð'] = "d", ['ł'] = "l", ['þ'] = "th",
        ['ı'] = "i",
    };

    /// <summary>The words of a text, folded, in order: runs of letters and digits, of which a number at the beginning is
    /// a word of its own ("9.4k" is two), and decimal numbers with a point.</summary>
    public static IReadOnlyList<string> Of(string text)
    {
        var folded = Fold(text);
        return [.. WordRuns.Of(folded).Select(run => Spelled(folded[run.Start..run.End]))];
    }

    /// <summary>Whether a word that is looked for finds a word that is held: the same, or the beginning of it. A whole
    /// number finds itself and the values between it and the next, and no other number.</summary>
    public static bool Finds(string wanted, string held) =>
        held.StartsWith(wanted, StringComparison.Ordinal)
        && (held.Length == wanted.Length || held[wanted.Length] == '.' || !wanted.All(char.IsAsciiDigit));

    private static string Spelled(string word) => word[..Math.Min(word.Length, Longest)].Replace(',', '.');

    /// <summary>Takes case, accents and other spellings of the same letters away.</summary>
    private static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var c in text.Normalize(NormalizationForm.FormKD).ToLowerInvariant())
        {
            if (Spellings.TryGetValue(c, out var spelling))
            {
                folded.Append(spelling);
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)
            {
                folded.Append(c);
            }
        }

        return folded.ToString();
    }
}
