using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Everything the bench shows: one inspection with one check open.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Sheet">Its sheet.</param>
/// <param name="Lines">The sheet's checks with where they stand, in order.</param>
/// <param name="Open">The check that is open.</param>
/// <param name="Captures">The stream, newest first.</param>
/// <param name="Speech">Whether dictation can be transcribed now.</param>
/// <param name="Form">The form that was refused, with its errors; null when none was.</param>
/// <param name="Question">A typed number that could mean two things; null when there is none.</param>
/// <param name="Problems">Trouble with the garage, for a banner.</param>
public sealed record BenchView(
    VehicleState Vehicle,
    InspectionState Inspection,
    CheckSheet Sheet,
    IReadOnlyList<CheckLine> Lines,
    OpenCheck Open,
    IReadOnlyList<CaptureView> Captures,
    SpeechReadiness Speech,
    RefusedForm? Form,
    NumberQuestion? Question,
    IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>Base address of the inspection's pages.</summary>
    public string Address => Links.Inspection(Vehicle.Id, Inspection.Number);

    /// <summary>Open loose ends, oldest first.</summary>
    public IReadOnlyList<LooseEnd> LooseEnds { get; } = [.. Inspection.OpenLooseEnds];

    /// <summary>How many checks are neither decided nor left out.</summary>
    public int ChecksToDo => Lines.Count(line => line.Progress.Standing is CheckStanding.NotDone or CheckStanding.Captured);
}

/// <summary>A check in the list.</summary>
public sealed record CheckLine(Check Check, CheckProgress Progress, bool IsOpen);

/// <summary>The open check.</summary>
/// <param name="Check">The check.</param>
/// <param name="Position">Its position in the sheet, from 1.</param>
/// <param name="Progress">Where it stands, with its places.</param>
/// <param name="Limits">The limits in force; null when there are none.</param>
/// <param name="LimitsAreOwn">Whether they are this vehicle's own.</param>
/// <param name="Place">The place that is in front; for a check done once, its only one.</param>
/// <param name="Previous">The value of the vehicle's inspection before this one, at that place; null when there is
/// none.</param>
/// <param name="Instruments">Instruments that measure this kind of quantity; the first is the one proposed.</param>
/// <param name="Units">Units a value may be typed in; the first is the one proposed.</param>
/// <param name="Disturbances">What the check leaves disconnected or switched on, and whether it is so now.</param>
/// <param name="SeenBefore">Whether this vehicle's technician has had this check open before, so that the method may
/// be folded.</param>
/// <param name="LeftOutBecause">Why it is left out; null when it is not.</param>
/// <param name="Photos">Its photos.</param>
/// <param name="NextCheck">Id of the next check that is to do; null when none is.</param>
public sealed record OpenCheck(
    Check Check,
    int Position,
    CheckProgress Progress,
    LimitsInForce? Limits,
    bool LimitsAreOwn,
    PlaceView Place,
    PreviousReading? Previous,
    IReadOnlyList<Instrument> Instruments,
    IReadOnlyList<Unit> Units,
    IReadOnlyList<DisturbanceView> Disturbances,
    bool SeenBefore,
    string? LeftOutBecause,
    IReadOnlyList<PhotoCapture> Photos,
    string? NextCheck);

/// <summary>A reading from an earlier inspection.</summary>
public sealed record PreviousReading(InspectionState Inspection, Recorded<ReadingDecided> Reading);

/// <summary>Something the check leaves undone.</summary>
/// <param name="Disturbance">What the sheet says of it.</param>
/// <param name="LooseEnd">The loose end while it is so; null otherwise.</param>
public sealed record DisturbanceView(Disturbance Disturbance, LooseEnd? LooseEnd);

/// <summary>One item of the stream.</summary>
/// <param name="Capture">The voice note, photo or typed note; null for records made by hand.</param>
/// <param name="Sequence">Sequence of its entry.</param>
/// <param name="Time">When, in the workshop's time.</param>
/// <param name="Cards">For a voice note: what was understood, repeats of one reading together.</param>
/// <param name="Record">For a record made by hand: what it says; null otherwise.</param>
public sealed record CaptureView(
    Capture? Capture, long Sequence, DateTimeOffset Time, IReadOnlyList<ProposalCard> Cards, EntryBody? Record);

/// <summary>One or more proposals that are settled together: a single finding, or the repeats of one reading.</summary>
/// <param name="Proposals">The proposals, in the order spoken; at least one.</param>
/// <param name="Check">The check they are about; null when the sheet does not have it.</param>
/// <param name="Title">"Coil circuit", or "Lead 4".</param>
/// <param name="Text">What it says: "1.9 Ω and 2.0 Ω", "chafed", "replaced".</param>
/// <param name="Preview">For a reading with limits: what the decision would be; null otherwise.</param>
public sealed record ProposalCard(
    IReadOnlyList<Proposal> Proposals, Check? Check, string Title, string Text, Conformity? Preview)
{
    public Proposal First => Proposals[0];

    public ProposalState State => First.State;

    /// <summary>Why to look twice; null without doubt.</summary>
    public string? Doubt => Proposals.Select(proposal => proposal.Finding.Doubt).FirstOrDefault(doubt => doubt is not null);
}

/// <summary>A typed number that could mean more than one thing.</summary>
/// <param name="Check">Check it was typed for.</param>
/// <param name="Cylinder">Place it was typed for.</param>
/// <param name="Typed">The text as typed.</param>
/// <param name="Instrument">Id of the instrument chosen; null for none.</param>
/// <param name="Conditions">The fields of <see cref="ReadingConditions"/> as typed, to be sent again with the answer.</param>
/// <param name="Ambiguity">The question and its choices.</param>
public sealed record NumberQuestion(
    string Check,
    int? Cylinder,
    string Typed,
    string? Instrument,
    IReadOnlyList<(string Name, string Text)> Conditions,
    TypedNumber.Ambiguous Ambiguity);
