using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>What the names around an event say for and against a check.</summary>
internal static class Evidence
{
    private const int Left = 0;
    private const int Right = 1;
    private const int Inside = 2;

    public static void Add(NoteScene scene, NoteEvent found, CheckEntry check, FeatureList to)
    {
        var note = scene.Note;
        Span<(int Distance, Phrase<Naming>? Name)> best = new (int, Phrase<Naming>?)[6];
        var mine = 0;
        foreach (var name in note.Names)
        {
            if (KindOf(name, check.Index) is not { } subject)
            {
                continue;
            }

            mine++;
            var side = name.Next <= found.First ? Left : name.First >= found.Next ? Right : Inside;
            var distance = side == Left ? found.First - name.Next : side == Right ? name.First - found.Next : 0;
            ref var slot = ref best[side * 2 + (subject ? 1 : 0)];
            if (slot.Name is null || distance < slot.Distance)
            {
                slot = (distance, name);
            }
        }

        for (var key = 0; key < best.Length; key++)
        {
            if (best[key].Name is { } name)
            {
                Near(scene, found, check, name, key, best[key].Distance, to);
            }
        }

        Overall(scene, found, check, mine, to);
    }

    private static void Near(NoteScene scene, NoteEvent found, CheckEntry check, Phrase<Naming> name, int key, int distance, FeatureList to)
    {
        var note = scene.Note;
        var (low, high) = key / 2 == Left ? (name.Next, found.First) : key / 2 == Right ? (found.Next, name.First) : (found.First, found.First);
        var boundary = (int)note.Between(low, high);
        var events = scene.Events.Count(other => other != found && low <= other.First && other.First < high && other.Kind == found.Kind);
        var names = note.Names.Count(other => low <= other.First && other.Next <= high && KindOf(other, check.Index) is null);
        to.Add(Feature.NameBoundary, key, boundary);
        to.Add(Feature.NameDistance, key, NoteScene.Bucket(distance));
        to.Add(Feature.NameBetween, key, Math.Min(events, 2), Math.Min(names, 2));
        to.Add(Feature.NameBoundaryBetween, key, boundary, Math.Min(events, 1), Math.Min(names, 1));
        if (name.Cost > 0)
        {
            to.Add(Feature.NameHeard, key, NoteScene.CostStep(name.Cost));
        }

        to.Add(Feature.NameWords, key, note.Words(low, high));
        to.Add(Feature.NameLeft, key, note.ShapeAt(name.First - 1), boundary);
        to.Add(Feature.NameMeanings, key, Math.Min(name.Meanings.Count, 3));
    }

    private static void Overall(NoteScene scene, NoteEvent found, CheckEntry check, int mine, FeatureList to)
    {
        var note = scene.Note;
        var left = note.Names.FindLast(name => name.Next <= found.First);
        var right = note.Names.Find(name => name.First >= found.Next);
        to.Add(Feature.NearestLeft, Rank(left, check.Index));
        to.Add(Feature.NearestRight, Rank(right, check.Index), right is null ? 0 : (int)note.Between(found.Next, right.First));
        var (subjects, mySubject) = (false, false);
        var (clause, clauseMine, sentence, sentenceMine) = (false, false, false, false);
        foreach (var name in note.Names)
        {
            var kind = KindOf(name, check.Index);
            subjects |= name.Meanings.Any(naming => naming.Subject);
            mySubject |= kind == true;
            var inClause = scene.InClause(name.First, found.First);
            var inSentence = scene.InSentence(name.First, found.First);
            clause |= inClause;
            sentence |= inSentence;
            clauseMine |= inClause && kind is not null;
            sentenceMine |= inSentence && kind is not null;
        }

        AddSlots(scene, found, check, to);
        AddLoose(scene, found, check, Rank(left, check.Index), to);
        to.Add(Feature.CheckShape, check.Shape);
        to.Add(Feature.CheckShape, check.Shape, 1 + (mySubject ? 2 : mine > 0 ? 1 : 0));
        to.Add(Feature.SubjectsAnywhere, Flag(subjects), Flag(mySubject));
        to.Add(Feature.NamesAnywhere, Flag(note.Names.Count > 0), Flag(mine > 0));
        to.Add(Feature.NamesInClause, Flag(clause), Flag(clauseMine), Flag(sentence), Flag(sentenceMine));
        to.Add(Feature.NamedTimes, Math.Min(mine, 3));
        if (note.Open is { } open)
        {
            to.Add(Feature.OpenCheck, Flag(open == check));
            to.Add(Feature.OpenCheck, Flag(open == check), 1 + Flag(note.Names.Count > 0), Flag(mine > 0));
        }

        var inPlaces = scene.Groups.Exists(group => scene.InClause(group.First, found.First));
        to.Add(Feature.PerPlace, Flag(check.PerPlace), Flag(inPlaces), Flag(scene.Groups.Count > 0));
    }

