using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Words that mean nothing where what was done is due, taken for the action that sounds nearest: "all plugs redap to
/// 0.8", "cleaned and read gap plug 3".</summary>
internal sealed class DueActions(Lazy<SoundLexicon> sounds, Lexicon lexicon)
{
    // The value says that something was set, so that the word for it may be farther off.
    private const double BeforeValue = 1.3;

    /// <summary>The text with such words taken for actions.</summary>
    public TakenText In(TakenText text)
    {
        for (var at = 1; at + 1 < text.Tokens.Count; at++)
        {
            if (Length(text.Tokens, at) is > 0 and var length && Nearest(text.Tokens, at, at + length) is { } action)
            {
                text = text.With(at, at + length, action);
            }
        }

        return text;
    }

    // How many words from here on mean nothing: one unknown to the program, or what is read of a gap.
    private int Length(IReadOnlyList<Token> tokens, int at)
    {
        var length = tokens[at].Text is "read" or "red" && tokens[at + 1].Stem is "gap" or "gapped" ? 2
            : tokens[at].Kind == TokenKind.Word && tokens[at].Text.Length > 3 && lexicon.Match(tokens, at) is null && !lexicon.IsSubjectWord(tokens[at].Stem) ? 1
            : 0;
        return length > 0 && Follows(tokens, at) && at + length < tokens.Count ? length : 0;
    }

    private bool Follows(IReadOnlyList<Token> tokens, int at) =>
        tokens[at - 1].Kind is TokenKind.Mark or TokenKind.Digits || tokens[at - 1].IsWord("and") || lexicon.IsSubjectWord(tokens[at - 1].Stem);

    private string? Nearest(IReadOnlyList<Token> tokens, int at, int next)
    {
        var value = tokens[next].IsWord("to") && next + 1 < tokens.Count && tokens[next + 1].Kind == TokenKind.Digits;
        if (!value && !(next - at == 2 && lexicon.IsSubjectWord(tokens[next].Stem)))
        {
            return null;
        }

        return sounds.Value.Near([.. tokens.Skip(at).Take(next - at)], value ? BeforeValue : 1, numbersOnly: false)
            .Where(match => match.Phrase.Tokens.Count == 1 && lexicon.Match(match.Phrase.Tokens, 0) is { } found
                && found.Meanings.Any(term => term.Action is not null))
            .Select(match => match.Phrase.Text).FirstOrDefault();
    }
}
