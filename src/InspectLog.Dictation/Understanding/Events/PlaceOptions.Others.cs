using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>Places that no group says by itself.</content>
internal sealed partial class PlaceOptions
{
    // Part of a list: the end of it that is next to the event.
    private void AddParts(List<PlaceGroup> groups)
    {
        if (groups.FindLast(group => group.Next <= _event.First) is { } left)
        {
            AddParts(left, 0, left.Next, _event.First);
        }

        if (groups.Find(group => group.First >= _event.Next) is { } right)
        {
            AddParts(right, 1, _event.Next, right.First);
        }
    }

    private void AddParts(PlaceGroup group, int side, int low, int high)
    {
        for (var cut = 1; cut < group.Atoms.Count; cut++)
        {
            var places = (side == 0 ? group.Atoms.Skip(cut) : group.Atoms.Take(cut)).Aggregate(0L, (set, atom) => set | atom.Places);
            var far = Flag(scene.Events.Exists(other => other.Kind == _event.Kind && scene.InSentence(other.First, _event.First) && (side == 0 ? other.Next <= group.First : other.First >= group.Next)));
            if (For(places) is { } to)
            {
                to.Add(Feature.GroupCut, side);
                to.Add(Feature.GroupCut, side, group.Atoms[cut].Tie);
                to.Add(Feature.GroupCutFar, side, far);
                to.Add(Feature.GroupCutFar, side, far, group.Atoms[cut].Tie);
                to.Add(Feature.GroupCutBoundary, side, Kind, (int)Note.Between(low, high));
                to.Add(Feature.GroupCutSize, side, Math.Min(2, PlaceSets.Count(places)));
            }
        }
    }

    // As many values or conditions in a row as there are places: one for each, in order.
    private void AddSequence(List<PlaceGroup> groups)
    {
        var list = groups.FindLast(group => group.Places != 0 && group.Next <= _event.First);
        if (list is not null && PlaceSets.Count(list.Places) < 2)
        {
            return;
        }

        var from = list?.Next ?? 0;
        var until = groups.Find(group => group.First >= _event.Next)?.First ?? Note.Length;
        var row = scene.Events.Where(other => IsKin(other) && from <= other.First && other.First < until).ToList();
        var at = row.IndexOf(_event);
        IReadOnlyList<int> sequence = list?.Sequence ?? [.. Enumerable.Range(1, _check.Places)];
        if (row.Count != sequence.Count || at < 0)
        {
            return;
        }

        var listed = row.Zip(row.Skip(1)).All(pair => Note.Between(pair.First.Next, pair.Second.First) <= Boundary.Clause && pair.Second.First - pair.First.Next <= 2) ? 1 : 0;
        var to = For(PlaceSets.One(sequence[at]));
        to?.Add(Feature.Sequence, 0, listed, Math.Min(sequence.Count, 6));
        to?.Add(Feature.Sequence, 1, listed, Kind, Flag(list is not null));
        to?.Add(Feature.Sequence, 2, Kind);
        to?.Add(Feature.Sequence, 3, Flag(list is not null), Math.Min(sequence.Count, 6));
        to?.Add(Feature.Sequence, 4);
    }

    // The place after that of what was found last, in the order of a list or of the numbers.
    private void AddNext(List<PlaceGroup> groups)
    {
        var list = groups.FindLast(group => group.Places != 0 && group.Next <= _event.First && group.Sequence.Count > 1);
        IReadOnlyList<int> sequence = list?.Sequence ?? [.. Enumerable.Range(1, _check.Places)];
        var before = Found.All(_last).FirstOrDefault(found => found.Event.First < _event.First && found.Places != 0 && (list is null || found.Event.First >= list.Next));
        var at = before is null ? 0 : PlaceSets.Count(before.Places) == 1 ? sequence.ToList().IndexOf(PlaceSets.Of(before.Places).First()) + 1 : -1;
        if (at >= 0 && (before is null || at > 0) && at < sequence.Count && For(PlaceSets.One(sequence[at])) is { } to)
        {
            var (apart, close) = before is null ? (4, 0) : ((int)Note.Between(before.Event.Next, _event.First), Flag(_event.First - before.Event.Next <= 2));
            to.Add(Feature.NextInRow, Flag(list is not null), Flag(before is null), apart);
            to.Add(Feature.NextInRow, 2 + Flag(before is null), close, Kind, before is null ? -1 : (int)before.Event.Kind);
            to.Add(Feature.NextInRow, 4 + Flag(before is null), Note.ShapeAt(_event.First - 1));
        }
    }

    private bool IsKin(NoteEvent other) => other.Kind == _event.Kind
        || other.Kind is EventKind.Condition or EventKind.Answer && _event.Kind is EventKind.Condition or EventKind.Answer && other.Kind != EventKind.Value && other.Kind != EventKind.Action;

