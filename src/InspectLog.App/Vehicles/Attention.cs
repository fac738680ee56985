using InspectLog.App.Wear;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>What on a vehicle waits for somebody. Pure.</summary>
public static class Attention
{
    /// <summary>Each thing in a few words: what is open in the inspection first, then the parts that are due.</summary>
    public static IReadOnlyList<string> Of(VehicleState vehicle, SheetLibrary sheets, DateOnly today) =>
    [
        .. vehicle.OpenInspection is { } open ? In(open) : [],
        .. WearLine.Of(vehicle, sheets, today).Select(line => WearWords.Attention(line.Part, line.Due)).OfType<string>(),
    ];

    private static IReadOnlyList<string> In(InspectionState inspection)
    {
        var open = ProposalGroups.OpenIn(inspection).ToList();
        var doubts = open.Count(group => group.Any(proposal => proposal.Finding.Doubts.Count > 0));
        var plain = open.Count - doubts;
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
