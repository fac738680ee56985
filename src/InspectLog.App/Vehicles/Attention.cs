using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>What on a vehicle waits for somebody. Pure.</summary>
public static class Attention
{
    public static IReadOnlyList<string> Of(VehicleState vehicle)
    {
        if (vehicle.OpenInspection is not { } inspection)
        {
            return [];
        }

        var proposals = inspection.VoiceNotes
            .SelectMany(note => note.Proposals ?? [])
            .Where(proposal => proposal.State == ProposalState.Open)
            .ToList();
        var doubts = proposals.Count(proposal => proposal.Finding.Doubt is not null);
        var plain = proposals.Count - doubts;
        return
        [
            .. Some(doubts, "doubt to settle", "doubts to settle"),
            .. Some(plain, "finding to confirm", "findings to confirm"),
            .. inspection.OpenLooseEnds.Select(end => end.What.Text),
        ];
    }

    private static IEnumerable<string> Some(int count, string one, string many) =>
        count == 0 ? [] : [$"{count} {(count == 1 ? one : many)}"];
}
