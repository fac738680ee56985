using InspectLog.App.Seals;
using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
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
/// <param name="Attention">What is to be seen to, the worst first.</param>
/// <param name="StillMissing">What an open inspection waits for, each a phrase; empty for a closed one.</param>
/// <param name="Checks">All checks, in the sheet's order.</param>
/// <param name="Replaced">What was replaced, cleaned or adjusted, each a short phrase.</param>
/// <param name="Instruments">Instruments used, each once.</param>
/// <param name="InUse">The workshop's instruments, for ranges that would do better.</param>
/// <param name="Notes">Notes, those left out included, so that they can be taken in again.</param>
/// <param name="LeftOut">How many notes and photos are left out, in a sentence; null for none.</param>
/// <param name="PutRight">What was put right or withdrawn before closing, for the history on the screen.</param>
/// <param name="HeadHash">Hash of the journal's last entry.</param>
/// <param name="Entries">How many entries the journal has.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record ReportView(
    VehicleState Vehicle,
    InspectionState Inspection,
    CheckSheet Sheet,
    IReadOnlyList<string> Summary,
    IReadOnlyList<AttentionLine> Attention,
    IReadOnlyList<string> StillMissing,
    IReadOnlyList<ReportCheck> Checks,
    IReadOnlyList<string> Replaced,
    IReadOnlyList<UsedInstrument> Instruments,
    IReadOnlyList<Instrument> InUse,
    IReadOnlyList<ReportNote> Notes,
    string? LeftOut,
    IReadOnlyList<string> PutRight,
    string HeadHash,
    long Entries,
    IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>Whether it is shown in a file that stands alone: without forms, and without links to other pages.</summary>
    public bool StandsAlone { get; init; }

    /// <summary>Name and address of the workshop; null where nobody said.</summary>
    public WorkshopNamed? Workshop { get; init; }

    /// <summary>How the record is sealed; null where that is not shown.</summary>
    public SealedState? Sealed { get; init; }

    /// <summary>What is wrong with the vehicle's journal, in sentences; null where nothing is.</summary>
    public string? Damage { get; } = Problems.FirstOrDefault(problem => problem.ReadOnly && problem.VehicleId == Vehicle.Id)?.Message;

    /// <summary>What was said in the inspection and dropped after closing, in sentences.</summary>
    public IReadOnlyList<string> DroppedLater { get; init; } = [];

    /// <summary>Withheld entries that may have said something of the inspection.</summary>
    public IReadOnlyList<WithheldEntry> Withheld { get; } = [.. Vehicle.Withheld.Where(entry => entry.MayBeOf(Inspection))];

    /// <summary>The checks of a section.</summary>
    public IReadOnlyList<ReportCheck> In(ReportSectionKind section) => [.. Checks.Where(one => one.Section == section)];
}

/// <summary>Where a check stands in the report.</summary>
public enum ReportSectionKind
{
    /// <summary>A place of it failed, whatever else became of it.</summary>
    Failed,

    /// <summary>A reading of it lies too close to a limit to be sure of, and none failed.</summary>
    Conditional,

    /// <summary>What was seen at a place of it needs a look; nothing failed, and no reading is conditional.</summary>
    NeedsLook,

    /// <summary>Nothing bad is known of it, but places are missing or findings wait to be settled.</summary>
    NotFinished,

    /// <summary>All of it is in order.</summary>
    Passed,

    /// <summary>All of it is recorded, without limits to decide against.</summary>
    Recorded,

    /// <summary>It was left out, or nothing of it was done.</summary>
    NotDone,
}

/// <summary>A check in the report.</summary>
/// <param name="Check">The check.</param>
/// <param name="Progress">Where it stands, with its places.</param>
/// <param name="Photos">Its photos, without those left out.</param>
/// <param name="Reason">Why it was left out; null otherwise.</param>
public sealed record ReportCheck(
    Check Check, CheckProgress Progress, IReadOnlyList<PhotoCapture> Photos, string? Reason)
{
    /// <summary>How many findings were heard or written of it and are not settled; what they say is told once, at the top.
    /// </summary>
    public int Unconfirmed { get; init; }

    /// <summary>Notes of which something was confirmed here, and whose words stand here and nowhere else.</summary>
    public IReadOnlyList<ReportNote> Said { get; init; } = [];

    /// <summary>What was withdrawn of it after closing, in sentences.</summary>
    public IReadOnlyList<string> Withdrawn { get; init; } = [];

    /// <summary>Its places of which nothing is recorded.</summary>
    public IReadOnlyList<PlaceView> Missing { get; } = [.. Progress.Places.Where(place => !place.IsDone)];

    /// <summary>Whether some of it is done and something is missing or waits, without a reason.</summary>
    public bool IsHalfDone =>
        Reason is null && (Unconfirmed > 0 || (Missing.Count > 0 && Missing.Count < Progress.Places.Count));

    /// <summary>Where it stands in the report. Bad news comes first, even of a check that was left out.</summary>
    public ReportSectionKind Section => Progress.Outcome switch
    {
        PlaceOutcome.Bad => ReportSectionKind.Failed,
        PlaceOutcome.Doubtful => Progress.IsConditional ? ReportSectionKind.Conditional : ReportSectionKind.NeedsLook,
        _ when IsHalfDone => ReportSectionKind.NotFinished,
        _ when Reason is not null || Progress.Outcome == PlaceOutcome.None => ReportSectionKind.NotDone,
        PlaceOutcome.Good => ReportSectionKind.Passed,
        _ => ReportSectionKind.Recorded,
    };
}

/// <summary>Something to see to.</summary>
/// <param name="Word">What is with it: "Failed", "Heard but not confirmed".</param>
/// <param name="Outcome">How bad it is.</param>
/// <param name="Text">What it is: "Cap contacts, tower 3: corroded".</param>
/// <param name="Check">Id of the check it is told at; null where there is none.</param>
public sealed record AttentionLine(string Word, PlaceOutcome Outcome, string Text, string? Check = null)
{
    /// <summary>How soon it is to be seen to.</summary>
    public Urgency Urgency { get; init; } = Urgency.Later;

    /// <summary>Who said how soon; null where the sheet and what is with it say so.</summary>
    public string? UrgencyBy { get; init; }

    /// <summary>Whether it is something left disconnected, removed or switched on.</summary>
    public bool IsUndone { get; init; }
}

/// <summary>An instrument that readings were taken with.</summary>
/// <param name="Instrument">The instrument.</param>
/// <param name="IsGauges">Whether it is a set of gauges: they have sizes, and no accuracy of a display.</param>
/// <param name="Readings">How many readings.</param>
/// <param name="Checks">Of which checks, by their short titles.</param>
public sealed record UsedInstrument(Instrument Instrument, bool IsGauges, int Readings, IReadOnlyList<string> Checks);

/// <summary>A note in the report.</summary>
/// <param name="Sequence">Sequence of its first entry.</param>
/// <param name="Time">When it was kept.</param>
/// <param name="Text">Its words.</param>
/// <param name="IsLeftOut">Whether it is left out: then its words are not shown.</param>
/// <param name="Changes">What was put right in it after closing, in sentences.</param>
public sealed record ReportNote(
    long Sequence, DateTimeOffset Time, string Text, bool IsLeftOut, IReadOnlyList<string> Changes)
{
    /// <summary>Id of the check it stands at, as the source of what was confirmed of it; null where it stands among the notes.
    /// </summary>
    public string? Check { get; init; }
}
