using InspectLog.App.Forms;
using InspectLog.App.Instruments;
using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
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
        var progress = sheet.Checks.ToDictionary(check => check.Id, check => Standings.Of(inspection, sheet, check));
        var open = sheet.Find(focus.Check ?? "") ?? FirstToDo(sheet, progress) ?? sheet.Checks[0];
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
            LimitsFor.Check(check, sheet.Rule),
            vehicle.Limits.ContainsKey(check.Id),
            place,
            Previous(vehicle, inspection, check, place.Cylinder),
            check.Measurand is { } m
                ? InstrumentChoice.For(m, workshop, Confirming.LastUsed(inspection, check))
                : [],
            check.Measurand is { } measurand ? UnitsFor(measurand) : [],
            [.. check.Disturbs.Select(disturbance => new DisturbanceView(
                disturbance,
                inspection.OpenLooseEnds.FirstOrDefault(end => end.What.Disturbance == disturbance.Id)))],
            SeenBefore(vehicle, inspection, check),
            inspection.LeftOut.GetValueOrDefault(check.Id),
            [.. inspection.Photos.Where(photo => photo.Photo.Check == check.Id)],
            NextToDo(sheet, progress, check)?.Id);
    }

    /// <summary>Units of the measurand's kind, the one it is shown in first.</summary>
    public static IReadOnlyList<Unit> UnitsFor(Measurand measurand) =>
        [measurand.DisplayUnit, .. Units.All.Where(u => u.Kind == measurand.Kind && u != measurand.DisplayUnit)];

    /// <summary>The next check that is to do after another, or the first; null when none is.</summary>
    public static Check? NextToDo(BenchScene scene, Check? after)
    {
        var (_, inspection, sheet) = scene;
        var progress = sheet.Checks.ToDictionary(check => check.Id, check => Standings.Of(inspection, sheet, check));
        return after is null ? FirstToDo(sheet, progress) : NextToDo(sheet, progress, after);
    }

    private static Check? FirstToDo(CheckSheet sheet, Dictionary<string, CheckProgress> progress) =>
        sheet.Checks.FirstOrDefault(check => IsToDo(progress[check.Id]));

    private static Check? NextToDo(CheckSheet sheet, Dictionary<string, CheckProgress> progress, Check after)
    {
        var others = sheet.Checks.SkipWhile(check => check != after).Skip(1)
            .Concat(sheet.Checks.TakeWhile(check => check != after));
        return others.FirstOrDefault(check => IsToDo(progress[check.Id]));
    }

    private static bool IsToDo(CheckProgress progress) =>
        progress.Standing is CheckStanding.NotDone or CheckStanding.Captured;

    private static PreviousReading? Previous(
        VehicleState vehicle, InspectionState inspection, Check check, int? cylinder)
    {
        foreach (var earlier in vehicle.Inspections.Where(one => one.Number < inspection.Number).Reverse())
        {
            if (earlier.Readings.FindLast(r => r.Body.Check == check.Id && r.Body.Cylinder == cylinder) is { } reading)
            {
                return new PreviousReading(earlier, reading);
            }
        }

        return null;
    }

    /// <summary>The technician has had the check before when this vehicle has a record of it by the same name from an
    /// earlier inspection.</summary>
    private static bool SeenBefore(VehicleState vehicle, InspectionState inspection, Check check) =>
        vehicle.Inspections.Exists(earlier => earlier.Number < inspection.Number
            && earlier.How.Technician == inspection.How.Technician
            && (earlier.Readings.Exists(r => r.Body.Check == check.Id)
                || earlier.Observations.Exists(o => o.Body.Check == check.Id)));

    /// <summary>Captures, and records made by hand, newest first. Records that confirm a proposal show there.</summary>
    private static List<CaptureView> Stream(BenchScene scene, WorkshopState workshop)
    {
        var (_, inspection, sheet) = scene;
        var captures = inspection.Captures.Select(capture => new CaptureView(
            capture,
            capture.Sequence,
            capture.Time,
            capture is VoiceNote note ? ProposalCards.Of(note, sheet, workshop) : [],
            null));
        var byHand = inspection.Readings.Where(r => r.Body.From.Count == 0).Select(Made)
            .Concat(inspection.Observations.Where(o => o.Body.From is null).Select(Made))
            .Concat(inspection.Actions.Where(a => a.Body.From is null).Select(Made));
        return [.. captures.Concat(byHand).OrderByDescending(item => item.Sequence)];
    }

    private static CaptureView Made<T>(Recorded<T> record)
        where T : EntryBody => new(null, record.Sequence, record.Time, [], record.Body);
}
