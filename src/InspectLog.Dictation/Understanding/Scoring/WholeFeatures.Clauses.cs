using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <content>What each clause has, and what is made of it; how one finding leads to the next.</content>
internal sealed partial class WholeFeatures
{
    private void AddClauses()
    {
        for (var first = 0; first < _note.Length;)
        {
            var next = first + 1;
            while (next < _note.Length && _note.ClauseOf(next) == _note.ClauseOf(first))
            {
                next++;
            }

            AddClause(first, next);
            first = next;
        }
    }

    private void AddClause(int first, int next)
    {
        var has = Flag(_note.Names.Exists(name => first <= name.First && name.First < next)) + 2 * Flag(_scene.Groups.Exists(group => first <= group.First && group.First < next));
        var said = 0;
        foreach (var one in _scene.Events.Where(one => first <= one.First && one.First < next))
        {
            said |= one.Kind switch { EventKind.Value => 1, EventKind.Condition => 2, EventKind.Action => 4, _ => 8 };
        }

        var found = Math.Min(2, _found.Count(one => first <= one.Event.First && one.Event.First < next));
        _to.Has(Feature.ClauseUse, has, said, found);
        if (said != 0)
        {
            _to.Has(Feature.ClauseWord, _note.ShapeAt(first), Math.Min(1, found));
            _to.Has(Feature.ClauseWord, _note.ShapeAt(first), _note.ShapeAt(first + 1), 2 + Math.Min(1, found));
        }
    }

    private void AddFollowing()
    {
        for (var at = 1; at < _found.Count; at++)
        {
            var (one, other) = (_found[at - 1], _found[at]);
            var places = one.Places == other.Places ? one.Places == 0 ? 0 : 1
                : one.Places == 0 ? 2 : other.Places == 0 ? 3 : (one.Places & other.Places) == 0 ? 4 : (one.Places & ~other.Places) == 0 ? 5 : (other.Places & ~one.Places) == 0 ? 6 : 7;
            var same = Flag(one.Claim.Check == other.Claim.Check);
            var kinds = (int)one.Claim.Kind * 4 + (int)other.Claim.Kind;
            var boundary = (int)_note.Between(one.Event.Next, other.Event.First);
            _to.Has(Feature.FollowPlace, places, same, kinds, boundary);
            _to.Has(Feature.FollowWord, places, same, kinds, _note.ShapeAt(other.Event.First - 1));
            _to.Has(Feature.FollowWord, places, same, -1, _note.ShapeAt(_note.ClauseFirst(other.Event.First)));
            _to.Has(Feature.FollowWord, places, same, -2, _note.Words(one.Event.Next, other.Event.First));
            if (places == 4 && PlaceSets.Count(one.Places) == 1 && PlaceSets.Count(other.Places) == 1)
            {
                var step = PlaceSets.Of(other.Places).First() - PlaceSets.Of(one.Places).First();
                _to.Has(Feature.FollowStep, Math.Clamp(step, -2, 2), same, kinds, boundary);
            }
        }

        foreach (var found in _found.Where(found => found.Places != 0))
        {
            AddSaidPlaces(found);
        }
    }

    // How near the places of a finding are said, and whether others are said nearer.
    private void AddSaidPlaces(Found found)
    {
        var left = _scene.Groups.FindLast(group => group.Next <= found.Event.First && group.Kind is Quantifier.Numbers or Quantifier.Stretch);
        var right = _scene.Groups.Find(group => group.First >= found.Event.Next && group.Kind is Quantifier.Numbers or Quantifier.Stretch);
        _to.Has(
            Feature.OneSaid,
            (int)found.Event.Kind,
            How(left, found) + (left is null ? 0 : 8 * (1 + (int)_note.Between(left.Next, found.Event.First))),
            How(right, found) + (right is null ? 0 : 8 * (1 + (int)_note.Between(found.Event.Next, right.First))));
    }

    private static int How(PlaceGroup? group, Found found) => group is null ? 0 : group.Excepted ? 1 : group.Places == found.Places ? 2 : (group.Places & found.Places) != 0 ? 3 : 4;
}
