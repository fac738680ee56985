using System.Globalization;
using InspectLog.Checks;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>Which instruments a check can be measured with.</summary>
public static class InstrumentChoice
{
    /// <summary>Steps that should fit between the limits for an instrument to be fine enough.</summary>
    private const double StepsBetweenLimits = 20;

    private const string AssumedId = "assumed-";

    /// <summary>Assumed until the workshop enters its own: common handheld instruments with cautious accuracy
    /// (common practice, no source). Each reading keeps a copy of what was assumed.</summary>
    public static IReadOnlyList<Instrument> Assumed { get; } =
    [
        Multimeter("ohms", QuantityKind.Resistance, Range("200 Ω", 200, 1, 0.1), Range("20 kΩ", 20_000, 1, 10), Range("2 MΩ", 2e6, 1, 1000), Range("20 MΩ", 20e6, 2, 10_000)),
        Multimeter("volts", QuantityKind.Voltage, new("20 V", 20, new(0.8, 2), 0.01), new("200 V", 200, new(0.8, 2), 0.1), new("1000 V", 1000, new(0.8, 2), 1)),
        new(AssumedId + "length", "Wire or dial gauge (accuracy assumed)", QuantityKind.Length, new(0, 1), 0.01),
        new(AssumedId + "angle", "Timing light against the marks (accuracy assumed)", QuantityKind.Angle, new(0, 1), 1),
        new(AssumedId + "tape", "Tape measure (accuracy assumed)", QuantityKind.Length, new(0, 2), 1),
        new(AssumedId + "amps", "Multimeter or clamp meter (accuracy assumed)", QuantityKind.Current, new(1.5, 5), 0.0001)
        {
            Ranges = [new("200 mA", 0.2, new(1.5, 5), 0.0001), new("10 A", 10, new(2, 5), 0.01), new("100 A", 100, new(3, 5), 0.1), new("1000 A", 1000, new(3, 5), 1)],
            AutoRange = true,
        },
        new(AssumedId + "revs", "Rev counter (accuracy assumed)", QuantityKind.Speed, new(2, 1), 10),
        new(AssumedId + "thermometer", "Thermometer (accuracy assumed)", QuantityKind.Temperature, new(0, 3), 1),
        new(AssumedId + "pressure", "Pressure gauge (accuracy assumed)", QuantityKind.Pressure, new(3, 1), 20),
        new(AssumedId + "torque", "Torque wrench (accuracy assumed)", QuantityKind.Torque, new(6, 0), 1),
        new(AssumedId + "odometer", "Odometer (accuracy assumed)", QuantityKind.Distance, new(4, 1), 1),
        new(AssumedId + "farads", "Multimeter (accuracy assumed)", QuantityKind.Capacitance, new(4, 5), 0.001),
        new(AssumedId + "henries", "Multimeter (accuracy assumed)", QuantityKind.Inductance, new(4, 5), 0.01),
        new(AssumedId + "watch", "Watch stopped by hand (accuracy assumed)", QuantityKind.Time, new(0, 5), 0.1),
        new(AssumedId + "percent", "Tester with a scale in percent (accuracy assumed)", QuantityKind.Ratio, new(0, 2), 1),
        new(AssumedId + "hydrometer", "Hydrometer (accuracy assumed)", QuantityKind.Density, new(0, 1), 0.005),
    ];

    /// <summary>Whether the step of an instrument is known, so that a value between its steps cannot be its own. Of one that
    /// is assumed it is not: it is taken coarse, which is the cautious side.</summary>
    public static bool KnowsStepOf(Instrument instrument) => !instrument.Id.StartsWith(AssumedId, StringComparison.Ordinal);

    /// <summary>What is taken where a person says that another instrument was used than the one on file: the assumed one of
    /// the kind; of a kind without one, an instrument as accurate as the one on file.</summary>
    /// <param name="instead">The instrument on file.</param>
    public static Instrument Another(Instrument instead) =>
        Assumed.FirstOrDefault(assumed => assumed.Kind == instead.Kind) is { } assumed
            ? assumed with { Id = AssumedId + "another", Name = "Another instrument (accuracy assumed)" }
            : new(AssumedId + "another", $"Another instrument (accuracy assumed as of {instead.Name})", instead.Kind, instead.Accuracy, instead.Resolution);

