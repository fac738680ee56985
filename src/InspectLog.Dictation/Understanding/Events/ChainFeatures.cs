using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>How a claim goes with what was found just before it: the memory of what is being spoken of.</summary>
internal static class ChainFeatures
{
    private const int Reach = 8;

    public static void Add(NoteScene scene, NoteEvent found, Claim claim, Found? last, FeatureList to)
    {
        if (last is null)
        {
            to.Add(Feature.ChainNone);
            return;
        }

        var note = scene.Note;
        var boundary = (int)note.Between(last.Event.Next, found.First);
        var same = last.Claim.Check == claim.Check;
        var (mine, others) = Named(note, last.Event.Next, found.First, claim.Check);
        to.Add(Feature.ChainBoundary, Flag(same), boundary);
        to.Add(Feature.ChainNamed, Flag(same), Flag(mine || others));
        to.Add(Feature.ChainTopic, Flag(same), Flag(mine), Flag(others), Math.Max(0, boundary - 1));
        to.Add(Feature.ChainKind, Flag(same), (int)last.Event.Kind);
        to.Add(Feature.ChainClaims, Flag(same), (int)last.Claim.Kind, (int)claim.Kind, boundary);
        to.Add(Feature.Chain, Flag(same));
        if (!same)
        {
            var samePart = scene.Checks[last.Claim.Check].NounStem == scene.Checks[claim.Check].NounStem && scene.Checks[claim.Check].NounStem is not null;
            to.Add(Feature.ChainPart, Flag(samePart), Flag(Found.All(last).Any(before => before.Claim.Check == claim.Check)), Flag(mine));
        }

        if (claim == last.Claim && claim.Kind != FindingKind.Reading)
        {
            to.Add(Feature.ChainRepeat);
        }

        AddWords(note, found, claim, last, same, to);
        AddSaid(note, found, claim, last, to);
        if (found.Kind == EventKind.Condition && last.Claim.Kind == FindingKind.Observation)
        {
            var polarity = Flag(last.Claim.Negated) * 2 + Flag(claim.Negated);
            to.Add(Feature.ChainPolarity, polarity, boundary);
            to.Add(Feature.ChainPolarityLink, polarity, note.Words(last.Event.Next, found.First));
        }
    }

    // The words that lead from one to the other.
    private static void AddWords(Note note, NoteEvent found, Claim claim, Found last, bool same, FeatureList to)
    {
        var boundary = (int)note.Between(last.Event.Next, found.First);
        to.Add(Feature.ChainWord, Flag(same), note.ShapeAt(note.ClauseFirst(found.First)), boundary);
        to.Add(Feature.ChainWord, 2 + Flag(same), note.ShapeAt(found.First - 1), boundary);
        for (var at = Math.Max(last.Event.Next, found.First - Reach); at < found.First; at++)
        {
            if (note.Shape[at] is not WordIds.None and var word)
            {
                to.Add(Feature.ChainBetween, Flag(same), (int)claim.Kind, word);
            }
        }
    }

    // Whether it was said before, wherever that was, or its contrary.
    private static void AddSaid(Note note, NoteEvent found, Claim claim, Found last, FeatureList to)
    {
        foreach (var before in Found.All(last).Where(before => before.Claim.Check == claim.Check && before.Claim.Kind == claim.Kind))
        {
            var said = before.Claim == claim ? 0 : claim.Kind == FindingKind.Observation && before.Claim.Condition == claim.Condition ? 1 : 2;
            to.Add(Feature.ChainSaid, (int)claim.Kind, said, (int)note.Between(before.Event.Next, found.First), Flag(before == last));
            to.Add(Feature.ChainOpposed, said, note.ShapeAt(found.First - 1), (int)claim.Kind);
            return;
        }

        to.Add(Feature.ChainSaid, (int)claim.Kind, -1);
    }

    private static (bool Mine, bool Others) Named(Note note, int first, int next, int check)
    {
        var (mine, others) = (false, false);
        foreach (var name in note.Names)
        {
            if (first <= name.First && name.Next <= next)
            {
                var of = Evidence.KindOf(name, check) is not null;
                mine |= of;
                others |= !of;
            }
        }

        return (mine, others);
    }

    private static int Flag(bool it) => it ? 1 : 0;
}
