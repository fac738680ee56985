using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <content>The note as features see it.</content>
internal sealed partial class Note
{
    private const int LongestWords = 5;

    /// <summary>Where the clause of a token begins.</summary>
    public int ClauseFirst(int at) => First(_clauses, at);

    /// <summary>Where the sentence of a token begins.</summary>
    public int SentenceFirst(int at) => First(_sentences, at);

    private static int First(int[] parts, int at)
    {
        while (at > 0 && parts[at - 1] == parts[at])
        {
            at--;
        }

        return at;
    }

    /// <summary>Some tokens as one number, as far as they are few enough to be met again.</summary>
    public int Words(int first, int next)
    {
        if (next - first > LongestWords)
        {
            return 1;
        }

        var words = WordIds.None;
        for (var at = first; at < next; at++)
        {
            words = words * 31 + Shape[at];
        }

        return words;
    }

    private int[] Shapes()
    {
        var shape = Tokens.Select(token => token.Word).ToArray();
        foreach (var run in Runs)
        {
            Mask(run.First, run.Next, WordIds.Number);
        }

        foreach (var place in PlaceNames)
        {
            Mask(place.First, place.Next, WordIds.Place);
        }

        foreach (var name in Names)
        {
            Mask(name.First, name.Next, name.Meanings.Any(naming => naming.Subject) ? WordIds.Subject : WordIds.Part);
        }

        foreach (var condition in Conditions)
        {
            Mask(condition.First, condition.Next, WordIds.Condition);
        }

        return shape;

        void Mask(int first, int next, int by)
        {
            Array.Fill(shape, WordIds.None, first, next - first);
            shape[first] = by;
        }
    }

    private bool[] Unknown(WordFamiliarity words)
    {
        var read = new bool[Length];
        foreach (var (first, next) in Runs.Select(run => (run.First, run.Next)).Concat(Names.Select(name => (name.First, name.Next))).Concat(Conditions.Select(condition => (condition.First, condition.Next))))
        {
            Array.Fill(read, true, first, next - first);
        }

        return [.. Tokens.Select((token, at) => !read[at] && token.Kind == TokenKind.Word && char.IsLetter(token.Text[0])
            && !Lexicon.Knows(token.Stem) && !Lexicon.Knows(token.Text) && !Lexicon.Language.Small.Contains(token.Text) && !words.IsFamiliar(token.Word))];
    }
}
