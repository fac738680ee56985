using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>Places that were spoken of before, and what was said of them.</content>
internal sealed partial class PlaceOptions
{
    private const int EarlierTried = 3;

    // Those that something is wrong with, those of which the same was said, and those named before the last.
    private void AddAntecedents(List<PlaceGroup> groups)
    {
        var placed = Found.All(_last).Where(found => found.Places != 0 && (found.Places & ~_all) == 0).ToList();
        if (placed.Count == 0)
        {
            return;
        }

        var (points, anywhere) = (Pointing(), Anywhere(groups));
        var kin = placed.Where(found => found.Claim.Check == _claim.Check || scene.Checks[found.Claim.Check].NounStem == _check.NounStem).ToList();
        AddAntecedent(Feature.Troubled, kin.Where(IsTrouble).Take(1), points, anywhere);
        AddAntecedent(Feature.Troubled, kin.Where(IsTrouble), 8 + points, anywhere);
        AddAntecedent(Feature.SameClaim, placed.TakeWhile(found => found.Claim.Kind == placed[0].Claim.Kind && found.Claim.Condition == placed[0].Claim.Condition
            && found.Claim.Action == placed[0].Claim.Action && found.Claim.Negated == placed[0].Claim.Negated && found.Claim.Check == placed[0].Claim.Check), points, anywhere);
        var rank = 0;
        foreach (var earlier in placed.DistinctBy(found => found.Places).Skip(1).Take(EarlierTried))
        {
            AddAntecedent(Feature.Earlier, [earlier], points * 4 + rank++, anywhere);
        }
    }

    private void AddAntecedent(Feature feature, IEnumerable<Found> of, int points, int anywhere)
    {
        var (places, apart) = (0L, 0);
        foreach (var found in of)
        {
            apart = places == 0 ? (int)Note.Between(found.Event.Next, _event.First) : apart;
            places |= found.Places;
        }

        if (places != 0 && For(places) is { } to)
        {
            to.Add(feature, Kind, points, apart);
            to.Add(feature, Kind, 100 + anywhere, Flag(_claim.Kind == FindingKind.Action));
            to.Add(feature, -1, points, anywhere, Math.Min(3, PlaceSets.Count(places)));
        }
    }

    private bool IsTrouble(Found found) => found.Claim is { Kind: FindingKind.Observation } claim
        && (scene.Checks[claim.Check].Check.Conditions[claim.Condition].Meaning == ConditionMeaning.Good) == claim.Negated;

    // How the words beside the event point back: a word of reference before it, after it, or none.
    private int Pointing() => Note.Of(SpeechRole.Reference).Any(word => word.First >= _event.Next && word.First - _event.Next <= 2) ? 2
        : Note.Of(SpeechRole.Reference).Any(word => word.Next <= _event.First && _event.First - word.Next <= 3) ? 1 : 0;

    // As many values in a row as places were spoken of before: "both replaced, now 8.4 and 9.0".
    private void AddParallel(List<PlaceGroup> groups)
    {
        var row = scene.Events.Where(other => IsKin(other) && scene.InSentence(other.First, _event.First)).ToList();
        var at = row.IndexOf(_event);
        if (at < 0 || row.Count < 2 || row.Count > _check.Places || groups.Exists(group => group.Kind == Quantifier.Numbers && group.First >= row[0].First && group.First < row[^1].Next))
        {
            return;
        }

        foreach (var (places, options) in row.Zip(row.Skip(1)).All(pair => pair.Second.First - pair.First.Next <= 2) ? _options : [])
        {
            options.Add(Feature.Parallel, 12, Kind, Math.Min(PlaceSets.Count(places), 2), Flag(PlaceSets.Count(places) == row.Count));
        }

        var sets = scene.Groups.Where(group => group.Next <= row[0].First && group.Sequence.Count == row.Count && PlaceSets.Count(group.Places) == row.Count).Reverse().Select(group => group.Sequence)
            .Concat(Found.All(_last).Where(found => found.Event.First < row[0].First && PlaceSets.Count(found.Places) == row.Count).Select(found => (IReadOnlyList<int>)[.. PlaceSets.Of(found.Places)]))
            .Append([.. Found.All(_last).Where(found => found.Event.First < row[0].First && PlaceSets.Count(found.Places) == 1).Select(found => PlaceSets.Of(found.Places).First()).Distinct().Take(row.Count).Reverse()]);
        var rank = 0;
        foreach (var set in sets.Where(set => set.Count == row.Count).DistinctBy(set => set[at]).Take(2))
        {
            var to = For(PlaceSets.One(set[at]));
            to?.Add(Feature.Parallel, rank, Kind, Flag(row.Count == 2));
            to?.Add(Feature.Parallel, 4 + rank, at == 0 ? 0 : (int)Note.Between(row[at - 1].Next, _event.First), at == 0 ? -1 : Note.ShapeAt(_event.First - 1));
            to?.Add(Feature.Parallel, 8, Flag(at > 0 && _last is { } last && last.Event == row[at - 1] && PlaceSets.Count(last.Places) == 1), at == 0 ? 0 : 1);
            rank++;
        }
    }

    // What was found of the same places already: the same, its contrary, something else, another value.
    private void AddSaid()
    {
        foreach (var (places, to) in _options)
        {
            var (same, opposed, other) = (0, 0, 0);
            foreach (var found in Found.All(_last))
            {
                if (found.Claim.Check != _claim.Check || found.Claim.Kind != _claim.Kind)
                {
                    continue;
                }

                var overlap = found.Places == places ? 2 : (found.Places & places) != 0 ? 1 : 0;
                ref var how = ref found.Claim == _claim ? ref same : ref _claim.Kind == FindingKind.Observation && Clash(found.Claim) ? ref opposed : ref other;
                how = Math.Max(how, overlap);
            }

            to.Add(Feature.PlaceSaid, Kind, (int)_claim.Kind, same);
            to.Add(Feature.PlaceOpposed, Kind, opposed, Flag(_claim.Negated));
            to.Add(Feature.PlaceOther, Kind, (int)_claim.Kind, other);
        }
    }

    // One says that it is as it should be, and one that it is not.
    private bool Clash(Claim other) => other.Condition == _claim.Condition ? other.Negated != _claim.Negated : IsGood(other) != IsGood(_claim);

    private bool IsGood(Claim claim) => (scene.Checks[claim.Check].Check.Conditions[claim.Condition].Meaning == ConditionMeaning.Good) != claim.Negated;
}
