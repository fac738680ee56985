using System.Collections.Frozen;
using InspectLog.Dictation.Understanding.Language;

namespace InspectLog.Dictation.Understanding.Texts;

/// <summary>Brings words into one spelling and takes plural endings off, by the rules of the language file. Used alike on
/// what is said and on the phrases it is looked up in, so an odd stem does no harm.</summary>
internal sealed class Stemmer(LanguageFile file)
{
    private readonly FrozenDictionary<string, string> _spellings = file.Spellings.ToFrozenDictionary(StringComparer.Ordinal);

    public string Spelling(string word) => _spellings.GetValueOrDefault(word, word);

    public string StemOf(string word)
    {
        foreach (var ending in file.Endings)
        {
            if (word.Length >= Math.Max(ending.Least, ending.Letters.Length + 2) && word.EndsWith(ending.Letters, StringComparison.Ordinal) && Fits(word[..^ending.Letters.Length], ending))
            {
                return Spelling(word[..^ending.Letters.Length]);
            }
        }

        return word;
    }

    private static bool Fits(string stem, Ending ending) =>
        (ending.After is null || ending.After.Any(letters => stem.EndsWith(letters, StringComparison.Ordinal)))
        && (ending.NotAfter is null || !ending.NotAfter.Any(letters => stem.EndsWith(letters, StringComparison.Ordinal)));
}
