using InspectLog.Doubts;
using InspectLog.Journal.Entries;
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

    public static readonly IReadOnlyList<Doubt> OneOfEachDoubt =
    [
        new UnknownWords("mumble"),
        new HeardAs("knew one", "new 1"),
        new SaidOfPlans("please"),
        new InPlaceOfNumber("run"),
        new WithoutNumber("ohms"),
        new DoneOrFound("clean"),
        new PerhapsPlace("lead six"),
        new PerhapsNoFinding("looking"),
        new HeardUnclearly(["ninety", "k"]),
        new TakenFor([new("weeks park", "weak spark")], ["wet spark"]),
        new TakenForNumber("to", 2),
        new TakenForUnit("owns", "Ω"),
        new TakenForParity("odd"),
        new OutsidePlausibleSpan("lead-resistance", 90000, 100, 50000),
        new WrongUnit("V", "lead-resistance", "kΩ"),
        new EitherUnit("thou", "mm"),
        new UnitUnsaid("Ω", "kΩ"),
        new FiguresSaidApart(),
        new FiguresWrittenApart(),
        new FiguresWrittenTogether(),
        new PointOrSlash(3, 4),
        new SoundsLikeNumber(19, 90),
        new OnlyBound(),
        new SaidAsRange(),
        new BareNumber(),
        new GaugesReversed(),
        new CheckUnnamed(),
        new EitherCheck("lead-resistance", "coil-secondary-resistance"),
        new EitherCondition("burnt", "chafed"),
        new FaultUnsaid(),
        new Hedged(),
        new PlaceUnnamed("plug-condition", "plug"),
        new TakenAsAll(6),
        new TakenInOrder(),
        new AnyWithoutNot(),
        new ValuesForPlaces(3, 6),
        new EndUnknown(),
        new OfLastLookedAt(),
        new CountOrValue(),
        new CylinderOrValue(),
        new CountStartUnsaid(),
        new CountedUnnamed(),
        new CommandFaint(),
        new CommandHeardAs("confirmed that"),
        new AsWorded("faint"),
    ];

    public static readonly IReadOnlyList<EntryBody> OneOfEachKind =
    [
        new VehicleAdded("Marigold", "1968 saloon, straight six", new(6, [1, 5, 3, 6, 2, 4], RotorRotation.Clockwise)),
        new VehicleDescribed("Marigold", "", null),
        new VehiclePictured(Photo),
        new PrivateFactsNoted("Ana Lindqvist", "ana@example.org", "ZZ-000-42"),
        new LimitsSet("coil-circuit-resistance", 0.6, 2, "Maker's manual, page 31"),
        new LimitsCleared("coil-circuit-resistance"),
        new InspectionStarted("ignition-breakerless-6", 1, new string('c', 64), Technician, 81234.5, "km"),
        new RecordingKept(7, Recording, 3.2, "lead-resistance"),
        new TranscriptMade(8, "Number three, nine kilohms.", [new("Number", 0, 0.31, 0.98, 0)], true, "ggml-base.bin",
            new string('d', 64)),
        new TranscriptFailed(8, "The recording could not be read."),
        new WordedFindingsProposed(8,
        [
            new("reading", "lead-resistance", 3, 9000, null, null, null, false, null, "Number three, nine kilohms", 0,
                26, null),
            new("observation", "lead-condition", 3, null, null, null, "burnt", true, null, "not burnt", 0, 9, "faint"),
            new("reading", "pickup-air-gap", null, null, 0.25, 0.35, null, false, null, "goes", 0, 4, null),
        ]),
        new FindingDropped(new(8, 1)),
        new PhotoKept(7, Photo, 4032, 3024, "plug-condition", 3),
        new NoteWritten(7, null, "Smells of \"petrol\"\nnear the tank: 30 °C, Ω, 🔧"),
        new ReadingDecided(7, "lead-resistance", 3, new DisplayedReading([9000, 9010], new(0.8, 3), 10), "9k", Meter,
            new(4000, 12000, "common practice, no source", "ILAC-G8:09/2019 non-binary, guard band U"),
            new(9005, 58.25, 116.5, 2, 1, Decision.Pass,
                [new("Accuracy", 58.2, double.PositiveInfinity), new("Repeats", 5, 1)]), [new(8, 0)]),
        new ReadingDecided(7, "pickup-air-gap", null, new Bracket(0.25, 0.35), "0.25 goes, 0.35 stops", null, null, null, []),
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
        new WordedCommandHeard(32, SpokenCommand.TakeBack, "faint"),
        new CommandDone(32, CommandOutcome.TakenBack, [33], "spark", "Taken back: lead 3, 9.0 kΩ."),
        new OwnWordAdded("ignition-breakerless-6", "cooked", "lead-condition", "burnt"),
        new OwnWordAdded("ignition-breakerless-6", "sparkler", "plug-condition", null),
        new OwnWordRemoved(39),
        new WearPartIntervalSet(28, new(12, null, null)),
        new WearPartNotRenewed(28, 18, "A used one was put in."),
        new FindingsProposed(8,
        [
            new("reading", "lead-resistance", 3, 90000, null, null, null, false, null, "Number three, ninety k", 0, 22, OneOfEachDoubt),
            new("observation", "lead-condition", 3, null, null, null, "chafed", true, null, "not chafed", 0, 10, []),
        ]),
        new CommandHeard(32, SpokenCommand.Confirm, new CommandHeardAs("Confirmed that.")),
        new CommandHeard(32, SpokenCommand.Stop, null),
        new EntryRestored(16),
        new ReportChoice(14, false),
        new NoteWritten(7, "plug-condition", "Smells of petrol near the tank.")
        {
            Amends = 14, Stamp = new("3f2c.9ab0", new(2026, 11, 25, 11, 29, 58, 500, TimeSpan.FromHours(1))),
        },
        new PhotoKept(7, Photo, 4032, 3024, "plug-condition", 2) { Amends = 13, Caption = "Oil on the thread", Shows = 17 },
        new LooseEndOpened(7, "Lead 2 disconnected", "Reconnect lead 2", "lead-condition", 2, null) { Part = "plug-lead", Record = 18 },
        new LooseEndTied(51) { Record = 18 },
        new ReadingDecided(33, "supply-voltage", null, new DisplayedReading([11.6], new(0.8, 2), 0.01), "11.6 V", null,
            new(null, 0.5, "common practice, no source", "non-binary"),
            new(1.2, 0.02, 0.04, 2, 0, Decision.Fail, [new("counts of this reading", 0.02, double.PositiveInfinity)]), [])
        {
            With = new(ComparisonForm.Difference, "battery-voltage", 50, new DisplayedReading([12.8], new(0.8, 2), 0.01), true),
        },
        new ReadingDecided(33, "lead-resistance", 2, new DisplayedReading([18200], new(1, 5), 10), "18.2 kΩ", null, null, null, [])
        {
            With = new(ComparisonForm.Proportion, "lead-length", 51, new Bracket(590, 610), false),
        },
        new InstrumentAdded(Papered),
        new ReadingDecided(33, "supply-voltage", null,
            new DisplayedReading([12.6], new(0.75, 3) { Fixed = 0.06 }, 0.01)
            {
                Correction = -0.02,
                Ambient = 33,
                Allowances = [new(AllowanceSource.Reference, 0.01, AllowanceShape.TwoStandardDeviations)],
            },
            "12.6 V", Papered, null, null, []),
        new AccessGiven("Tess Okafor", "Tess’s phone", AccessRole.Viewer, new string('d', 64))
        {
            Vehicle = "marigold", Inspection = 33, Until = new(2026, 12, 2, 10, 30, 0, TimeSpan.Zero),
        },
        new AccessWithdrawn(57),
        new VehiclesNoted([new("marigold", 58, new string('e', 64)), new("teasel", 1, new string('f', 64))]),
        new WorkshopNoted(12, new string('a', 64)),
        new LossAccepted("teasel", 1, new string('f', 64)),
        new LossAccepted(null, 12, new string('a', 64)),
        new WordsCorrected(8, "Number three, nine kilohms, warm."),
        new FindingReopened(new(8, 1)),
        new PersonErased("the former owner", "a privacy request", [[4, 4], [8, 11]], 2) { Nameless = [new(8, new string('a', 64))] },
        new PersonErased("the former owner", "a privacy request", [[4, 4]], 0),
        new EntryRestated(14, System.Text.Json.JsonSerializer.SerializeToElement(new { inspection = 7, text = "(name erased) says it pinks" })),
        new PhotoMarked(13,
        [
            new(MarkShape.Arrow, [new(0.62, 0.7), new(0.25, 0.125)]) { Text = "Hairline crack" },
            new(MarkShape.Ring, [new(0.4, 0.4), new(0.6, 0.55)]),
            new(MarkShape.Line, [new(0.1, 0.9), new(0.15, 0.85), new(0.2, 0.9)]),
        ]),
        new PhotoMarked(13,
        [
            new(MarkShape.Text, [new(0.5, 0.5)]) { Text = "Oil" },
            new(MarkShape.Measure, [new(0.4, 0.5), new(0.4586, 0.5)])
            {
                Measured = new([new(0.05, 0.05), new(0.2941, 0.05)], [25], 0.05, 2048, 1536, 1, 6.0012, 0.1521),
            },
        ])
        {
            Amends = 68,
        },
        new WorkshopNamed("Okafor & Daughter", "3 Mill Lane\nHazelbrook"),
        new UrgencyJudged(7, "cap-contacts", "soon"),
    ];

    /// <summary>An instrument with all that its papers can say.</summary>
    private static Instrument Papered => new("meter-2", "Second meter", QuantityKind.Voltage, new(0.5, 2) { PercentOfRange = 0.1, Fixed = 0.02 }, 0.01)
    {
        Ranges = [new("20 V", 20, new(0.5, 2) { PercentOfRange = 0.1, Fixed = 0.02 }, 0.01), new("200 V", 200, new(0.8, 2), 0.1)],
        AutoRange = true,
        SerialNumber = "INV-0042",
        Calibrated = new(2025, 3, 3),
        Due = new(2026, 3, 3),
        Corrections = [new(1, 0.01), new(15, -0.03)],
        CertificateUncertainty = 0.01,
        Temperature = new(18, 28) { PerDegree = new(0.05, 0.2) { PercentOfRange = 0.01 } },
    };

    /// <summary>25 November 2026, 10:30 in Greenwich, in a workshop one hour ahead.</summary>
    public static FakeTimeProvider Clock()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 10, 30, 0, 123, TimeSpan.Zero));
        clock.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("workshop", TimeSpan.FromHours(1), null, null));
        return clock;
    }

    public static VehicleAdded Vehicle(string name = "Marigold") => new(name, "1968 saloon, straight six", null);
}
