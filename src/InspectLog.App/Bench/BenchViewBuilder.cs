using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Which check and place the bench shows.</summary>
/// <param name="Check">Check id; null or unknown shows the first that is to do.</param>
/// <param name="Cylinder">Place; null shows the first that is to do.</param>
public sealed record BenchFocus(string? Check, int? Cylinder);

/// <summary>Gathers what the bench shows. Pure.</summary>
public static class BenchViewBuilder
{
    public static BenchView Build(
        BenchScene scene,
        BenchFocus focus,
        WorkshopState workshop,
        SpeechReadiness speech,
        IReadOnlyList<GarageProblem> problems,
        RefusedForm? form = null,
        NumberQuestion? question = null)
    {
        var (vehicle, inspection, sheet) = scene;
        var progress = Standings.OfAll(inspection, sheet);
        var open = sheet.Find(focus.Check ?? "") ?? ToDo.First(sheet, progress) ?? sheet.Checks[0];
        return new BenchView(
            vehicle,
            inspection,
            sheet,
            [.. sheet.Checks.Select(check => new CheckLine(check, progress[check.Id], check == open))],
            Open(scene, open, progress, focus.Cylinder, workshop),
            Stream(scene, workshop),
            speech,
            form,
            question,
            problems);
    }

    private static OpenCheck Open(
        BenchScene scene,
        Check check,
        Dictionary<string, CheckProgress> progress,
        int? cylinder,
        WorkshopState workshop)
    {
        var (vehicle, inspection, sheet) = scene;
        var places = progress[check.Id].Places;
        var place = places.FirstOrDefault(one => one.Cylinder == cylinder && cylinder is not null)
            ?? places.FirstOrDefault(one => !one.IsDone)
            ?? places[0];
        return new OpenCheck(
            check,
            sheet.Checks.ToList().IndexOf(check) + 1,
            progress[check.Id],
            OwnScale.LimitsFor(scene, check, place.Cylinder, place.Reading?.Body),
            LimitsFor.Own(vehicle, sheet, check.Id) is not null,
            place,
            Previous(scene, check, place.Cylinder),
            check.Measurand is { } m
                ? InstrumentChoice.For(m, workshop, Confirming.LastUsed(inspection, check))
                : [],
            check.Measurand is { Gauge: true } gauged ? [.. InstrumentChoice.Gauges(gauged.Kind, workshop)] : [],
            check.Measurand is { Gauge: true } used ? InstrumentChoice.LastGauges(vehicle, used.Kind, workshop)?.Id : null,
            check.Measurand is { } measurand ? TypedUnits.For(measurand) : [],
            [.. check.Disturbs.Select(disturbance => new DisturbanceView(
                disturbance,
                LooseEndRules.OpenEnd(inspection, disturbance, place.Cylinder)))],
            SeenBefore(scene, check),
            inspection.LeftOut.GetValueOrDefault(check.Id),
            [.. inspection.Photos.Where(photo => photo.Photo.Check == check.Id)],
            ToDo.Next(sheet, progress, check)?.Id);
    }

    private static PreviousReading? Previous(BenchScene scene, Check check, int? cylinder)
    {
        foreach (var earlier in Earlier(scene).Reverse())
        {
            if (earlier.LastReading(check.Id, cylinder) is { } reading)
            {
                return new PreviousReading(earlier, reading);
            }
        }

        return null;
    }

    /// <summary>The technician has had the check before when this vehicle has a record of it by the same name from an
    /// earlier inspection.</summary>
    private static bool SeenBefore(BenchScene scene, Check check) =>
        Earlier(scene).Any(earlier => earlier.How.Technician == scene.Inspection.How.Technician
            && earlier.HasRecordOf(check.Id));

    /// <summary>Inspections before this one whose checks of the same id are the same checks, oldest first.</summary>
    private static IEnumerable<InspectionState> Earlier(BenchScene scene) => scene.Vehicle.Inspections
        .Where(one => one.Number < scene.Inspection.Number && scene.Sheet.IsOneWith(one.How.Sheet));

    /// <summary>Captures, and records made by hand, newest first; what was withdrawn keeps its place. Records that confirm
    /// a finding show there.</summary>
    private static List<CaptureView> Stream(BenchScene scene, WorkshopState workshop) =>
    [
        .. scene.Inspection.Everything.Reverse()
            .Where(StreamStretch.IsCapture)
            .Select(kept => new CaptureView(kept, note => ProposalCards.Of(note, scene, workshop))),
    ];
}
