using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>Words taken for a phrase they sound like.</summary>
internal sealed record HeardPhrase(IReadOnlyList<Phrase<Naming>> Names, IReadOnlyList<Phrase<Meaning>> Conditions);

/// <summary>Finds phrases of the sheet that unknown words sound like. They stand beside what the words are, at a cost; what was
/// written is never changed.</summary>
internal static class SoundAlikes
{
    private const int MostLookups = 12;
    private const int LongestNote = 60;
    private const int LongestRun = 3;

    public static IEnumerable<HeardPhrase> Of(Note note)
    {
        if (note.Length > LongestNote)
        {
            return [];
        }

        var found = new List<(int First, int Next, Sounds.SoundMatch Match)>();
        foreach (var (first, next) in Windows(note).Take(MostLookups))
        {
            if (note.Lexicon.Sounds.Nearest([.. note.Tokens.Skip(first).Take(next - first)]) is { } match)
            {
                found.Add((first, next, match));
            }
        }

        var heard = new List<HeardPhrase>();
        var taken = new bool[note.Length];
        foreach (var (first, next, match) in found.OrderBy(one => one.Match.Cost).ThenByDescending(one => one.Next - one.First).ThenBy(one => one.First))
        {
            if (!taken.AsSpan(first, next - first).Contains(true))
            {
                Array.Fill(taken, true, first, next - first);
                heard.Add(Phrases(note, first, next, match));
            }
        }

        return heard;
    }

    // Runs with an unknown word in them, and nothing that is a number, a name or a condition.
    private static IEnumerable<(int First, int Next)> Windows(Note note)
    {
        for (var first = 0; first < note.Length; first++)
        {
            var unknown = false;
            for (var next = first + 1; next <= Math.Min(note.Length, first + LongestRun) && IsFree(note, next - 1); next++)
            {
                unknown |= note.IsUnknown(next - 1);
                if (unknown && (note.IsUnknown(first) || next - first == 2 && note.IsUnknown(next - 1)) && note.Tokens[first].Text.Length + note.Tokens[next - 1].Text.Length > 3)
                {
                    yield return (first, next);
                }
            }
        }
    }

    private static bool IsFree(Note note, int at) => note.Tokens[at].Kind == TokenKind.Word
        && !note.Runs.Exists(run => run.First <= at && at < run.Next)
        && !note.Names.Exists(name => name.First <= at && at < name.Next)
        && !note.Conditions.Exists(condition => condition.First <= at && at < condition.Next);

    private static HeardPhrase Phrases(Note note, int first, int next, Sounds.SoundMatch match)
    {
        var names = note.Lexicon.Names.Find(match.Phrase.Stems);
        var conditions = note.Lexicon.Conditions.Find(match.Phrase.Stems);
        var cost = Math.Max(match.Cost, 0.01);
        return new(
            names.Count == 0 ? [] : [new(first, next, names) { Cost = cost }],
            conditions.Count == 0 ? [] : [new(first, next, conditions) { Cost = cost }]);
    }
}
