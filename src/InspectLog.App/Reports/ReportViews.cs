using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Reports;

/// <summary>The condition report of one inspection.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Sheet">Its sheet.</param>
/// <param name="Summary">Three sentences.</param>
/// <param name="Failed">Checks that failed.</param>
/// <param name="Doubtful">Checks that are doubtful.</param>
/// <param name="Passed">Checks that pass or are good.</param>
/// <param name="Recorded">Checks recorded without limits to decide against.</param>
/// <param name="NotDone">Checks left out, with reasons, or not done.</param>
/// <param name="Replaced">What was replaced, cleaned or adjusted, each a short phrase.</param>
/// <param name="Instruments">Instruments used.</param>
/// <param name="InUse">The workshop's instruments, for ranges that would do better.</param>
/// <param name="Notes">Typed notes and the words of voice notes that gave no finding.</param>
/// <param name="HeadHash">Hash of the journal's last entry.</param>
/// <param name="Entries">How many entries the journal has.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record ReportView(
    VehicleState Vehicle,
    InspectionState Inspection,
    CheckSheet Sheet,
    IReadOnlyList<string> Summary,
    IReadOnlyList<ReportCheck> Failed,
    IReadOnlyList<ReportCheck> Doubtful,
    IReadOnlyList<ReportCheck> Passed,
    IReadOnlyList<ReportCheck> Recorded,
    IReadOnlyList<ReportCheck> NotDone,
    IReadOnlyList<string> Replaced,
    IReadOnlyList<Instrument> Instruments,
    IReadOnlyList<Instrument> InUse,
    IReadOnlyList<string> Notes,
    string HeadHash,
    long Entries,
    IReadOnlyList<GarageProblem> Problems);

/// <summary>A check in the report.</summary>
/// <param name="Check">The check.</param>
/// <param name="Progress">Where it stands, with its places.</param>
/// <param name="Limits">Limits in force; null when there are none.</param>
/// <param name="Photos">Its photos.</param>
/// <param name="Reason">Why it was left out; null otherwise.</param>
public sealed record ReportCheck(
    Check Check, CheckProgress Progress, LimitsInForce? Limits, IReadOnlyList<PhotoCapture> Photos, string? Reason);

/// <summary>The page that closes an inspection.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Missing">Checks that still need a reason: field <c>reason-{check id}</c>.</param>
/// <param name="LooseEnds">Loose ends to tie (<c>tie-{sequence}</c>) or waive with a reason (<c>waive-{sequence}</c>).</param>
/// <param name="OpenProposals">Proposals nobody has settled; they stay as they are.</param>
/// <param name="Waiting">Recordings not yet transcribed.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record CloseView(
    VehicleState Vehicle,
    InspectionState Inspection,
    IReadOnlyList<CheckLine> Missing,
    IReadOnlyList<LooseEnd> LooseEnds,
    int OpenProposals,
    int Waiting,
    RefusedForm? Form,
    IReadOnlyList<GarageProblem> Problems);
