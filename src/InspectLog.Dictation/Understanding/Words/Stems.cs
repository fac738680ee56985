namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Brings a word into one spelling: no possessive, no plural, American "meter" and "center". Used alike on
/// what is said and on the phrases it is looked up in, so an odd stem does no harm.</summary>
internal static class Stems
{
    public static string Of(string word)
    {
        if (word.EndsWith("'s", StringComparison.Ordinal) && !Contractions.Contains(word))
        {
            word = word[..^2];
        }

        if (word.Length > 3 && word[^1] == 's' && word[^2] is not ('s' or 'u' or 'i' or '\''))
        {
            word = word[..^1];
        }

        return Spelling(word);
    }

    private static readonly HashSet<string> Contractions = new(StringComparer.Ordinal)
    {
        "it's", "that's", "there's", "she's", "he's", "here's", "what's", "where's", "who's", "how's", "let's",
        "when's", "one's",
    };

    private static string Spelling(string word) => word switch
    {
        "burned" => "burnt",
        "learned" => "learnt",
        "grey" => "gray",
        "colour" => "color",
        "alright" => "allright",
        _ when word.EndsWith("metre", StringComparison.Ordinal) => word[..^2] + "er",
        _ when word.EndsWith("centre", StringComparison.Ordinal) => word[..^2] + "er",
        _ => word,
    };
}
