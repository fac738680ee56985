using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>The tokens of one sentence, and where its clauses begin and end.</summary>
internal sealed class Sentence
{
    private readonly Func<int, bool> _nounAt;
    private readonly Func<int, bool> _numberAt;

    public Sentence(PhraseLookup phrases, int first, int next, Func<int, bool> nounAt, Func<int, bool> numberAt)
    {
        (Phrases, Tokens, First, Next, _nounAt, _numberAt) = (phrases, phrases.Tokens, first, next, nounAt, numberAt);
        Opening = AfterFillers();
    }

    public PhraseLookup Phrases { get; }

    /// <summary>The tokens of the whole text.</summary>
    public IReadOnlyList<Token> Tokens { get; }

    public int First { get; }

    /// <summary>The token after the sentence.</summary>
    public int Next { get; }

    /// <summary>The first token after the words that only open the talk: "right, so".</summary>
    public int Opening { get; }

    /// <summary>Whether a part, a number or a pronoun starts at a token.</summary>
    public bool NounAt(int at) => _nounAt(at);

    public bool NumberAt(int at) => _numberAt(at);

    /// <summary>The token after the clause that goes on at a token.</summary>
    public int ClauseEnd(int at)
    {
        while (at < Next && !EndsClause(at))
        {
            at++;
        }

        return at;
    }

    /// <summary>The first token of the clause that holds a token.</summary>
    public int ClauseStart(int at)
    {
        while (at > First && !EndsClause(at - 1))
        {
            at--;
        }

        return at;
    }

    /// <summary>On over clauses without a verb of their own: "I'll order two leads, three plugs and a cap".</summary>
    public int VerblessEnd(int at)
    {
        var end = ClauseEnd(at);
        while (end < Next && Tokens[end].Kind == TokenKind.Mark)
        {
            var clause = ClauseEnd(end + 1);
            if (Enumerable.Range(end + 1, clause - end - 1).Any(HasVerb))
            {
                break;
            }

            end = clause;
        }

        return end;
    }

    private int AfterFillers()
    {
        var at = First;
        while (at < Next && (Aside(at) > 0 || Tokens[at].Kind == TokenKind.Mark
            || Tokens[at].Stem is "so" or "well" or "okay" or "ok" or "right" or "now" or "and" or "um" or "uh" or "er" or "please"
                or "then" or "oh" or "hey" or "just" or "but" or "also" or "next"))
        {
            at += Math.Max(1, Aside(at));
        }

        return at;
    }

    // "Where was I, plug three": known talk that only opens.
    private int Aside(int at) => Phrases.Match(at) is { Length: > 2 } talk && talk.Meanings.Any(term => term.Role == Role.Filler) ? talk.Length : 0;

    private bool EndsClause(int at) =>
        Tokens[at].Kind == TokenKind.Mark && Tokens[at].Text[0] is ',' or ':' or ';' or '.' or '!'
        || Tokens[at].Stem is "but" or "because" or "whereas" or "although"
        || Tokens[at].IsWord("and") && at + 1 < Next && OpensClause(at + 1);

    private bool OpensClause(int at) =>
        Tokens[at].Stem is "it" or "it's" or "i" or "i've" or "she" or "that's" or "there's" or "now" or "then" or "the";

    private bool HasVerb(int at) => Tokens[at].Text is "'s" or "'re" || Phrases.Means(at, term =>
        term.Role is Role.Verb or Role.Was or Role.Now or Role.Pronoun or Role.DoesNot || term.Action is not null);
}