    // Whether single words of its names are said here, more than those of other checks.
    private static void AddLoose(NoteScene scene, NoteEvent found, CheckEntry check, int left, FeatureList to)
    {
        var (clause, sentence) = (scene.Loose(found.First, false), scene.Loose(found.First, true));
        var (here, there) = (Standing(clause, check.Index), Standing(sentence, check.Index));
        to.Add(Feature.Loose, here, there);
        to.Add(Feature.LooseNear, here, left);
        to.Add(Feature.LooseNear, 8 + there, left);
        to.Add(Feature.LooseNamed, (int)Math.Min(6, sentence[check.Index] * 4));
    }

    // Said more of than any other, as much as the most, less, or not at all.
    private static int Standing(double[] sums, int check)
    {
        var (mine, most) = (sums[check], 0.0);
        for (var other = 0; other < sums.Length; other++)
        {
            most = other == check ? most : Math.Max(most, sums[other]);
        }

        return mine == 0 ? most > 0 ? 1 : 0 : mine > most + 1e-9 ? 4 : mine > most - 1e-9 ? 3 : 2;
    }

    // Names between the event before and this one, and between this one and the next.
    private static void AddSlots(NoteScene scene, NoteEvent found, CheckEntry check, FeatureList to)
    {
        var before = scene.Events.FindLast(other => other.Next <= found.First && other.Kind < EventKind.Answer);
        var after = scene.Events.Find(other => other.First >= found.Next && other.Kind < EventKind.Answer);
        var left = Slot(scene.Note.Names.Where(name => name.Next <= found.First && name.First >= (before?.Next ?? 0)).Reverse(), check.Index);
        var right = Slot(scene.Note.Names.Where(name => name.First >= found.Next && name.Next <= (after?.First ?? scene.Note.Length) && scene.InSentence(name.First, found.First)), check.Index);
        var apart = before is null ? 4 : (int)scene.Note.Between(before.Next, found.First);
        to.Add(Feature.Slots, left, right);
        to.Add(Feature.SlotWord, left, right, scene.Note.ShapeAt(found.First - 1));
        to.Add(Feature.SlotWord, 8 + left, right, scene.Note.ShapeAt(scene.Note.ClauseFirst(found.First)));
        to.Add(Feature.SlotLeft, left, apart, before is null ? -1 : (int)before.Kind);
        to.Add(Feature.SlotRight, right, left, after is null ? 4 : (int)scene.Note.Between(found.Next, after.First));
    }

    private static int Slot(IEnumerable<Phrase<Naming>> names, int check)
    {
        var slot = 0;
        foreach (var name in names)
        {
            var kind = KindOf(name, check);
            slot = slot == 0 ? kind is null ? 1 : kind == true ? 3 : 2 : slot == 1 && kind is not null ? 4 : slot;
        }

        return slot;
    }

    /// <summary>Whether a name is of a check, and names the check itself; null where it is not of it.</summary>
    public static bool? KindOf(Phrase<Naming> name, int check)
    {
        foreach (var naming in name.Meanings)
        {
            if (naming.Check == check)
            {
                return naming.Subject || name.Meanings.Any(other => other.Check == check && other.Subject);
            }
        }

        return null;
    }

    private static int Rank(Phrase<Naming>? name, int check) => name is null ? 0 : KindOf(name, check) switch
    {
        null => 1,
        false => 2,
        true => 3,
    };

    private static int Flag(bool it) => it ? 1 : 0;
}
