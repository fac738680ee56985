using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Inspecting;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Standing;
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
/// <param name="Question">Typed numbers that are asked about; null when there are none.</param>
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
    /// <summary>When it is shown, in the workshop's time.</summary>
    public DateTimeOffset Now { get; init; }

    /// <summary>Who looks at it.</summary>
    public string Viewer { get; init; } = "";

    /// <summary>The part of the page that somebody searched for; null where nobody did.</summary>
    public string? Found { get; init; }

    /// <summary>Id of the fold that the address opens, as a page without scripts needs it; null where it opens none.</summary>
    public string? Unfolded { get; init; }

    /// <summary>Id of the form all of whose places the address ticks; null where it ticks none.</summary>
    public string? Ticked { get; init; }

    /// <summary>What the press did that this answers, or why nothing; null where it answers none.</summary>
    public string? Did { get; init; }

    /// <summary>How that press is taken back by another; null where that is done elsewhere or not at all.</summary>
    public PressUndo? Undo { get; init; }

    /// <summary>Whether this person had the open check's cautions before them in this inspection already.</summary>
    public bool CautionsSeen { get; init; }

    /// <summary>Which part of the stream is shown.</summary>
    public StreamStretch Stretch { get; init; } = StreamStretch.Newest;

    /// <summary>Address of the bench as it is shown, with what was searched for still marked when it is read anew.</summary>
    public string Here => At(Stretch);

    /// <summary>Address of the bench as it is shown, with another part of the stream.</summary>
    public string At(StreamStretch stretch) => Links.Check(Vehicle.Id, Inspection.Number, Open.Check.Id, Open.Place.Cylinder)
        + stretch.Query
        + (Found is { } found ? $"&{FoundPart.Parameter}={Uri.EscapeDataString(found)}" : "");

    /// <summary>Base address of the inspection's pages.</summary>
    public string Address => Links.Inspection(Vehicle.Id, Inspection.Number);

    /// <summary>The inspection with its vehicle and sheet.</summary>
    public BenchScene Scene => new(Vehicle, Inspection, Sheet);

    /// <summary>Open loose ends, oldest first.</summary>
    public IReadOnlyList<LooseEnd> LooseEnds { get; } = [.. Inspection.OpenLooseEnds];

    /// <summary>Those of them that may stay so for a limited time only.</summary>
    public IReadOnlyList<TimedEnd> TimedEnds { get; } = TimedEnd.Among(Inspection.OpenLooseEnds, Sheet);

    /// <summary>The form that was to put something right and was refused; null when none was.</summary>
    public AmendView? Amending { get; init; }

    /// <summary>What is wrong with a form that was refused and does not stand at the open check, in words by themselves;
    /// null where there is none.</summary>
    public RefusedForm? FormElsewhere => Form is { } form && !IsAtOpenCheck(form.Name)
        ? form with { Errors = new Dictionary<string, string> { [""] = string.Join(' ', form.Errors.Values) } }
        : null;

    /// <summary>What was recorded from findings, withdrawn or not, by the finding.</summary>
    public ILookup<FindingReference, IKept> Confirmed { get; } = Inspection.Everything
        .SelectMany(kept => InspectionState.SourcesOf(kept.Says).Select(finding => (Finding: finding, Kept: kept)))
        .ToLookup(one => one.Finding, one => one.Kept);

    /// <summary>What was said hands-free with its answers, newest first.</summary>
    public IReadOnlyList<HandsFreeTurn> HandsFreeTurns =>
    [
        .. Captures.Where(item => item.Kept is VoiceNote { IsHandsFree: true })
            .Select(item => HandsFreeTurn.Of((VoiceNote)item.Kept, item.Cards)),
    ];

    /// <summary>Whether a capture was searched for, or a form about it was refused: it is shown however old it is.</summary>
    public bool IsMeant(CaptureView item) =>
        Found is { } found && (found == $"item-{item.Kept.Sequence}" || found.StartsWith($"finding-{item.Kept.Sequence}-", StringComparison.Ordinal))
        || Amending?.Kept is { } amended && (amended.Sequence == item.Kept.Sequence || InspectionState.SourcesOf(amended.Says).Any(from => from.Recording == item.Kept.Sequence))
        || Form?.Name.EndsWith($"-{item.Kept.Sequence}", StringComparison.Ordinal) == true;

    /// <summary>How many checks are neither decided nor left out.</summary>
    public int ChecksToDo => Lines.Count(line => line.Progress.IsToDo);

    private bool IsAtOpenCheck(string form) => form switch
    {
        "reading" => Open.Check.Measurand is not null,
        "bracket" => Open.Check.Measurand is { Gauge: true },
        "observation" => Open.Check.Conditions.Count > 0,
        "action" => Open.Check.Actions.Count > 0,
        _ => true,
    };
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
/// <param name="Gauges">Sets of gauges that can take a bracket of it; as the workshop has them.</param>
/// <param name="GaugesUsed">Id of the set last used on the vehicle; null where none was named.</param>
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
    IReadOnlyList<Instrument> Gauges,
    string? GaugesUsed,
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

/// <summary>Typed numbers that are asked about before they are recorded, with the form they were typed into.</summary>
/// <param name="Check">Check they were typed for.</param>
/// <param name="Cylinder">Place they were typed for.</param>
/// <param name="IsBracket">Whether they are the two gauges of a bracket.</param>
/// <param name="Fields">The fields as typed, to be sent again with the answer.</param>
/// <param name="Asked">The question and its answers.</param>
public sealed record NumberQuestion(
    string Check,
    int? Cylinder,
    bool IsBracket,
    IReadOnlyList<(string Name, string Text)> Fields,
    AskedNumber Asked)
{
    /// <summary>What was typed in a field; empty when nothing was.</summary>
    public string Typed(string field) => Fields.FirstOrDefault(one => one.Name == field).Text ?? "";
}
