using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>The page that changes a proposal before it is confirmed.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Sheet">Its sheet.</param>
/// <param name="Note">The note, to play and read again.</param>
/// <param name="Card">The proposal, with its repeats.</param>
/// <param name="Unknown">Words heard that nothing explains, to be remembered; empty where there are none.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise. Fields: check, cylinder; for a reading
/// value, unit; for a bracket goes, stops, unit; for an observation condition, absent; for an action action;
/// to remember what was said, remember, phrase, meaning.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record ChangeView(
    VehicleState Vehicle,
    InspectionState Inspection,
    CheckSheet Sheet,
    WordedNote Note,
    ProposalCard Card,
    string Unknown,
    RefusedForm? Form,
    IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>Address of the bench as it was left, at this proposal.</summary>
    public required string Back { get; init; }

    /// <summary>What has to be answered before it is recorded; null where nothing has.</summary>
    public AskedNumber? Asked { get; init; }
}
