using System.Globalization;
using System.Text;

namespace InspectLog.Journal.Index;

/// <summary>Text cut into words that compare equal whatever their case and accents.</summary>
internal static class Words
{
    private const int Longest = 60; // an index key has at most 1023 bytes

    // Letters that Unicode does not take apart into a base letter and a mark.
    private static readonly Dictionary<char, string> Spellings = new()
    {
        ['ß'] = "ss", ['æ'] = "ae", ['œ'] = "oe", ['ø'] = "o", ['đ'] = "d", ['ð'] = "d", ['ł'] = "l", ['þ'] = "th",
        ['ı'] = "i",
    };

    /// <summary>The words of a text: runs of letters and digits, folded, in order.</summary>
    public static IReadOnlyList<string> Of(string text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        foreach (var c in Fold(text) + " ")
        {
            if (char.IsLetterOrDigit(c))
            {
                word.Append(c);
            }
            else if (word.Length > 0)
            {
                words.Add(word.ToString(0, Math.Min(word.Length, Longest)));
                word.Clear();
            }
        }

        return words;
    }

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
