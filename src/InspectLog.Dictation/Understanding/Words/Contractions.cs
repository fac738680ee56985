namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Takes short forms apart, so that "wasn't seated" meets the phrase "not seated".</summary>
internal static class Contractions
{
    private static readonly string[] Endings = ["'s", "'ll", "'ve", "'re", "'m", "'d"];

    // A speech model leaves the apostrophe out at times.
    private static readonly HashSet<string> WithoutApostrophe = new(
        "isnt|wasnt|arent|werent|doesnt|dont|didnt|hasnt|havent|hadnt|wouldnt|couldnt|shouldnt|aint".Split('|'), StringComparer.Ordinal);

    /// <summary>The two words of a short form and where the second begins; null for a word that is none.</summary>
    public static (string Stem, string Ending, int At)? Parts(string word)
    {
        if (WithoutApostrophe.Contains(word))
        {
            return (Full(word[..^2]), "not", word.Length - 2);
        }

        if (word.EndsWith("n't", StringComparison.Ordinal) && word.Length > 3)
        {
            return (Full(word[..^3]), "not", word.Length - 3);
        }

        var ending = Array.Find(Endings, ending => word.Length > ending.Length && word.EndsWith(ending, StringComparison.Ordinal));
        return ending is null ? null : (word[..^ending.Length], ending, word.Length - ending.Length);
    }

    private static string Full(string stem) => stem switch
    {
        "wo" => "will",
        "ca" => "can",
        "sha" => "shall",
        "ai" => "is",
        _ => stem,
    };
}
