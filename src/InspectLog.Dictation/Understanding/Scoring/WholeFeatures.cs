using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>What speaks for a reading of a whole note: how likely its choices were, what it leaves unused, and how its
/// findings go together.</summary>
internal sealed partial class WholeFeatures
{
    private const double MostTalk = 5;

    private readonly RealFeatures _to = new();
    private readonly NoteScene _scene;
    private readonly Note _note;
    private readonly List<Found> _found;

    private WholeFeatures(Interpretation reading)
    {
        (_scene, _note) = (reading.Scene, reading.Scene.Note);
        _found = [.. Found.All(reading.Found).Reverse()];
        AddChoices(reading.State);
    }

    public static RealFeatures Of(Interpretation reading)
    {
        var whole = new WholeFeatures(reading);
        if (whole._found.Count == 0)
        {
            whole.AddEmpty();
        }
        else
        {
            whole.AddFound();
            whole.AddUnused();
            whole.AddClauses();
            whole.AddFollowing();
            for (var at = 0; at < whole._found.Count; at++)
            {
                whole.AddOne(whole._found[at]);
                for (var later = at + 1; later < whole._found.Count; later++)
                {
                    whole.AddPair(whole._found[at], whole._found[later]);
                }
            }
        }

        return whole._to;
    }

    private double Talk => Math.Clamp(_note.Talk, -MostTalk, MostTalk);

    private void AddChoices(ReadingState state)
    {
        var least = 0.0;
        _to.Add(Feature.WholeLog, state.LogProbability);
        for (var decision = state.Last; decision is not null; decision = decision.Before)
        {
            least = Math.Min(least, decision.LogProbability);
            _to.Add(Feature.WholeLogOf, decision.LogProbability, (int)decision.Kind, decision.EventKind);
            _to.Add(Feature.WholeLogOf, decision.LogProbability, (int)decision.Kind, -2);
        }

        _to.Add(Feature.WholeLeast, least);
    }

    private void AddEmpty()
    {
        _to.Has(Feature.Empty);
        _to.Add(Feature.EmptyTalk, Talk);
        _to.Has(Feature.EmptyTalkStep, (int)Math.Round(Talk));
        _to.Has(Feature.EmptySubject, Flag(_note.Names.Exists(name => name.Meanings.Any(naming => naming.Subject))));
        _to.Has(Feature.EmptyUnknown, Math.Min(3, Unknown(_ => true)));
        _to.Has(Feature.EmptyOpen, Flag(_note.Open is not null));
        _to.Has(Feature.EmptyLength, Math.Min(5, _note.Length / 4));
        _to.Has(Feature.EmptyEvents, Math.Min(3, _scene.Events.Count(one => one.Kind is EventKind.Value or EventKind.Condition)));
        foreach (var role in Enum.GetValues<SpeechRole>().Where(role => _note.Of(role).Count > 0))
        {
            _to.Has(Feature.EmptyRole, (int)role);
        }
    }

    private void AddFound()
    {
        _to.Has(Feature.FoundCount, Math.Min(_found.Count, 4));
        _to.Add(Feature.FoundAll, _found.Count);
        foreach (var kind in _found.Select(found => (int)found.Event.Kind).Distinct())
        {
            _to.Has(Feature.FoundKind, kind);
            _to.Add(Feature.FoundTalk, Talk, kind);
        }
    }

