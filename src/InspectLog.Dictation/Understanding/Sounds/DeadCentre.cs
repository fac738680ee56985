using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>The letters of top dead centre (TDC) and of before and after it (BTDC, ATDC) where a speech model parted them
/// or wrote words for some: "3 degrees at the DC", "8 BT DC", "timing at 2DC".</summary>
internal static class DeadCentre
{
    private const int MostWords = 4;

    private static readonly string[] BesideADegree = ["btdc", "atdc", "tdc"];
    private static readonly string[] Alone = ["tdc"];

    /// <summary>The text with the letters in one word.</summary>
    public static TakenText In(TakenText text)
    {
        for (var first = 0; first < text.Tokens.Count; first++)
        {
            if (Spelt(text.Tokens, first) is var (next, word))
            {
                text = text.With(first, next, word);
            }
        }

        return text;
    }

    private static (int Next, string Word)? Spelt(IReadOnlyList<Token> tokens, int first)
    {
        var words = first > 0 && (tokens[first - 1].Kind == TokenKind.Digits || tokens[first - 1].Stem is "degree" or "deg" or "°") ? BesideADegree : Alone;
        return Array.Find(words, word => End(tokens, first, word) is not null) is { } found ? (End(tokens, first, found)!.Value, found) : null;
    }

    // The token after the letters, the last of which has to be written as letters: "the DC", never "the see".
    private static int? End(IReadOnlyList<Token> tokens, int first, string word)
    {
        var spelt = new HashSet<string>(StringComparer.Ordinal) { "" };
        for (var next = first; next < Math.Min(tokens.Count, first + MostWords); next++)
        {
            spelt = [.. spelt.SelectMany(before => Letters(tokens[next]).Select(letters => before + letters)).Where(letters => word.StartsWith(letters, StringComparison.Ordinal))];
            if (spelt.Count == 0)
            {
                return null;
            }

            if (next > first && spelt.Contains(word))
            {
                return tokens[next].Text is "dc" or "tdc" or "c" ? next + 1 : null;
            }
        }

        return null;
    }

    private static string[] Letters(Token token) => token.Text switch
    {
        "a" or "b" or "t" or "d" or "c" or "bt" or "td" or "dc" or "tdc" => [token.Text],
        "at" => ["at", "a"],
        "the" => ["t", ""],
        "tea" or "tee" or "to" or "2" => ["t"],
        "be" or "bee" => ["b"],
        "8" or "eight" => ["a"],
        "dee" => ["d"],
        _ => [],
    };
}
