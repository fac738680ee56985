using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>Cuts a sentence into clauses.</summary>
internal static class ClauseCuts
{
    /// <summary>The clauses between two tokens, without the marks and the words that part them.</summary>
    public static IEnumerable<(int First, int Next)> Of(IReadOnlyList<Token> tokens, int first, int next)
    {
        for (var at = first; at <= next; at++)
        {
            if (at == next || Parts(tokens[at]))
            {
                if (at > first)
                {
                    yield return (first, at);
                }

                first = at + 1;
            }
        }
    }

    private static bool Parts(Token token) =>
        token.Kind == TokenKind.Mark && token.Text[0] is ',' or ':' or ';' or '.' or '!' or '?'
        || token.Stem is "but" or "because" or "whereas" or "although" or "so";
}