    private void AddUnused()
    {
        var events = _found.Select(found => found.Event).ToHashSet();
        foreach (var one in _scene.Events.Where(one => one.Kind is EventKind.Value or EventKind.Condition or EventKind.Action && !events.Contains(one)))
        {
            if (one.Kind != EventKind.Value || !_found.Exists(found => found.Claim.Bracket is not null))
            {
                _to.Has(Feature.UnusedEvent, (int)one.Kind, Where(one.First));
            }
        }

        var places = _found.Aggregate(0L, (set, found) => set | found.Places);
        foreach (var group in _scene.Groups)
        {
            if (group.Kind is Quantifier.Numbers or Quantifier.Stretch)
            {
                AddPlacesHere(group);
            }

            if (group.Kind == Quantifier.Numbers && (group.Places & ~places) != 0)
            {
                _to.Has(Feature.UnusedPlace, Where(group.First), Flag(group.Excepted));
            }
            else if (group.IsQuantified && group.Places != 0 && group.Count == 0 && !_found.Exists(found => found.Places != 0 && (group.Kind == Quantifier.Rest || PlaceSets.Count(found.Places) >= PlaceSets.Count(group.Places) - 1)))
            {
                _to.Has(Feature.UnusedQuantifier, (int)group.Kind);
            }
        }

        foreach (var number in _scene.Segments.Where(number => number.Role == NumberRole.Other && number.Form is not (NumberForm.Ordinal or NumberForm.Alike)))
        {
            _to.Has(Feature.UnusedNumber, Where(number.First), Flag(number.Units is not null));
        }

        var checks = _found.Select(found => found.Claim.Check).ToHashSet();
        foreach (var name in _note.Names.Where(name => !name.Meanings.Any(naming => checks.Contains(naming.Check))))
        {
            _to.Has(Feature.UnusedName, Flag(name.Meanings.Any(naming => naming.Subject)), Where(name.First));
        }

        foreach (var check in checks)
        {
            _to.Has(Feature.FoundNaming, NamingOf(check));
        }

        _to.Has(Feature.FoundChecks, Math.Min(3, checks.Count));
    }

    // Whether what is said beside a place is said of it.
    private void AddPlacesHere(PlaceGroup group)
    {
        var here = _found.Where(found => found.Places != 0 && _scene.InClause(found.Event.First, group.First)).Aggregate(0L, (set, found) => set | found.Places);
        var near = _found.Where(found => found.Places != 0 && _scene.InSentence(found.Event.First, group.First)).Aggregate(0L, (set, found) => set | found.Places);
        var used = here == 0 ? 0 : (group.Places & ~here) == 0 ? 2 : 1;
        _to.Has(Feature.UnusedPlaceHere, used, near == 0 ? 0 : (group.Places & ~near) == 0 ? 2 : 1, Flag(group.Excepted));
    }

    private int NamingOf(int check) => _note.Names.Exists(name => Evidence.KindOf(name, check) == true) ? 3
        : _note.Names.Exists(name => Evidence.KindOf(name, check) is not null) ? 2
        : _note.Open?.Index == check ? 1 : 0;

    // In a clause with a finding, in a sentence with one, or elsewhere.
    private int Where(int at) => _found.Exists(found => _scene.InClause(found.Event.First, at)) ? 2
        : _found.Exists(found => _scene.InSentence(found.Event.First, at)) ? 1 : 0;

    private int Unknown(Func<int, bool> where)
    {
        var count = 0;
        for (var at = 0; at < _note.Length; at++)
        {
            count += _note.IsUnknown(at) && where(at) ? 1 : 0;
        }

        return count;
    }

    private void AddOne(Found found)
    {
        var kind = (int)found.Event.Kind;
        var count = PlaceSets.Count(found.Places);
        var placed = count == 0 ? 0 : count == 1 ? 1 : found.Places == PlaceSets.All(_scene.Checks[found.Claim.Check].Places) ? 3 : 2;
        _to.Has(Feature.OnePlaces, kind, placed, Flag(_scene.Checks[found.Claim.Check].PerPlace));
        if (found.Claim.Kind == FindingKind.Reading && count > 1 && _scene.Groups.Count == 0)
        {
            _to.Has(Feature.OneSpread);
        }

        _to.Has(Feature.OneUnknown, kind, Math.Min(3, Unknown(at => _scene.InClause(at, found.Event.First))));
        _to.Add(Feature.OneTalk, Math.Clamp(_note.TalkOf(found.Event.First), -MostTalk, MostTalk), kind);
        var named = _note.Names.Any(name => Evidence.KindOf(name, found.Claim.Check) is not null && _scene.InClause(name.First, found.Event.First));
        _to.Has(Feature.OneNamed, kind, Flag(named));
    }

    private static int Flag(bool it) => it ? 1 : 0;
}
