using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Names that lost their first s to the verb before them, which ends with one: "has park" for "has spark".</summary>
internal sealed class SharedSounds(Lexicon lexicon)
{
    private static readonly HashSet<string> Verbs = new("has|is|was|gives|gets|shows|makes|'s".Split('|'), StringComparer.Ordinal);

    /// <summary>The text with such words taken for the names.</summary>
    public TakenText In(TakenText text)
    {
        for (var at = 1; at < text.Tokens.Count; at++)
        {
            var (before, token) = (text.Tokens[at - 1], text.Tokens[at]);
            if (token.Kind == TokenKind.Word && Verbs.Contains(before.Text)
                && !lexicon.IsSubjectWord(token.Stem) && lexicon.IsSubjectWord("s" + token.Stem))
            {
                text = text.With(at, at + 1, "s" + token.Text);
            }
        }

        return text;
    }
}
