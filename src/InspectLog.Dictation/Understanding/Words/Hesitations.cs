namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Takes out the sounds people make while they think, which a speech model may write down in the middle of
/// anything: "twelve point er, four".</summary>
internal static class Hesitations
{
    /// <summary>The tokens without hesitations, and without the comma after each.</summary>
    public static IReadOnlyList<Token> Drop(IReadOnlyList<Token> tokens)
    {
        var kept = new List<Token>(tokens.Count);
        for (var at = 0; at < tokens.Count; at++)
        {
            if (!IsHesitation(tokens[at]))
            {
                kept.Add(tokens[at]);
            }
            else if (at + 1 < tokens.Count && tokens[at + 1].IsMark(','))
            {
                at++;
            }
        }

        return kept;
    }

    private static bool IsHesitation(Token token) =>
        token.Kind == TokenKind.Word && token.Text is "um" or "umm" or "uh" or "er" or "erm" or "uhm" or "hm" or "hmm";
}
