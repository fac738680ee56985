using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Tells questions from statements, with or without the mark.</summary>
internal static class Questions
{
    public static bool Asks(Sentence sentence)
    {
        var (tokens, at, next) = (sentence.Tokens, sentence.Opening, sentence.Next);
        if (next > sentence.First && tokens[next - 1].IsMark('?'))
        {
            return true;
        }

        if (at >= next || tokens[at].Kind != TokenKind.Word)
        {
            return false;
        }

        return NonFindingCues.QuestionWords.Contains(tokens[at].Text) && !(tokens[at].Text is "what" && at + 1 < next && tokens[at + 1].Stem is "i" or "we" or "it")
            || NonFindingCues.Askers.Contains(tokens[at].Text) && at + 1 < next && AskedOf(sentence, at + 1) && !Likewise(sentence, at);
    }

    // "So do two and three" says the same of them; a question goes on to what it asks.
    private static bool Likewise(Sentence sentence, int at) => at > sentence.First && sentence.Tokens[at - 1].IsWord("so")
        && !Enumerable.Range(at + 1, sentence.Next - at - 1)
            .Any(i => sentence.Phrases.Means(i, term => term.Condition is not null || term.Role == Role.Good));

    // "Is the", "are they", "does lead": the verb stands before whom it asks about.
    private static bool AskedOf(Sentence sentence, int at)
    {
        var token = sentence.Tokens[at];
        if (token.IsWord("not"))
        {
            return at + 1 < sentence.Next && AskedOf(sentence, at + 1);
        }

        return token.Stem is "the" or "it" or "that" or "this" or "there" or "you" or "we" or "i" or "they" or "she" or "he"
                or "any" or "all" or "your" or "my" or "our" or "these" or "those" or "everything" or "anyone"
            || sentence.NounAt(at) && !(sentence.NumberAt(at) && sentence.Tokens[at - 1].IsWord("was"));
    }
}
