using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>Gathers what the condition report says. Pure.</summary>
public static class ReportBuilder
{
    public static ReportView Build(BenchScene scene, WorkshopState workshop, IReadOnlyList<GarageProblem> problems)
    {
        var (vehicle, inspection, sheet) = scene;
        var unconfirmed = ReportAttention.Unconfirmed(scene, workshop);
        var notes = ReportNotes.Of(inspection, sheet);
        var checks = sheet.Checks.Select(check => Of(scene, check, unconfirmed) with
        {
            Said = [.. notes.Where(note => note.Check == check.Id && !note.IsLeftOut)],
        }).ToList();
        var attention = ReportUrgency.Judge(ReportAttention.Of(scene, workshop, checks), scene);
        return new ReportView(
            vehicle,
            inspection,
            sheet,
            ReportSummary.Of(scene, checks, attention),
            attention,
            StillMissing(inspection, checks),
            checks,
            Done(inspection, sheet),
            UsedInstruments.Of(inspection, sheet),
            InstrumentChoice.InUse(workshop),
            notes,
            ReportNotes.LeftOut(inspection),
            ReportChanges.BeforeClosing(inspection, sheet),
            vehicle.LastHash,
            vehicle.NextSequence - 1,
            problems)
        {
            DroppedLater = ReportDropped.Later(scene, workshop),
            Workshop = workshop.Named,
        };
    }

    /// <summary>What was replaced, cleaned or adjusted: "Lead 4 replaced".</summary>
    public static IReadOnlyList<string> Done(InspectionState inspection, CheckSheet sheet) =>
    [
        .. inspection.Actions
            .Where(done => done.Body.Action is PartActions.Replaced or PartActions.Cleaned or PartActions.Adjusted)
            .Select(done => sheet.Find(done.Body.Check) is { } check
                ? $"{Places.NameOf(check, done.Body.Cylinder)} {done.Body.Action}"
                : $"{done.Body.Check} {done.Body.Action}")
            .Distinct(),
    ];

    private static ReportCheck Of(BenchScene scene, Check check, IReadOnlyList<UnconfirmedFinding> unconfirmed) => new(
        check,
        Standings.Of(scene.Inspection, scene.Sheet, check),
        [.. scene.Inspection.Photos.Where(photo => photo.Photo.Check == check.Id && !photo.History.IsLeftOutOfReport)],
        scene.Inspection.LeftOut.GetValueOrDefault(check.Id))
    {
        Unconfirmed = unconfirmed.Count(one => one.Check?.Id == check.Id),
        Withdrawn = ReportChanges.WithdrawnLater(scene.Inspection, scene.Sheet, check.Id),
    };

    private static List<string> StillMissing(InspectionState inspection, List<ReportCheck> checks)
    {
        if (inspection.IsClosed)
        {
            return [];
        }

        var begun = checks.Where(one => one.Progress.Standing == CheckStanding.Captured)
            .Select(one => Phrases.Lower(PlaceNames.Under(one.Check, one.Missing)));
        var undone = checks.Where(one => one.Progress.Standing == CheckStanding.NotDone).Select(one => Phrases.Lower(one.Check.Title));
        var (open, ends, waiting) = (
            ProposalGroups.OpenIn(inspection).Count(),
            inspection.OpenLooseEnds.Count(),
            inspection.VoiceNotes.Count(note => note.IsWaiting));
        return
        [
            .. begun,
            .. undone,
            .. open > 0 ? [Phrases.Count(open, "finding to settle", "findings to settle")] : Array.Empty<string>(),
            .. ends > 0 ? [Phrases.Count(ends, "loose end")] : Array.Empty<string>(),
            .. waiting > 0 ? [Phrases.Count(waiting, "voice note to be read", "voice notes to be read")] : Array.Empty<string>(),
        ];
    }
}
