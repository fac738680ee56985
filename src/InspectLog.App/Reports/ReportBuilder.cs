using InspectLog.App.Bench;
using InspectLog.App.Instruments;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>Gathers what the condition report says. Pure.</summary>
public static class ReportBuilder
{
    public static ReportView Build(BenchScene scene, WorkshopState workshop, IReadOnlyList<GarageProblem> problems)
    {
        var (vehicle, inspection, sheet) = scene;
        var checks = sheet.Checks.Select(check => Of(scene, check)).ToList();
        return new ReportView(
            vehicle,
            inspection,
            sheet,
            ReportSummary.Of(scene, checks),
            With(checks, PlaceOutcome.Bad),
            With(checks, PlaceOutcome.Doubtful),
            With(checks, PlaceOutcome.Good),
            With(checks, PlaceOutcome.Recorded),
            [.. checks.Where(one => one.Reason is not null || one.Progress.Outcome == PlaceOutcome.None)],
            Done(inspection, sheet),
            [.. inspection.Readings.Select(reading => reading.Body.Instrument).OfType<Measuring.Instrument>().Distinct()],
            InstrumentChoice.InUse(workshop),
            Notes(inspection),
            vehicle.LastHash,
            vehicle.NextSequence - 1,
            problems);
    }

    /// <summary>What was replaced, cleaned or adjusted: "Lead 4 replaced".</summary>
    public static IReadOnlyList<string> Done(InspectionState inspection, CheckSheet sheet) =>
    [
        .. inspection.Actions
            .Where(done => done.Body.Action is PartActions.Replaced or PartActions.Cleaned or PartActions.Adjusted)
            .Select(done => sheet.Find(done.Body.Check) is { } check
                ? $"{Standings.NameOf(check, done.Body.Cylinder)} {done.Body.Action}"
                : $"{done.Body.Check} {done.Body.Action}")
            .Distinct(),
    ];

    private static ReportCheck Of(BenchScene scene, Check check) => new(
        check,
        Standings.Of(scene.Inspection, scene.Sheet, check),
        LimitsFor.Check(check, scene.Sheet.Rule),
        [.. scene.Inspection.Photos.Where(photo => photo.Photo.Check == check.Id)],
        scene.Inspection.LeftOut.GetValueOrDefault(check.Id));

    private static List<ReportCheck> With(List<ReportCheck> checks, PlaceOutcome outcome) =>
        checks.FindAll(one => one.Reason is null && one.Progress.Outcome == outcome);

    /// <summary>Typed notes, and voice notes that gave no finding, so that nothing said is missing.</summary>
    private static List<string> Notes(InspectionState inspection) =>
    [
        .. inspection.Captures.Select(capture => capture switch
        {
            TypedNote typed => typed.Note.Text,
            VoiceNote { Proposals: { Count: 0 }, Transcript: { SpeechFound: true, Text: { Length: > 0 } text } } => text,
            _ => "",
        }).Where(text => text.Length > 0),
    ];
}
