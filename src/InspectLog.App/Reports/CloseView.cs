using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>The page that closes an inspection.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Missing">Checks that still need a reason: field <c>reason-{check id}</c>.</param>
/// <param name="LooseEnds">Loose ends to tie (<c>tie-{sequence}</c>) or waive with a reason (<c>waive-{sequence}</c>).</param>
/// <param name="OpenProposals">Proposals nobody has settled; they stay as they are.</param>
/// <param name="Waiting">Recordings not yet transcribed.</param>
/// <param name="Shown">What the page shows of the inspection, as the form sends it back in <c>seen</c>.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record CloseView(
    VehicleState Vehicle,
    InspectionState Inspection,
    IReadOnlyList<CheckLine> Missing,
    IReadOnlyList<LooseEnd> LooseEnds,
    int OpenProposals,
    int Waiting,
    ShownInspection Shown,
    RefusedForm? Form,
    IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>The loose ends as they are put right: those of one part together, which <c>tie-all</c> does with their
    /// sequences, parted by spaces.</summary>
    public required IReadOnlyList<LooseEndGroup> Ends { get; init; }

    /// <summary>Whether the record can be sealed after closing: field <c>seal</c>.</summary>
    public bool MaySeal { get; init; }
}
