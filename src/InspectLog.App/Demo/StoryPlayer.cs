using InspectLog.App.Bench;
using InspectLog.App.Media;
using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using InspectLog.Photos;

namespace InspectLog.App.Demo;

/// <summary>Plays the story of the demo into a garage, by the same rules as people record by hand.</summary>
internal sealed class StoryPlayer(DemoFiles files, Garage garage, SheetLibrary sheets, StoryClock clock)
{
    private static readonly TimeSpan BeforeTheFirstInspection = TimeSpan.FromMinutes(10);

    private readonly VoicePlayer _voices = new(files, garage, sheets, clock);

    /// <summary>Plays the whole story, as seen from a moment.</summary>
    public void Play(Story story, DateTimeOffset now)
    {
        clock.Now = story.Vehicles.SelectMany(vehicle => vehicle.Inspections)
            .Min(inspection => inspection.Started.Before(now)) - BeforeTheFirstInspection;
        garage.AppendToWorkshop(story.People[0].Name, [.. story.Instruments.Select(tool => new InstrumentAdded(tool))]);

        foreach (var vehicle in story.Vehicles)
        {
            clock.Now = vehicle.Inspections[0].Started.Before(now) - BeforeTheFirstInspection;
            var id = Add(vehicle);
            foreach (var inspection in vehicle.Inspections)
                Play(inspection, id, vehicle.Engine, inspection.Started.Before(now));
        }
    }

    private string Add(StoryVehicle vehicle)
    {
        var (picture, _) = Keep(vehicle.Picture);
        var limits = vehicle.Limits.Select(own => new LimitsSet(
            own.Check, InBase(own.Lower, own.Unit), InBase(own.Upper, own.Unit), own.Source));
        return garage.AddVehicle(
            vehicle.AddedBy, new VehicleAdded(vehicle.Name, vehicle.Description, vehicle.Engine), [new VehiclePictured(picture), .. limits]);
    }

    private void Play(StoryInspection inspection, string vehicleId, EngineLayout? engine, DateTimeOffset start)
    {
        clock.Now = start;
        var sheet = BuiltInSheets.Find(inspection.Sheet) ?? throw new InvalidDataException($"The story names no sheet: {inspection.Sheet}");
        var begun = new InspectionStarted(
            sheet.Id, sheet.Version, sheet.Sha256, inspection.Technician, inspection.Odometer, inspection.OdometerUnit)
        {
            Rule = sheet.Rule.Id,
            Coverage = sheet.Evaluation.IsUsualCoverage ? null : sheet.Evaluation.Coverage,
            Cylinders = engine?.Cylinders ?? sheet.Cylinders,
        };
        sheets.Keep(sheet);
        var number = garage.Append(vehicleId, inspection.Technician, _ => [begun]).OpenInspection!.Number;

        foreach (var step in inspection.Steps)
        {
            clock.Now = start + step.After;
            if (step.What is SayStep say)
                _voices.Play(say, vehicleId, number);
            else
                garage.Append(vehicleId, inspection.Technician, now => Played(step.What, BenchScene.Of(now, sheets, number)!));
        }
    }

    private IReadOnlyList<EntryBody> Played(object what, BenchScene now) => Comparing.Settled(now, [.. Entries(what, now)]);

