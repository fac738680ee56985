using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.Journal.Tests.Support;

/// <summary>Invented bodies, one of each kind, and a clock that stands still.</summary>
public static class Some
{
    public const string Technician = "Tess Okafor";

    public static readonly MediaFile Recording = new(new string('a', 64), 32044, "audio/wav");
    public static readonly MediaFile Photo = new(new string('b', 64), 1_204_333, "image/jpeg");
    public static readonly Instrument Meter = new("meter-1", "Bench meter", QuantityKind.Resistance, new(0.8, 3), 0.1);

    public static readonly IReadOnlyList<EntryBody> OneOfEachKind =
    [
        new VehicleAdded("Marigold", "1968 saloon, straight six", new(6, [1, 5, 3, 6, 2, 4], RotorRotation.Clockwise)),
        new VehicleDescribed("Marigold", "", null),
        new VehiclePictured(Photo),
        new PrivateFactsNoted("Ana Lindqvist", "ana@example.org", "MG-000-42"),
        new LimitsSet("coil-circuit-resistance", 0.6, 2, "Maker's manual, page 31"),
        new LimitsCleared("coil-circuit-resistance"),
        new InspectionStarted("ignition-breakerless-6", 1, new string('c', 64), Technician, 81234.5, "km"),
        new RecordingKept(7, Recording, 3.2, "lead-resistance"),
        new TranscriptMade(8, "Number three, nine kilohms.", [new("Number", 0, 0.31, 0.98, 0)], true, "ggml-base.bin",
            new string('d', 64)),
        new TranscriptFailed(8, "The recording could not be read."),
        new FindingsProposed(8,
        [
            new("reading", "lead-resistance", 3, 9000, null, null, null, false, null, "Number three, nine kilohms", 0,
                26, null),
            new("observation", "lead-condition", 3, null, null, null, "burnt", true, null, "not burnt", 0, 9, "faint"),
            new("reading", "pickup-air-gap", null, null, 0.3, 0.4, null, false, null, "goes", 0, 4, null),
        ]),
        new FindingDropped(new(8, 1)),
        new PhotoKept(7, Photo, 4032, 3024, "plug-condition", 3),
        new NoteWritten(7, null, "Smells of \"petrol\"\nnear the tank: 30 °C, Ω, 🔧"),
        new ReadingDecided(7, "lead-resistance", 3, new DisplayedReading([9000, 9010], new(0.8, 3), 10), "9k", Meter,
            new(4000, 12000, "common practice, no source", "ILAC-G8:09/2019 non-binary, guard band U"),
            new(9005, 58.25, 116.5, 2, 1, Decision.Pass,
                [new("Accuracy", 58.2, double.PositiveInfinity), new("Repeats", 5, 1)]), [new(8, 0)]),
        new ReadingDecided(7, "pickup-air-gap", null, new Bracket(0.3, 0.4), "0.3 goes, 0.4 stops", null, null, null, []),
        new ObservationMade(7, "plug-condition", 3, "burnt", false, null),
        new ActionDone(7, "lead-condition", 3, "replaced", null),
        new LooseEndOpened(7, "Coil lead off the cap", "Put the coil lead back on the cap", "spark", null, "coil-lead"),
        new LooseEndTied(19),
        new LooseEndWaived(19, "The car stays on the stand."),
        new CheckLeftOut(7, "ignition-timing", "No timing light."),
        new EntryWithdrawn(16, "Wrong gauge."),
        new InspectionClosed(7),
        new InstrumentAdded(Meter),
        new InstrumentRetired("meter-1"),
        new TailSetAside("marigold-20261125T103000Z", 17),
        new WearPartAdded("Spark plugs", new(24, 20000, "km"), new(new(2026, 3, 1), 80150, "km")),
        new WearPartFitted(28, new(new(2026, 11, 25), null, null)),
        new WearPartRetired(28),
        new TranscriptCancelled(8),
        new TranscriptAsked(8),
        new InspectionStarted("ignition-breakerless-6", 2, new string('c', 64), Technician, null, null) { Rule = "risk 0.05" },
        new ReadingDecided(33, "coil-secondary-resistance", null,
            new DisplayedReading([9800], new(0.8, 2), 10)
            {
                Leads = new([0.3], new(0.8, 2), 10, true),
                Winding = new(60, 20, 4),
                Allowances = [new(AllowanceSource.Method, 5, AllowanceShape.Triangular)],
            },
            "9.8 kΩ", Meter with { Ranges = [new("20 kΩ", 20000, new(0.8, 2), 10)] }, null, null, []),
        new ReadingDecided(33, "plug-gap", 1, new Bracket(0.6, 0.7) { GaugeUncertainty = 0.005 }, "0.6", null, null, null, []),
        new UtteranceKept(7, Recording, 1.4, "lead-resistance"),
        new CommandHeard(32, SpokenCommand.TakeBack, "faint"),
        new CommandDone(32, CommandOutcome.TakenBack, [33], "spark", "Taken back: lead 3, 9.0 kΩ."),
        new OwnWordAdded("ignition-breakerless-6", "cooked", "lead-condition", "burnt"),
        new OwnWordAdded("ignition-breakerless-6", "sparkler", "plug-condition", null),
        new OwnWordRemoved(39),
        new WearPartIntervalSet(28, new(12, null, null)),
        new WearPartNotRenewed(28, 18, "A used one was put in."),
    ];

    /// <summary>25 November 2026, 10:30 in Greenwich, in a workshop one hour ahead.</summary>
    public static FakeTimeProvider Clock()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 10, 30, 0, 123, TimeSpan.Zero));
        clock.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("workshop", TimeSpan.FromHours(1), null, null));
        return clock;
    }

    public static VehicleAdded Vehicle(string name = "Marigold") => new(name, "1968 saloon, straight six", null);

    public static VehicleState Note(this Garage garage, string vehicle, string text) => garage.Append(
        vehicle, Technician, state => [new NoteWritten(state.OpenInspection?.Number ?? 0, null, text)]);

    public static long StartInspection(this Garage garage, string vehicle) => garage.Append(
        vehicle, Technician, _ => [new InspectionStarted("ignition-breakerless-6", 1, new string('c', 64), Technician, null, null)])
        .OpenInspection!.Number;
}
