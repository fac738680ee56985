using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Inspecting.Recording;

/// <summary>Lets into a journal only what the inspection's sheet has: its checks, their places, conditions and actions.
/// What is amended, withdrawn or restored must be there. Pure.</summary>
/// <param name="sheets">The sheets, as inspections pin them.</param>
public sealed class SheetRules(SheetLibrary sheets) : IEntryRules
{
    /// <summary>The rules of a garage with these sheets and the built-in ones.</summary>
    public static IEntryRules Of(SheetStore kept) => new SheetRules(new SheetLibrary(kept));

    /// <inheritdoc/>
    public string? Refusal(VehicleState vehicle, EntryBody body) => body switch
    {
        ReadingDecided reading => OnSheet(vehicle, reading.Inspection, sheet => Place(sheet, reading.Check, reading.Cylinder) ?? Measured(sheet, reading.Check))
            ?? Amended<Recorded<ReadingDecided>>(vehicle, reading.Inspection, reading),
        ObservationMade seen => OnSheet(vehicle, seen.Inspection, sheet => Place(sheet, seen.Check, seen.Cylinder) ?? Condition(sheet, seen))
            ?? Amended<Recorded<ObservationMade>>(vehicle, seen.Inspection, seen),
        ActionDone done => OnSheet(vehicle, done.Inspection, sheet => Place(sheet, done.Check, done.Cylinder) ?? Action(sheet, done))
            ?? Amended<Recorded<ActionDone>>(vehicle, done.Inspection, done),
        PhotoKept photo => OnSheet(vehicle, photo.Inspection, sheet => PlaceIfAny(sheet, photo.Check, photo.Cylinder))
            ?? Shown(vehicle, photo)
            ?? Amended<PhotoCapture>(vehicle, photo.Inspection, photo),
        PhotoMarked marked => PhotoMarking.Refusal(vehicle, marked),
        NoteWritten note => OnSheet(vehicle, note.Inspection, sheet => PlaceIfAny(sheet, note.Check, null))
            ?? Amended<TypedNote>(vehicle, note.Inspection, note),
        RecordingKept kept => OnSheet(vehicle, kept.Inspection, sheet => PlaceIfAny(sheet, kept.OpenCheck, null)),
        CheckLeftOut left => OnSheet(vehicle, left.Inspection, sheet => PlaceIfAny(sheet, left.Check, null)),
        UrgencyJudged judged => OnSheet(vehicle, judged.Inspection, sheet => PlaceIfAny(sheet, judged.Check, null)),
        LooseEndOpened end => OnSheet(vehicle, end.Inspection, sheet => PlaceIfAny(sheet, end.Check, end.Cylinder) ?? Disturbance(sheet, end)),
        WordsCorrected corrected => vehicle.Inspections.Exists(one => one.Find(corrected.Recording) is VoiceNote { CanBeCorrected: true })
            ? null
            : "The words of that note cannot be put right: there is no such note, it has no words, or it is a command.",
        FindingReopened { Finding: var finding } => vehicle.Inspections.Exists(one => one.FindNote(finding.Recording)?.Proposals?.ElementAtOrDefault(finding.Index)?.CanBeReopened == true)
            ? null
            : "That was not dropped, or the note was read anew since. Open the page again.",
        EntryWithdrawn withdrawn => Known(vehicle, withdrawn.Entry),
        EntryRestored restored => Known(vehicle, restored.Entry),
        ReportChoice choice => vehicle.Inspections.Exists(one => one.Find(choice.Entry) is Capture)
            ? null
            : "There is no note or photo by that number. Open the page again.",
        _ => null,
    };

    private string? OnSheet(VehicleState vehicle, long number, Func<CheckSheet, string?> refusal) =>
        vehicle.Inspection(number) is null ? "There is no such inspection. Open it again from the vehicle's page."
        : BenchScene.Of(vehicle, sheets, number) is not { } scene ? "The check sheet of this inspection is missing, so nothing can be recorded in it."
        : refusal(scene.Sheet);

    private static string? PlaceIfAny(CheckSheet sheet, string? check, int? cylinder) =>
        check is null ? (cylinder is null ? null : "A place needs the check it belongs to.")
        : sheet.Find(check) is not { } found ? NoCheck(check)
        : cylinder is null || Places.Of(sheet, found).Contains(cylinder) ? null
        : NoPlace(sheet, found);

    private static string? Place(CheckSheet sheet, string check, int? cylinder) =>
        sheet.Find(check) is not { } found ? NoCheck(check)
        : Places.Of(sheet, found).Contains(cylinder) ? null
        : NoPlace(sheet, found);

    private static string? Measured(CheckSheet sheet, string check) =>
        sheet.Find(check)?.Measurand is null ? $"{check} is looked at, not measured. Choose a check that is measured." : null;

    private static string? Condition(CheckSheet sheet, ObservationMade seen) =>
        sheet.Find(seen.Check)!.Conditions.Any(known => known.Id == seen.Condition)
            ? null
            : $"The sheet has no condition “{seen.Condition}” for this check. Choose what you saw from the list.";

    private static string? Action(CheckSheet sheet, ActionDone done) =>
        sheet.Find(done.Check)!.Actions.Contains(done.Action)
            ? null
            : $"The sheet has no action “{done.Action}” for this check. Choose what was done from the list.";

    private static string? Disturbance(CheckSheet sheet, LooseEndOpened end) =>
        end.Disturbance is null || sheet.Find(end.Check ?? "")?.Disturbs.Any(known => known.Id == end.Disturbance) == true
            ? null
            : $"The sheet does not say that this check leaves “{end.Disturbance}” undone.";

    private static string? Shown(VehicleState vehicle, PhotoKept photo) =>
        photo.Shows is { } shows && vehicle.Inspection(photo.Inspection)?.Find(shows) is null or PhotoCapture
            ? "What the photo is to show is not there any more. Open the page again and choose from the list."
            : null;

    private static string? Amended<T>(VehicleState vehicle, long number, AmendableBody body)
        where T : class, IKept =>
        body.Amends is { } first && vehicle.Inspection(number)?.Find(first) is not T
            ? "What was to be put right is not there, or is of another kind. Open the page again."
            : null;

    private static string? Known(VehicleState vehicle, long entry) =>
        vehicle.Inspections.Exists(one => one.Find(entry) is not null
            || one.FindLooseEnd(entry) is not null
            || one.LooseEnds.Exists(end => end.TiedBy == entry))
            ? null
            : "There is nothing by that number to withdraw. Open the page again.";

    private static string NoCheck(string check) => $"This sheet has no check “{check}”. Choose a check of this sheet.";

    private static string NoPlace(CheckSheet sheet, Check check) => check.PerCylinder
        ? $"{check.ShortTitle} is recorded for one {check.PlaceNoun} at a time. {Places.Asked(sheet, check)}"
        : Places.Asked(sheet, check);
}
