using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Saying;

/// <summary>Takes a guessed place from a reading. A value recorded at the wrong place is worse than one whose place is asked for,
/// so the place has to have been said: beside the value, or of the same part before.</summary>
internal static class PlacesSaid
{
    /// <summary>The findings, readings without the places that only the likelihood gave them.</summary>
    public static IReadOnlyList<Belief> Of(Outcome outcome) =>
        [.. outcome.Beliefs.Select(belief => IsGuessed(outcome, belief) ? belief with { Place = 0 } : belief)];

    private static bool IsGuessed(Outcome outcome, Belief belief)
    {
        if (belief.Claim.Kind != FindingKind.Reading || belief.Place == 0 || belief.Found.Places != PlaceSets.One(belief.Place))
        {
            return false;
        }

        var scene = outcome.Reading.Scene;
        var check = scene.Checks[belief.Claim.Check];
        if (DoubtReasons.IsPlaceImplied(scene, belief))
        {
            // A value for each place, in order, says where each of them is.
            return outcome.Beliefs.Count(other => other.Claim.Kind == FindingKind.Reading && other.Claim.Check == belief.Claim.Check) < check.Places;
        }

        return !scene.Groups
            .Where(group => group.Count > 0 || (group.Places & PlaceSets.One(belief.Place)) != 0)
            .Any(group => scene.InSentence(group.First, belief.Found.Event.First)
                || scene.Note.Names.Exists(name => scene.InSentence(name.First, group.First) && Evidence.KindOf(name, check.Index) is not null)
                || outcome.Beliefs.Any(other => scene.InSentence(other.Found.Event.First, group.First) && AreOfOnePart(scene.Checks[other.Claim.Check], check)));
    }

    private static bool AreOfOnePart(CheckEntry one, CheckEntry other) =>
        one == other || one.Check.Parts.Intersect(other.Check.Parts).Any();
}
