using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>What speaks for making nothing of an event: the words around it, seen without those of the trade.</summary>
internal static partial class DropFeatures
{
    private const int Reach = 6;
    private const int Words = 4;

    private static readonly SpeechRole[] Roles =
    [
        SpeechRole.Negation, SpeechRole.Correction, SpeechRole.Retraction, SpeechRole.Before, SpeechRole.After,
        SpeechRole.Supposed, SpeechRole.Planned, SpeechRole.Question, SpeechRole.Elsewhere, SpeechRole.Limit,
    ];

    public static void Add(NoteScene scene, NoteEvent found, FeatureList to)
    {
        AddWords(scene, found, to);
        AddClause(scene, found, to);
        foreach (var role in Roles)
        {
            scene.AddRole(to, Feature.DropRole, role, found.First, found.Next, Reach);
        }

        AddTalk(scene, found, to);
        AddUnknown(scene, found, to);
        AddNeighbours(scene, found, to);
        AddComplete(scene, found, to);
        AddLater(scene, found, to);
        AddSentence(scene, found, to);
        to.Add(Feature.Drop);
    }

    private static void AddWords(NoteScene scene, NoteEvent found, FeatureList to)
    {
        var note = scene.Note;
        Span<int> left = stackalloc int[Words];
        Span<int> right = stackalloc int[Words];
        Collect(note.Shape, found.First - 1, -1, left);
        Collect(note.Shape, found.Next, 1, right);
        to.Add(Feature.DropLeft, left[0]);
        to.Add(Feature.DropRight, right[0]);
        to.Add(Feature.DropLeft, left[0], left[1]);
        to.Add(Feature.DropRight, right[0], right[1]);
        to.Add(Feature.DropLeft, left[0], left[1], left[2]);
        to.Add(Feature.DropBoth, left[0], right[0]);
        to.Add(Feature.DropOpensLeft, note.ShapeAt(note.ClauseFirst(found.First)), left[0]);
        to.Add(Feature.DropOpensLeft, note.ShapeAt(note.ClauseFirst(found.First)), 0, (int)note.Between(0, found.First));
        for (var at = 0; at < Words; at++)
        {
            to.Add(Feature.DropLeftWord, left[at]);
            to.Add(Feature.DropRightWord, right[at]);
        }
    }

    private static void Collect(int[] shape, int at, int step, Span<int> to)
    {
        to.Clear();
        for (var count = 0; count < to.Length; at += step)
        {
            if (at < 0 || at >= shape.Length)
            {
                to[count] = step < 0 ? WordIds.Start : WordIds.End;
                return;
            }

            if (shape[at] != WordIds.None)
            {
                to[count++] = shape[at];
            }
        }
    }

    private static void AddClause(NoteScene scene, NoteEvent found, FeatureList to)
    {
        var note = scene.Note;
        var (first, next) = (found.First, found.Next);
        while (first > 0 && scene.InClause(first - 1, found.First))
        {
            first--;
        }

        while (next < note.Length && scene.InClause(next, found.First))
        {
            next++;
        }

        var before = WordIds.Start;
        for (var at = first; at < next; at++)
        {
            if (note.Shape[at] is not WordIds.None and var word)
            {
                to.Add(Feature.DropClauseWord, word);
                to.Add(Feature.DropClausePair, before, word);
                before = word;
            }
        }

        while (first > 0 && scene.InSentence(first - 1, found.First))
        {
            to.Add(Feature.DropSentenceWord, note.Shape[--first], 1);
        }

        while (next < note.Length && scene.InSentence(next, found.First))
        {
            to.Add(Feature.DropSentenceWord, note.Shape[next++], 2);
        }

        to.Add(Feature.DropSentenceStart, note.ShapeAt(first));
        to.Add(Feature.DropSentenceStart, note.ShapeAt(first), note.ShapeAt(first + 1));
        to.Add(Feature.DropSentenceEnd, note.Word(next - 1));
    }

    private static void AddTalk(NoteScene scene, NoteEvent found, FeatureList to)
    {
        var talk = (int)Math.Clamp(Math.Round(scene.Note.Talk), -6, 6);
        to.Add(Feature.DropTalk, talk);
        for (var step = -6; step <= talk; step++)
        {
            to.Add(Feature.DropTalkAbove, step);
        }

        var sentence = (int)Math.Clamp(Math.Round(scene.Note.TalkOf(found.First)), -6, 6);
        to.Add(Feature.DropSentenceTalk, sentence);
        for (var step = -6; step <= sentence; step++)
        {
            to.Add(Feature.DropSentenceTalkAbove, step);
        }
    }

    private static void AddUnknown(NoteScene scene, NoteEvent found, FeatureList to)
    {
        var note = scene.Note;
        var (all, sentence, clause, nearest) = (0, 0, 0, int.MaxValue);
        for (var at = 0; at < note.Length; at++)
        {
            if (note.IsUnknown(at))
            {
                all++;
                sentence += scene.InSentence(at, found.First) ? 1 : 0;
                clause += scene.InClause(at, found.First) ? 1 : 0;
                nearest = Math.Min(nearest, Math.Abs(at - found.First));
            }
        }

        to.Add(Feature.DropUnknown, 0, Math.Min(clause, 3));
        to.Add(Feature.DropUnknown, 1, Math.Min(sentence, 4));
        to.Add(Feature.DropUnknown, 2, Math.Min(all, 4));
        if (all > 0)
        {
            to.Add(Feature.DropUnknown, 3, NoteScene.Bucket(nearest));
        }

        to.Add(Feature.DropUnknownBeside, note.IsUnknown(found.First - 1) ? 1 : 0, note.IsUnknown(found.Next) ? 1 : 0);
        var names = note.Names.Where(name => scene.InSentence(name.First, found.First)).ToList();
        if (names.MinBy(name => Math.Min(Math.Abs(found.First - name.Next), Math.Abs(name.First - found.Next))) is { } near)
        {
            to.Add(Feature.DropNameUnknown, note.IsUnknown(near.First - 1) ? 1 : 0, note.IsUnknown(near.Next) ? 1 : 0);
            to.Add(Feature.DropNameLeft, note.Word(near.First - 1));
            to.Add(Feature.DropNameRight, note.ShapeAt(near.Next));
        }

        to.Add(Feature.DropNames, note.Names.Exists(name => scene.InClause(name.First, found.First)) ? 1 : 0, note.Names.Count > 0 ? 1 : 0);
    }
}
