using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Small words that a speech model takes for others that sound alike, where only one of the two can stand: "no the gap
/// is 0.35" for "now", "boot plug 2 back in" for "put".</summary>
internal sealed class SoundAlikes(Lexicon lexicon)
{
    private static readonly HashSet<string> AfterNow = new("the|it|it's|its|at|reads|set".Split('|'), StringComparer.Ordinal);

    /// <summary>The text with such words taken for those that can stand.</summary>
    public TakenText In(TakenText text)
    {
        for (var at = 0; at + 1 < text.Tokens.Count; at++)
        {
            var word = IsNow(text.Tokens, at) ? "now" : IsPut(text.Tokens, at) ? "put" : IsRead(text.Tokens, at) ? "read" : IsAll(text.Tokens, at) ? "all" : null;
            text = word is null ? text : text.With(at, at + 1, word);
        }

        return text;
    }

    // "No the gap is": nobody says no to a thing with an article.
    private static bool IsNow(IReadOnlyList<Token> tokens, int at) =>
        tokens[at].IsWord("no") && at > 0 && tokens[at - 1].Kind == TokenKind.Mark && AfterNow.Contains(tokens[at + 1].Text);

    // "A leads reconnected".
    private bool IsAll(IReadOnlyList<Token> tokens, int at) =>
        tokens[at].Text == "a" && tokens[at + 1].Plural && lexicon.IsPlaceNoun(tokens[at + 1].Stem) && (at == 0 || tokens[at - 1].Kind == TokenKind.Mark);

    // "Timing red 12".
    private bool IsRead(IReadOnlyList<Token> tokens, int at) =>
        tokens[at].IsWord("red") && at > 0 && lexicon.IsSubjectWord(tokens[at - 1].Stem) && tokens[at + 1].Kind == TokenKind.Digits;

    // "Boot plug 2 back in": a boot has no plug.
    private bool IsPut(IReadOnlyList<Token> tokens, int at)
    {
        if (tokens[at].Text is not ("boot" or "but" or "foot") || at > 0 && tokens[at - 1].Kind != TokenKind.Mark
            || !(tokens[at + 1].Text is "the" or "a" or "it" or "new" || lexicon.IsSubjectWord(tokens[at + 1].Stem)))
        {
            return false;
        }

        var clause = tokens.Skip(at + 1).TakeWhile(token => token.Kind != TokenKind.Mark).ToList();
        return clause.Exists(token => token.Text == "back")
            && !clause.Exists(token => token.Stem is "is" or "are" or "was" or "'s" or "were" or "went" or "put" or "clipped" or "pushed");
    }
}
