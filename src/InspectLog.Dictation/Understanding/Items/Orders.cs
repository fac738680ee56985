using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Finds the order with which a sentence opens: "clean the points", "check the gap".</summary>
internal static class Orders
{
    /// <summary>The tokens of the order, or nothing where none is given.</summary>
    public static (int From, int To)? Given(Sentence sentence)
    {
        var (tokens, at, next) = (sentence.Tokens, sentence.Opening, sentence.Next);
        if (at >= next || tokens[at].Kind != TokenKind.Word)
        {
            return null;
        }

        // "Clean." is how it looks; an order names what to clean.
        if (at + 1 >= next || tokens[at + 1].Kind == TokenKind.Mark)
        {
            return null;
        }

        var describes = sentence.Phrases.Means(at, term => term.Condition is not null);
        if (describes && tokens[at + 1].Stem is not ("the" or "it" or "them" or "that" or "those" or "these" or "all" or "out" or "up"))
        {
            return null;
        }

        // "Let two is cracked" orders nothing: whom to let is missing. "Let me see" tells what the speaker does.
        if (tokens[at].IsWord("let") && (sentence.NounAt(at + 1) || tokens[at + 1].Stem is "me" or "'s" or "us") || tokens[at].IsWord("call") && tokens[at + 1].IsWord("it"))
        {
            return null;
        }

        return NonFindingCues.LookOrders.Contains(tokens[at].Text) ? (at, sentence.ClauseEnd(at))
            : NonFindingCues.Orders.Contains(tokens[at].Text) ? (at, sentence.VerblessEnd(at))
            : null;
    }
}