    // The places of what was found last, and of all that was found.
    private void AddRemembered(List<PlaceGroup> groups)
    {
        if (_last is not { } last)
        {
            return;
        }

        var placed = Found.All(_last).FirstOrDefault(found => found.Places != 0);
        if (placed is not null && For(placed.Places) is { } to)
        {
            var boundary = (int)Note.Between(placed.Event.Next, _event.First);
            var named = Flag(groups.Exists(group => placed.Event.Next <= group.First && group.Next <= _event.First));
            var same = Flag(placed.Claim.Check == _claim.Check);
            var kin = Flag(scene.Checks[placed.Claim.Check].NounStem == _check.NounStem);
            var right = groups.Find(group => group.First >= _event.Next);
            var near = Flag(right is not null && Note.Between(_event.Next, right.First) == Boundary.None);
            var refers = Flag(Note.Of(SpeechRole.Reference).Any(word => placed.Event.Next <= word.First && word.Next <= _event.Next + 3));
            to.Add(Feature.Remembered, boundary, named, Flag(placed == last));
            to.Add(Feature.RememberedKind, Kind, (int)placed.Event.Kind, Flag(placed == last));
            to.Add(Feature.RememberedSame, same, named, kin);
            to.Add(Feature.RememberedNear, near);
            to.Add(Feature.RememberedRefers, refers, boundary);
            to.Add(Feature.RememberedForm, _shortForm, boundary);
            to.Add(Feature.RememberedFormKind, Kind, _form, same);
            to.Add(Feature.RememberedWord, 0, Note.ShapeAt(_event.First - 1), boundary);
            to.Add(Feature.RememberedWord, 1, Note.ShapeAt(Note.ClauseFirst(_event.First)), boundary);
            to.Add(Feature.RememberedWord, 2, Note.ShapeAt(_event.Next), same);
            to.Add(Feature.RememberedCount, Math.Min(3, PlaceSets.Count(placed.Places)), Kind, Flag(_claim.Kind == FindingKind.Action));
        }

        var sets = Found.All(_last).Where(found => found.Places != 0).Select(found => found.Places).Distinct().ToList();
        if (sets.Count > 1 && For(sets.Aggregate(0L, (set, one) => set | one)) is { } union)
        {
            union.Add(Feature.RememberedAll);
            union.Add(Feature.RememberedAll, 1 + Kind, Anywhere(groups));
        }

        var mine = Found.All(_last).Where(found => found.Places != 0 && found.Claim.Check == _claim.Check).ToList();
        if (mine.Count > 1 && For(mine.Aggregate(0L, (set, one) => set | one.Places)) is { } ofCheck)
        {
            ofCheck.Add(Feature.RememberedOfCheck, Kind, Anywhere(groups));
        }
    }

    private void AddUnion(List<PlaceGroup> groups)
    {
        var sentence = groups.Where(group => group.Kind == Quantifier.Numbers && scene.InSentence(group.First, _event.First)).ToList();
        if (sentence.Count > 1 && For(sentence.Aggregate(0L, (set, group) => set | group.Places)) is { } to)
        {
            to.Add(Feature.Union);
            to.Add(Feature.Union, 1 + Kind, Math.Min(sentence.Count, 4));
        }
    }

    // Of so many: those found last, all that were found of the part, what is left, or numbers said before.
    private IEnumerable<(long Places, int Sense)> Counted(PlaceGroup group)
    {
        var kin = Found.All(_last).Where(found => found.Places != 0 && (found.Claim.Check == _claim.Check || scene.Checks[found.Claim.Check].NounStem == _check.NounStem)).ToList();
        var union = kin.Aggregate(0L, (set, found) => set | found.Places);
        var named = scene.Groups.Where(other => other.Kind is Quantifier.Numbers or Quantifier.Stretch && other.Next <= group.First).ToList();
        var sets = new List<(long Places, int Sense)>();
        if (group.Count == _check.Places && group.Kind != Quantifier.Rest)
        {
            return [(_all & ~Excepted(group), 4)];
        }

        sets.AddRange(Found.All(_last).Where(found => found.Places != 0).Take(4).Select((found, rank) => (found.Places, 5 + Math.Min(rank, 1))));
        sets.Add((union, 7));
        sets.Add((kin.Take(group.Count).Aggregate(0L, (set, found) => set | found.Places), 8));
        sets.Add((_all & ~union, 9));
        sets.AddRange(named.Select(other => (other.Places, 10)));
        sets.Add((_all & ~named.Aggregate(0L, (set, other) => set | other.Places), 11));
        return sets.Where(set => set.Places != 0 && PlaceSets.Count(set.Places) == group.Count).DistinctBy(set => set.Places).ToList();
    }

    private int Anywhere(List<PlaceGroup> groups) => groups.Exists(group => scene.InClause(group.First, _event.First)) ? 3
        : groups.Exists(group => scene.InSentence(group.First, _event.First)) ? 2
        : groups.Count > 0 ? 1 : 0;
}
