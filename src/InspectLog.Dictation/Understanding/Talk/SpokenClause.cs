using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>A clause of what was said, with what its words can mean.</summary>
/// <param name="Phrases">The phrases of the text.</param>
/// <param name="Numbers">The numbers of the text.</param>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after its last.</param>
internal sealed record SpokenClause(PhraseLookup Phrases, NumberLookup Numbers, int First, int Next)
{
    public IReadOnlyList<Token> Tokens => Phrases.Tokens;

    /// <summary>Its first token that is not there only to begin with.</summary>
    public int Start { get; } = AfterOpening(Phrases.Tokens, First, Next);

    public string Stem(int at) => at >= First && at < Next ? Tokens[at].Stem : "";

    public string Text(int at) => at >= First && at < Next ? Tokens[at].Text : "";

    public bool Means(int at, Func<Term, bool> kind) => at < Next && Phrases.Means(at, kind);

    /// <summary>Whether a word tells how something is: "burnt", "good".</summary>
    public bool Describes(int at) => Means(at, term => term.Condition is not null || term.Role is Role.Good or Role.Bad);

    /// <summary>The token after the name of a part or quantity that starts at a token; the token itself where none does.</summary>
    public int AfterName(int at)
    {
        while (at < Next && (Means(at, term => term.Subject) || Phrases.Match(at) is null && Phrases.Lexicon.IsSubjectWord(Tokens[at].Stem)))
        {
            at += Phrases.Match(at)?.Length ?? 1;
        }

        return at;
    }

    /// <summary>Whether nothing is known of the word.</summary>
    public bool IsUnknown(int at) => at >= First && at < Next && Tokens[at].Kind == TokenKind.Word && Phrases.Match(at) is null
        && !Phrases.Lexicon.IsSubjectWord(Tokens[at].Stem) && !IsNumber(at) && Numbers.Unit(at) is null;

    public bool IsNumber(int at) => at >= First && at < Next && Numbers.Numbers(at).Count > 0;

    /// <summary>Whether a word says what comes of its subject. A word nobody knows may, in the right place.</summary>
    public bool IsVerb(int at) => Means(at, term => term.Role is Role.Verb or Role.Was or Role.DoesNot or Role.Does) || IsUnknown(at);

    /// <summary>Whether a cylinder seems to be named anywhere from a token on.</summary>
    public bool NamesPlace(int from) => Enumerable.Range(from, Math.Max(0, Next - from)).Any(at =>
        IsNumber(at) && at > First && (Phrases.Lexicon.IsPlaceNoun(Tokens[at - 1].Stem) || Tokens[at - 1].Stem is "number" or "cylinder" or "on" or "pot" or "and"));

    private static int AfterOpening(IReadOnlyList<Token> tokens, int first, int next)
    {
        while (first < next && tokens[first].Stem is "so" or "well" or "okay" or "ok" or "right" or "now" or "and" or "um" or "then" or "oh" or "hey"
            or "just" or "also" or "next" or "yes" or "yeah")
        {
            first++;
        }

        return first;
    }
}
