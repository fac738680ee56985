using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>What an event can say that depends on what was found last.</summary>
internal static class Dependent
{
    /// <summary>The same again, of another place: "number five too".</summary>
    public static IEnumerable<(Claim Claim, uint[] Features)> Copies(NoteScene scene, NoteEvent found, Found last)
    {
        var features = new FeatureList { Scope = (int)found.Kind };
        var note = scene.Note;
        foreach (var flips in last.Claim.Kind == FindingKind.Observation ? new[] { false, true } : [false])
        {
            var claim = flips ? last.Claim with { Negated = !last.Claim.Negated } : last.Claim;
            var sign = (int)found.Role * 2 + (flips ? 1 : 0);
            features.Add(Feature.Copy, sign);
            features.Add(Feature.CopyKind, sign, (int)claim.Kind);
            features.Add(Feature.CopyBoundary, sign, (int)note.Between(last.Event.Next, found.First));
            features.Add(Feature.CopyWords, sign, note.Word(found.First), found.Next - found.First > 1 ? note.Word(found.Next - 1) : 0);
            features.Add(Feature.CopyRight, sign, note.ShapeAt(found.Next));
            if (claim.Kind == FindingKind.Observation)
            {
                features.Add(Feature.CopyMeaning, sign, (int)scene.Checks[claim.Check].Check.Conditions[claim.Condition].Meaning, claim.Negated ? 1 : 0);
            }

            yield return (claim, features.Take());
        }
    }

    /// <summary>The same of a part named with it: "cap and rotor are clean".</summary>
    public static IEnumerable<(Claim Claim, uint[] Features)> Repeats(NoteScene scene, NoteEvent found, Found last)
    {
        var of = found.Of!;
        if (last.Event.First != of.First || last.Event.Kind != of.Kind || last.Claim.Kind == FindingKind.Reading)
        {
            yield break;
        }

        var features = new FeatureList { Scope = (int)found.Kind };
        var names = scene.Note.Names.Where(name => scene.InSentence(name.First, found.First)).ToList();
        var done = Found.All(last).Where(before => before.Event.First == of.First).Select(before => before.Claim.Check).ToHashSet();
        foreach (var check in scene.Checks)
        {
            var mine = names.Where(name => Evidence.KindOf(name, check.Index) is not null).ToList();
            if (mine.Count == 0 || done.Contains(check.Index) || mine.Exists(name => name.Meanings.Any(naming => done.Contains(naming.Check))))
            {
                continue;
            }

            var subject = mine.Exists(name => Evidence.KindOf(name, check.Index) == true);
            var theirs = names.Where(name => Evidence.KindOf(name, last.Claim.Check) is not null).ToList();
            var near = mine.Exists(a => theirs.Exists(b => Math.Abs(a.First - b.Next) <= 4 || Math.Abs(b.First - a.Next) <= 4));
            foreach (var claim in Claims(of, check, last.Claim, subject))
            {
                features.Add(Feature.Repeat, (int)of.Kind);
                features.Add(Feature.RepeatNear, near ? 1 : 0);
                features.Add(Feature.RepeatSubject, subject ? 1 : 0);
                features.Add(Feature.RepeatSide, mine[0].First < found.First ? 0 : 1, theirs.Count == 0 ? 2 : theirs[0].First < found.First ? 0 : 1);
                yield return (claim, features.Take());
            }
        }
    }

    private static IEnumerable<Claim> Claims(NoteEvent of, CheckEntry check, Claim last, bool subject) => of.Kind == EventKind.Condition
        ? of.Condition!.Meanings.Where(meaning => meaning.Check == check.Index).Select(meaning => Claim.Observation(check.Index, meaning.Condition, last.Negated))
        : check.Check.Actions.Contains(last.Action!) && (check.MainForActions || subject) ? [Claim.Done(check.Index, last.Action!)] : [];
}
