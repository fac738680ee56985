using InspectLog.Checks;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>Which instruments a check can be measured with.</summary>
public static class InstrumentChoice
{
    /// <summary>Steps that should fit between the limits for an instrument to be fine enough.</summary>
    private const double StepsBetweenLimits = 20;

    /// <summary>Assumed until the workshop enters its own: common handheld instruments with cautious accuracy
    /// (common practice, no source). Each reading keeps a copy of what was assumed.</summary>
    public static IReadOnlyList<Instrument> Assumed { get; } =
    [
        new("assumed-ohms-low", "Multimeter, 200 Ω range (accuracy assumed)", QuantityKind.Resistance, new(1, 5), 0.1),
        new("assumed-ohms-high", "Multimeter, 20 kΩ range (accuracy assumed)", QuantityKind.Resistance, new(1, 5), 10),
        new("assumed-volts", "Multimeter, 20 V range (accuracy assumed)", QuantityKind.Voltage, new(0.8, 2), 0.01),
        new("assumed-length", "Wire or dial gauge (accuracy assumed)", QuantityKind.Length, new(0, 1), 0.01),
        new("assumed-angle", "Timing light against the marks (accuracy assumed)", QuantityKind.Angle, new(0, 1), 1),
    ];

    /// <summary>All instruments in use: the workshop's, and for kinds it has none for, the assumed.</summary>
    public static IReadOnlyList<Instrument> InUse(WorkshopState workshop) =>
        [.. workshop.Instruments, .. Assumed.Where(assumed => !workshop.Instruments.Exists(own => own.Kind == assumed.Kind))];

    /// <summary>Instruments for a measurand, the one to propose first: the one used last for the check, else the
    /// coarsest that still has <see cref="StepsBetweenLimits"/> steps between the limits, else the finest.</summary>
    public static IReadOnlyList<Instrument> For(Measurand measurand, WorkshopState workshop, string? lastUsed)
    {
        var fitting = InUse(workshop).Where(instrument => instrument.Kind == measurand.Kind).ToList();
        var proposed = fitting.Find(instrument => instrument.Id == lastUsed) ?? FineEnough(fitting, measurand);
        return proposed is null ? fitting : [proposed, .. fitting.Where(instrument => instrument != proposed)];
    }

    private static Instrument? FineEnough(List<Instrument> fitting, Measurand measurand)
    {
        var span = measurand.Limits is { Lower: { } lower, Upper: { } upper }
            ? upper - lower
            : measurand.Plausible.To - measurand.Plausible.From;
        return fitting.Where(instrument => instrument.Resolution <= span / StepsBetweenLimits).MaxBy(i => i.Resolution)
            ?? fitting.MinBy(instrument => instrument.Resolution);
    }
}