    /// <summary>All instruments in use: the workshop's, and for kinds it has none for, the assumed. One with several ranges
    /// that does not choose by itself stands once for each range.</summary>
    public static IReadOnlyList<Instrument> InUse(WorkshopState workshop) =>
    [
        .. workshop.Instruments.SelectMany(OnEachRange),
        .. Assumed.Where(assumed => !workshop.Instruments.Exists(own => own.Kind == assumed.Kind)),
    ];

    /// <summary>The workshop's own sets of gauges for a kind: nothing assumed stands for them, as their sizes are read and not
    /// their accuracy.</summary>
    public static IEnumerable<Instrument> Gauges(QuantityKind kind, WorkshopState workshop) =>
        workshop.Instruments.Where(one => one.Kind == kind);

    /// <summary>The gauges that a vehicle was last gauged with, as the workshop has them now; null where none were named, or
    /// they are not in use any more.</summary>
    public static Instrument? LastGauges(VehicleState vehicle, QuantityKind kind, WorkshopState workshop)
    {
        var last = vehicle.Inspections.Reverse().SelectMany(inspection => inspection.Gauged(kind).Reverse()).FirstOrDefault();
        return Gauges(kind, workshop).FirstOrDefault(one => one.Id == last?.Body.Instrument!.Id);
    }

    /// <summary>An instrument as it stands on each of its ranges, the one it is on first.</summary>
    /// <param name="instrument">The instrument, on one of them.</param>
    /// <param name="others">The instruments in use.</param>
    public static IEnumerable<Instrument> RangesOf(Instrument instrument, IEnumerable<Instrument> others) =>
        [instrument, .. others.Where(one => one.Kind == instrument.Kind && MeterOf(one) == MeterOf(instrument))];

    private static string MeterOf(Instrument instrument) => instrument.Id.Split('.')[0];

    /// <summary>Instruments for a measurand, the one to propose first: the one used last for the check, else the
    /// coarsest that still has <see cref="StepsBetweenLimits"/> steps between the limits, else the finest.</summary>
    public static IReadOnlyList<Instrument> For(Measurand measurand, WorkshopState workshop, string? lastUsed)
    {
        var fitting = InUse(workshop).Where(instrument => instrument.Kind == measurand.Kind).ToList();
        var proposed = fitting.Find(instrument => instrument.Id == lastUsed) ?? FineEnough(fitting, measurand);
        return proposed is null ? fitting : [proposed, .. fitting.Where(instrument => instrument != proposed)];
    }

    /// <summary>A range chosen by hand goes by the instrument's id, a point and its full scale.</summary>
    private static IEnumerable<Instrument> OnEachRange(Instrument instrument) => instrument is { AutoRange: null, Ranges: [_, _, ..] ranges }
        ? ranges.Select(range => instrument.On(range) with { Id = string.Create(CultureInfo.InvariantCulture, $"{instrument.Id}.{range.FullScale}") })
        : [instrument];

    private static MeterRange Range(string name, double fullScale, double percent, double step) => new(name, fullScale, new(percent, 5), step);

    private static Instrument Multimeter(string id, QuantityKind kind, params IReadOnlyList<MeterRange> ranges) =>
        new(AssumedId + id, "Multimeter (accuracy assumed)", kind, ranges[0].Accuracy, ranges[0].Resolution) { Ranges = ranges, AutoRange = true };

    private static Instrument? FineEnough(List<Instrument> fitting, Measurand measurand)
    {
        var span = measurand.Limits is { Lower: { } lower, Upper: { } upper }
            ? upper - lower
            : measurand.Plausible.To - measurand.Plausible.From;
        return fitting.Where(instrument => instrument.Resolution <= span / StepsBetweenLimits).MaxBy(i => i.Resolution)
            ?? fitting.MinBy(instrument => instrument.Resolution);
    }
}
