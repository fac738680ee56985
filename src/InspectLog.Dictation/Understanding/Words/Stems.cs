namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Brings a word into one form: no plural, American "meter" and "center". Used alike on what is said and on
/// the phrases it is looked up in, so an odd stem does no harm.</summary>
internal static class Stems
{
    public static string Of(string word)
    {
        if (word.Length > 4 && word.EndsWith("es", StringComparison.Ordinal) && Hisses(word[..^2]))
        {
            word = word[..^2];
        }
        else if (word.Length > 3 && word[^1] == 's' && word[^2] is not ('s' or 'u' or 'i' or '\''))
        {
            word = word[..^1];
        }

        return Spelling(word);
    }

    private static bool Hisses(string word) =>
        word.EndsWith("sh", StringComparison.Ordinal) || word.EndsWith("ch", StringComparison.Ordinal)
        || word.EndsWith("ss", StringComparison.Ordinal) || word[^1] == 'x';

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
