using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>Places that a group of the note says.</content>
internal sealed partial class PlaceOptions
{
    private const int WordsTried = 7;

    private void AddGroups(List<PlaceGroup> groups)
    {
        var excepted = Flag(groups.Exists(group => group.Excepted));
        var left = groups.Where(group => group.Next <= _event.First).Reverse().Take(GroupsTried).ToList();
        var right = groups.Where(group => group.First >= _event.Next).Take(GroupsTried).ToList();
        for (var rank = 0; rank < left.Count; rank++)
        {
            var other = right.Count > 0 ? (int)Note.Between(_event.Next, right[0].First) : 5;
            AddGroup(left[rank], 0, rank, left[rank].Next, _event.First, other, excepted);
        }

        for (var rank = 0; rank < right.Count; rank++)
        {
            var other = left.Count > 0 ? (int)Note.Between(left[0].Next, _event.First) : 5;
            AddGroup(right[rank], 1, rank, _event.Next, right[rank].First, other, excepted);
        }

        foreach (var group in groups.Where(group => group.First < _event.Next && group.Next > _event.First))
        {
            AddGroup(group, 2, 0, _event.First, _event.First, 5, excepted);
        }
    }

    private void AddGroup(PlaceGroup group, int side, int rank, int low, int high, int other, int excepted)
    {
        foreach (var (places, sense) in Senses(group))
        {
            if (For(places) is { } to)
            {
                AddGroup(to, group, side * 4 + rank, side, low, high, other, excepted, sense);
            }
        }
    }

    private void AddGroup(FeatureList to, PlaceGroup group, int key, int side, int low, int high, int other, int excepted, int sense)
    {
        var boundary = (int)Note.Between(low, high);
        var (events, same) = (0, 0);
        NoteEvent? far = null;
        foreach (var one in scene.Events)
        {
            if (one == _event || one.Kind == EventKind.Again)
            {
                continue;
            }

            if (one.Kind != EventKind.Answer && low <= one.First && one.First < high)
            {
                events++;
                same += Flag(one.Kind == _event.Kind);
            }

            if (one.Kind != EventKind.Answer && (side == 0 ? one.Next <= group.First : one.First >= group.Next && far is null))
            {
                far = one;
            }
        }

        var farBoundary = far is null ? 5 : (int)(side == 0 ? Note.Between(far.Next, group.First) : Note.Between(group.Next, far.First));
        var used = Flag(Found.All(_last).Any(found => found.Places == group.Places));
        var (quantified, taken, kind) = (Flag(group.IsQuantified), Flag(group.Excepted), (int)group.Kind);
        var part = group.Part is null ? 0 : group.IsOf(_check.Index) ? 1 : 2;
        to.Add(Feature.GroupCorrected, side, Flag(scene.HasBetween(SpeechRole.Correction, low, high)), Flag(scene.HasBetween(SpeechRole.Retraction, low, high)), boundary);
        to.Add(Feature.GroupCheck, kind, side, _check.Shape, Flag(_claim.Negated));
        to.Add(Feature.GroupExcepted, key, quantified, taken, excepted);
        to.Add(Feature.GroupExcepted, 20 + side, quantified, excepted);
        to.Add(Feature.GroupKind, key, kind, sense);
        to.Add(Feature.GroupBoundary, key, boundary, Kind);
        to.Add(Feature.GroupUsed, key, used, boundary);
        to.Add(Feature.GroupDistance, side, NoteScene.Bucket(high - low));
        to.Add(Feature.GroupEvents, key, Math.Min(events, 2), Kind);
        to.Add(Feature.GroupBetween, key, boundary * 8 + other, Math.Min(events, 1), farBoundary, Kind);
        to.Add(Feature.GroupSame, key, Math.Min(same, 2), boundary);
        to.Add(Feature.GroupBefore, side, Note.ShapeAt(group.First - 1));
        to.Add(Feature.GroupPart, key, part);
        to.Add(Feature.GroupPartBoundary, side, part, boundary, Math.Min(events, 1));
        to.Add(Feature.GroupTaken, key, taken);
        to.Add(Feature.GroupFar, key, farBoundary, boundary);
        to.Add(Feature.GroupFar, 20 + key, farBoundary, Kind);
        to.Add(Feature.GroupUsedKind, side, used, kind);
        to.Add(Feature.GroupBetweenWords, key, Note.Words(low, high));
        to.Add(Feature.GroupAfter, side, Note.ShapeAt(group.Next));
        to.Add(Feature.GroupAround, side, Note.ShapeAt(group.First - 1), Note.ShapeAt(group.Next));
        AddBetween(to, side, low, high);
        if (group.IsQuantified)
        {
            to.Add(Feature.GroupWord, side, Note.Word(group.First), Note.Word(group.Next - 1), boundary);
            to.Add(Feature.GroupWord, 4 + Kind, Note.Word(group.First), Note.Word(group.Next - 1), Flag(_last is { Places: not 0 }));
        }

        if (_event.Kind == EventKind.Answer)
        {
            to.Add(Feature.GroupAnswer, (int)_event.Role, key, boundary);
            to.Add(Feature.GroupAnswer, (int)_event.Role, 20 + side, taken);
        }
    }

    // The words between, one by one, those next to the event first.
    private void AddBetween(FeatureList to, int side, int low, int high)
    {
        var (first, next) = side == 0 ? (Math.Max(low, high - WordsTried), high) : (low, Math.Min(high, low + WordsTried));
        for (var at = first; at < next; at++)
        {
            if (Note.Shape[at] is not WordIds.None and var word)
            {
                to.Add(Feature.GroupBetweenWord, side, word);
            }
        }
    }

    // What a group can mean: the rest is what was not named of this check, or of all.
    private IEnumerable<(long Places, int Sense)> Senses(PlaceGroup group)
    {
        if (group.Count > 0)
        {
            foreach (var sense in Counted(group))
            {
                yield return sense;
            }

            yield break;
        }

        if (group.Kind == Quantifier.Rest)
        {
            var (used, ofCheck) = (0L, 0L);
            foreach (var found in Found.All(_last))
            {
                used |= found.Places;
                ofCheck |= found.Claim.Check == _claim.Check || scene.Checks[found.Claim.Check].NounStem == _check.NounStem ? found.Places : 0;
            }

            var named = scene.Groups.Where(other => other.Kind is Quantifier.Numbers or Quantifier.Stretch).Aggregate(0L, (set, other) => set | other.Places);
            var first = ofCheck != 0 && ofCheck != _all ? ofCheck : used != 0 && used != _all ? used : named;
            yield return (_all & ~first, 1);
            if (named != first && named != 0 && named != _all)
            {
                yield return (_all & ~named, 2);
            }

            yield break;
        }

        if (group.Kind is Quantifier.All or Quantifier.None or Quantifier.Odd or Quantifier.Even)
        {
            var but = Excepted(group);
            yield return (group.Places & _all & ~but, but == 0 ? 0 : 3);
            yield break;
        }

        yield return (group.Kind == Quantifier.Stretch ? group.Places & _all : group.Places, 0);
    }

    // What is taken out after a group: "all of them but three".
    private long Excepted(PlaceGroup group) =>
        scene.Groups.Find(other => other.Excepted && other.First > group.First && other.Kind == Quantifier.Numbers && scene.InSentence(other.First, group.First))?.Places ?? 0;
}
