using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <content>The note as features see it.</content>
internal sealed partial class Note
{
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
