using InspectLog.Inspecting.Recording;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Proposals;

/// <summary>Where a person stands by what was found last: a photo taken then belongs there.</summary>
/// <param name="Note">Sequence of the note that says it, or of the record made by hand.</param>
/// <param name="Check">Id of its check.</param>
/// <param name="Cylinder">The place; null where it was not said, or the check is done once.</param>
/// <param name="Shows">What a photo of it shows: the record where it is confirmed, else the note.</param>
public sealed record SpokenPlace(long Note, string Check, int? Cylinder, long Shows)
{
    /// <summary>The place of the newest note that says a finding which was not dropped, or of the newest record made by
    /// hand; null where there is none. Of a note that says several it is the last. Pure.</summary>
    public static SpokenPlace? Newest(BenchScene scene) =>
        new[] { Said(scene), ByHand(scene) }.OfType<SpokenPlace>().MaxBy(place => place.Note);

    private static SpokenPlace? Said(BenchScene scene) =>
        scene.Inspection.WordedNotes.Reverse()
            .SelectMany(note => (note.Proposals ?? []).Reverse().Select(proposal => Of(scene, note, proposal)))
            .FirstOrDefault(place => place is not null);

    /// <summary>What was recorded in one press for several places says none of them: that is asked.</summary>
    private static SpokenPlace? ByHand(BenchScene scene)
    {
        var made = scene.Inspection.Everything
            .Where(kept => kept is not Capture && kept.History is { Withdrawn: null, IsLater: false }
                && InspectionState.SourcesOf(kept.Says).Count == 0)
            .ToList();
        if (made.Count == 0 || PhotoEvidence.PlaceOf(made[^1].Says) is not { Check: { } check } place)
        {
            return null;
        }

        var isOne = made.Count(kept => kept.Time == made[^1].Time && PhotoEvidence.PlaceOf(kept.Says)?.Check == check) == 1;
        return new(made[^1].Sequence, check, isOne ? place.Cylinder : null, made[^1].Sequence);
    }

    private static SpokenPlace? Of(BenchScene scene, WordedNote note, Proposal proposal)
    {
        if (proposal.State == ProposalState.Open)
        {
            var (check, cylinder) = (proposal.Finding.Check, proposal.Finding.Cylinder);
            return scene.Sheet.Find(check) is null
                ? null
                : new(note.Sequence, check, PhotoMending.PlaceOr(scene, check, cylinder), note.Sequence);
        }

        return scene.Inspection.RecordsOf(proposal.Reference).LastOrDefault() is { } record
            && PhotoEvidence.PlaceOf(record.Says) is { Check: { } recordedFor } place
            ? new(note.Sequence, recordedFor, place.Cylinder, record.Sequence)
            : null;
    }
}
