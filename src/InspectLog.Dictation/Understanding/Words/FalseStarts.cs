using InspectLog.Dictation.Understanding.Numbers;

namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Takes out numbers that were broken off at the point and begun again: "twelve point, twelve point two".</summary>
internal static class FalseStarts
{
    /// <summary>The tokens without such beginnings, and without the comma after each.</summary>
    public static IReadOnlyList<Token> Drop(IReadOnlyList<Token> tokens)
    {
        List<Token>? kept = null;
        for (var at = 0; at < tokens.Count; at++)
        {
            kept?.Add(tokens[at]);
            if (IsBrokenOff(tokens, at))
            {
                kept ??= [.. tokens.Take(at + 1)];
                kept.RemoveAt(kept.Count - 1);
                while (kept.Count > 0 && IsNumber(kept[^1]))
                {
                    kept.RemoveAt(kept.Count - 1);
                }

                at++;
            }
        }

        return kept ?? tokens;
    }

    // A number goes on after the comma: "eight point, nine point eight k", "eight point, yeah, eight point two".
    private static bool IsBrokenOff(IReadOnlyList<Token> tokens, int at)
    {
        if (at == 0 || tokens[at].Kind != TokenKind.Word || tokens[at].Text != "point" || !IsNumber(tokens[at - 1]) || at + 2 >= tokens.Count || !tokens[at + 1].IsMark(','))
        {
            return false;
        }

        var next = tokens[at + 2].Kind == TokenKind.Word && tokens[at + 2].Text is "yeah" or "yes" or "yep" or "no" or "sorry" or "right" or "okay" ? at + 3 : at + 2;
        next += next < tokens.Count && next > at + 2 && tokens[next].IsMark(',') ? 1 : 0;
        return next < tokens.Count && IsNumber(tokens[next]);
    }

    private static bool IsNumber(Token token) => token.Kind == TokenKind.Digits
        || token.Kind == TokenKind.Word && (NumberWords.Unit(token.Stem) ?? NumberWords.Teen(token.Stem) ?? NumberWords.Tens(token.Stem)) is not null;
}