    private IEnumerable<EntryBody> Entries(object what, BenchScene now) => what switch
    {
        MeasureStep measure => LooseEndRules.WithWhatFollows(now, [Reading(measure, now)]),
        GaugeStep gauge => LooseEndRules.WithWhatFollows(now, [Bracket(gauge, now)]),
        SeeStep see => LooseEndRules.WithWhatFollows(now, [.. Places(see.Cylinders).Select(cylinder =>
            new ObservationMade(now.Inspection.Number, see.Check, cylinder, see.Condition, see.Negated, null))]),
        DoStep done => LooseEndRules.WithWhatFollows(now, [.. Places(done.Cylinders).Select(cylinder =>
            new ActionDone(now.Inspection.Number, done.Check, cylinder, done.Action, null))]),
        PhotoStep photo => [Photo(photo, now.Inspection.Number)],
        NoteStep note => [new NoteWritten(now.Inspection.Number, note.Check, note.Text)],
        LooseEndStep end => [LooseEnd(end, now)],
        TieStep tie => now.Inspection.OpenLooseEnds.Where(end => end.What.Disturbance == tie.Disturbance)
            .Select(end => new LooseEndTied(end.Sequence)),
        LeaveOutStep left => [new CheckLeftOut(now.Inspection.Number, left.Check, left.Reason)],
        WatchStep watch => [new WearPartAdded(
            watch.Name,
            new(watch.Months, watch.Distance, watch.Distance is null ? null : now.Inspection.How.OdometerUnit),
            Fitting(now, watch.DaysEarlier, watch.Odometer))],
        FitStep fit => [new WearPartFitted(
            now.Vehicle.WearParts.First(part => part.Name == fit.Name).Number, Fitting(now, fit.DaysEarlier, fit.Odometer))],
        CloseStep => [new InspectionClosed(now.Inspection.Number)],
        _ => throw new InvalidDataException($"The player does not know how to play {what}."),
    };

    private ReadingDecided Reading(MeasureStep measure, BenchScene now)
    {
        var values = measure.Values.Select(value => InBase(value, measure.Unit)!.Value).ToList();
        return ReadingRecords.Decide(
            now,
            new GivenReading(Check(now, measure.Check), measure.Cylinder, values, null, $"{string.Join("; ", measure.Values)} {measure.Unit}", Tool(measure.Instrument), []));
    }

    private Instrument? Tool(string id) => garage.Workshop.Instruments.Find(tool => tool.Id == id);

    private ReadingDecided Bracket(GaugeStep gauge, BenchScene now)
    {
        var bracket = new Bracket(InBase(gauge.Goes, gauge.Unit)!.Value, InBase(gauge.Stops, gauge.Unit)!.Value);
        var given = $"{gauge.Goes} goes, {gauge.Stops} stops {gauge.Unit}";
        return ReadingRecords.Decide(
            now, new GivenReading(Check(now, gauge.Check), gauge.Cylinder, [], bracket, given, Tool(gauge.Instrument), []));
    }

    private static Fitting Fitting(BenchScene now, int daysEarlier, double odometer) => new(
        Times.DayOf(now.Inspection.Started.AddDays(-daysEarlier)), odometer, now.Inspection.How.OdometerUnit);

    private static LooseEndOpened LooseEnd(LooseEndStep end, BenchScene now)
    {
        var check = Check(now, end.Check);
        return LooseEndRules.Of(now, check, check.Disturbs.First(disturbance => disturbance.Id == end.Disturbance), null);
    }

    private PhotoKept Photo(PhotoStep photo, long inspection)
    {
        var (media, facts) = Keep(photo.File);
        return new PhotoKept(inspection, media, facts.Width, facts.Height, photo.Check, photo.Cylinder);
    }

    private (MediaFile Media, PhotoFacts Facts) Keep(string file)
    {
        var bytes = File.ReadAllBytes(files.Photo(file));
        return PhotoIntake.Examine(bytes) is PhotoResult.Ok { Facts: var facts }
            ? (garage.Media.Keep(bytes, MediaTypes.Of(facts.Format)), facts)
            : throw new InvalidDataException($"{file} of the demo is no photo.");
    }

    private static Check Check(BenchScene now, string id) =>
        now.Sheet.Find(id) ?? throw new InvalidDataException($"The sheet has no check {id}.");

    private static IEnumerable<int?> Places(IReadOnlyList<int>? cylinders) => cylinders?.Select(number => (int?)number) ?? [null];

    private static double? InBase(double? value, string unit) => value is { } number
        ? (Units.Find(unit) ?? throw new InvalidDataException($"{unit} is no unit.")).ToBase(number)
        : null;
}
