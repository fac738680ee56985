using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>What tells talk from findings in the words of a note or a sentence of it, seen without those of the trade.</summary>
internal static class TalkFeatures
{
    /// <summary>The features of some tokens of a note, each once.</summary>
    public static uint[] Of(Note note, int first, int next)
    {
        var keys = new HashSet<uint>();
        var (before, two) = (WordIds.Start, WordIds.None);
        var content = 0;
        for (var at = first; at <= next; at++)
        {
            var word = at == next ? WordIds.End : note.Shape[at];
            if (word == WordIds.None)
            {
                continue;
            }

            Add(Feature.TalkWord, word);
            Add(Feature.TalkPair, before, word);
            Add(Feature.TalkThree, two, before, word);
            if (content++ == 0)
            {
                Add(Feature.TalkFirst, word);
            }

            (two, before) = (before, word);
        }

        if (next > first)
        {
            Add(Feature.TalkLast, note.Word(next - 1));
        }

        foreach (var role in Enum.GetValues<SpeechRole>())
        {
            if (note.Of(role).Any(one => one.First >= first && one.Next <= next))
            {
                Add(Feature.TalkRole, (int)role);
            }
        }

        AddCounts(note, first, next, Add);
        return [.. keys];

        void Add(Feature feature, int a = 0, int b = 0, int c = 0) => keys.Add(FeatureList.Key(0, feature, a, b, c));
    }

    private static void AddCounts(Note note, int first, int next, Action<Feature, int, int, int> add)
    {
        var names = note.Names.Where(name => name.First >= first && name.Next <= next).ToList();
        var runs = note.Runs.Where(run => run.First >= first && run.Next <= next).ToList();
        add(Feature.TalkCount, 0, Math.Min(2, names.Count(name => name.Meanings.Any(naming => naming.Subject))), 0);
        add(Feature.TalkCount, 1, Math.Min(3, names.Count), 0);
        add(Feature.TalkCount, 2, Math.Min(3, note.Conditions.Count(condition => condition.First >= first && condition.Next <= next)), 0);
        add(Feature.TalkCount, 3, Math.Min(3, runs.Count), 0);
        add(Feature.TalkCount, 4, Math.Min(8, (next - first) / 3), 0);
        add(Feature.TalkCount, 5, Math.Min(4, Enumerable.Range(first, next - first).Count(note.IsUnknown)), 0);
        foreach (var unit in runs.SelectMany(run => run.Options).SelectMany(option => option).Where(number => number.Units is not null))
        {
            var known = unit.Units!.Any(one => one.Unit is not null && note.Lexicon.Checks.Any(check => check.Measurand?.Kind == one.Unit.Kind));
            add(Feature.TalkUnit, known ? 1 : 0, 0, 0);
        }
    }
}
