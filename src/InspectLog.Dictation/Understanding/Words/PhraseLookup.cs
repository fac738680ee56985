namespace InspectLog.Dictation.Understanding.Words;

/// <summary>The known phrases of one text, each looked up once.</summary>
internal sealed class PhraseLookup(Lexicon lexicon, IReadOnlyList<Token> tokens)
{
    private readonly (bool Found, (int Length, IReadOnlyList<Term> Meanings)? Match)[] _matches =
        new (bool, (int, IReadOnlyList<Term>)?)[tokens.Count];

    public Lexicon Lexicon => lexicon;

    public IReadOnlyList<Token> Tokens => tokens;

    /// <summary>The longest known phrase that starts at a token.</summary>
    public (int Length, IReadOnlyList<Term> Meanings)? Match(int at)
    {
        if (at >= tokens.Count)
        {
            return null;
        }

        if (!_matches[at].Found)
        {
            _matches[at] = (true, lexicon.Match(tokens, at));
        }

        return _matches[at].Match;
    }

    /// <summary>Whether the phrase that starts at a token can mean something of a kind.</summary>
    public bool Means(int at, Func<Term, bool> kind) => Match(at)?.Meanings.Any(kind) ?? false;
}
