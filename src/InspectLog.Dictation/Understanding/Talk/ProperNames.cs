using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>Tells names of people, makes and other cars by their capital.</summary>
internal static class ProperNames
{
    /// <summary>Whether a token is a name: written with a capital though no sentence begins with it, after a word that has
    /// none.</summary>
    /// <param name="phrases">The phrases of the text.</param>
    /// <param name="at">The token.</param>
    public static bool At(PhraseLookup phrases, int at) => At(phrases.Tokens, at) && phrases.Match(at) is null && !phrases.Lexicon.IsSubjectWord(phrases.Tokens[at].Stem);

    /// <summary>Whether a token that nothing is known of is a name.</summary>
    public static bool At(IReadOnlyList<Token> tokens, int at) =>
        at > 0 && tokens[at].Capital && tokens[at - 1] is { Kind: TokenKind.Word, Capital: false };

    /// <summary>The stretches of a clause that speak of another car: "on the Triumph", "a Wolseley where". A make right before
    /// a part is the part's: "the Bosch coil".</summary>
    public static IEnumerable<(int First, int Next)> In(SpokenClause clause)
    {
        for (var at = clause.First + 1; at < clause.Next; at++)
        {
            if (At(clause.Phrases, at) && clause.AfterName(at + 1) == at + 1 && (Placed(clause, at - 1) || Told(clause, at + 1)))
            {
                yield return (clause.First, clause.Next);
            }
        }
    }

    /// <summary>"It was the same story with the Morris": what comes is of that car.</summary>
    public static bool Compares(SpokenClause clause)
    {
        var words = Enumerable.Range(clause.First, clause.Next - clause.First);
        return words.Any(at => clause.Stem(at) is "same" or "story" or "similar") && words.Any(at => At(clause.Phrases, at));
    }

    private static bool Placed(SpokenClause clause, int at) =>
        clause.Stem(at) is "on" or "from" or "of" or "like" or "in"
        || clause.Stem(at) is "the" or "a" or "an" or "my" or "our" or "that" or "old" && clause.Stem(at - 1) is "on" or "from" or "of" or "like" or "in" or "the" or "an" or "a";

    private static bool Told(SpokenClause clause, int at) =>
        clause.Stem(at) is "where" or "that" or "which" or "with" or "had" or "has" or "was" or "is" or "in" or "from" or "of";
}
