using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>What the command line says was read.</summary>
/// <param name="Reading">The reading; null where a value was given with its uncertainty.</param>
/// <param name="Estimate">The value behind it.</param>
/// <param name="Instrument">The instrument with its other ranges; null where none were named.</param>
internal sealed record ReadingTaken(Reading? Reading, Estimate Estimate, Instrument? Instrument);

/// <summary>The options that describe a reading. Every number is in the unit of the command line, and the reading keeps
/// it: a percentage of a reading in °F is one of its number in °F.</summary>
internal sealed class ReadingOptions
{
    private readonly Option<double[]> _values =
        StrictNumber.RepeatedOption("--value", "A value as displayed. Give it again for each repeat of the reading.");

    private readonly InstrumentOptions _instrument = new();

    private readonly Option<double[]> _leads = StrictNumber.RepeatedOption(
        "--leads", "Resistance of the test leads, read with their tips together, to be subtracted. Give it again for each repeat.");

    private readonly Option<string> _leadsAccuracy = InstrumentOptions.AccuracyText(
        "--leads-accuracy", "Accuracy of another instrument the leads were read with. Without it: the same instrument and range, "
            + "whose error in percent is common to both readings.");

    private readonly Option<double?> _leadsResolution =
        StrictNumber.Option("--leads-resolution", "The smallest step that other instrument displays.");

    private readonly Option<Allowance[]> _allowances = AllowanceOption.Option();
    private readonly ScatterOptions _scatter = new();
    private readonly WindingOptions _winding = new();
    private readonly EvaluationOptions _evaluation = new();

    private readonly Option<double?> _uncertainty = StrictNumber.Option(
        "--uncertainty", "Standard uncertainty of the value, where it is known already, in place of --accuracy.");

    private readonly Option<double?> _degrees =
        StrictNumber.Option("--degrees-of-freedom", "Effective degrees of freedom of --uncertainty. Without it: infinite.");

    private readonly Option<double[]> _goes = StrictNumber.RepeatedOption(
        "--goes", "The largest gauge that goes, in place of values. Give it again for each blade of a stack.");

    private readonly Option<double[]> _stops = StrictNumber.RepeatedOption(
        "--stops", "The smallest gauge that does not go; again for each blade of a stack.");

    private readonly Option<double?> _bladeTolerance =
        StrictNumber.Option("--blade-tolerance", "How far each gauge may be from its marked size, ±. Without it: 0.");

    public IReadOnlyList<Option> All =>
    [
        _values, .. _instrument.All, _leads, _leadsAccuracy, _leadsResolution, _allowances,
        .. _scatter.All, .. _winding.All, _uncertainty, _degrees, _goes, _stops, _bladeTolerance, .. _evaluation.All,
    ];

    private IReadOnlyList<Option> OfDisplay =>
    [
        .. _instrument.All, _leads, _leadsAccuracy, _leadsResolution, _allowances,
        .. _scatter.All, .. _winding.All,
    ];

    /// <summary>The reading described.</summary>
    /// <param name="arguments">The command line.</param>
    /// <param name="unit">The unit of its numbers.</param>
    /// <param name="usual">How expanded uncertainties are found where nothing is said of it.</param>
    /// <exception cref="ArgumentException">It cannot be used; the message says why.</exception>
    public ReadingTaken Read(ParseResult arguments, Unit unit, Evaluation usual)
    {
        var values = arguments.GetValue(_values) ?? [];
        var evaluation = _evaluation.Read(arguments, usual);
        var gauges = arguments.GetValue(_goes) is [_, ..] || arguments.GetValue(_stops) is [_, ..];
        return (values, gauges) switch
        {
            ([], false) => throw CommandException.BadInput("Give the reading with --value, or with --goes and --stops."),
            ([], true) => Gauged(arguments, evaluation),
            (_, true) => throw CommandException.BadInput("Give either --value or the gauges --goes and --stops, not both."),
            _ when arguments.GetValue(_uncertainty) is { } u => Known(values, u, unit, arguments, evaluation),
            _ => Displayed(values, unit, arguments, evaluation),
        };
    }

    private ReadingTaken Gauged(ParseResult arguments, Evaluation evaluation)
    {
        RefuseAny(arguments, [.. OfDisplay, _uncertainty, _degrees], "is for a displayed value, not for gauges");
        if (arguments.GetValue(_goes) is not [_, ..] goes || arguments.GetValue(_stops) is not [_, ..] stops)
        {
            throw CommandException.BadInput(
                "Give both gauges: --goes for the largest that goes, --stops for the smallest that does not.");
        }

        var bracket = arguments.GetValue(_bladeTolerance) is { } tolerance
            ? FeelerBlades.Bracket(Blades(goes, tolerance), Blades(stops, tolerance))
            : FeelerBlades.Exact(goes, stops);
        return new(bracket, NewReading.Estimate(bracket, evaluation), null);
    }

    private ReadingTaken Known(double[] values, double uncertainty, Unit unit, ParseResult arguments, Evaluation evaluation)
    {
        RefuseAny(arguments, [.. OfDisplay, _bladeTolerance], "cannot be given with --uncertainty, which stands for the whole budget");
        DisplayedNumbers.RefuseBelowZero(values, unit);
        return values is [var value]
            ? new(null, Known(value, uncertainty, arguments, evaluation), null)
            : throw CommandException.BadInput("Give one --value with --uncertainty: the mean, where there were repeats.");
    }

    private Estimate Known(double value, double uncertainty, ParseResult arguments, Evaluation evaluation) => Estimate.Known(
        value, uncertainty, arguments.GetValue(_degrees) ?? double.PositiveInfinity, evaluation);

    private ReadingTaken Displayed(double[] values, Unit unit, ParseResult arguments, Evaluation evaluation)
    {
        RefuseAny(arguments, [_degrees], "goes with --uncertainty");
        RefuseAny(arguments, [_bladeTolerance], "goes with --goes and --stops");
        var instrument = _instrument.Read(arguments, values, unit);
        DisplayedNumbers.Refuse(values, LeadsOfMeter(arguments, unit), instrument.Resolution, _instrument.LargestRange(arguments), unit);
        var leads = Leads(unit, arguments);
        var read = AsRead.Of(instrument, values, leads is { SameInstrument: true } ? Sample.Of(leads.Values).Mean : null, _instrument.Ambient(arguments));
        var reading = read with
        {
            Leads = leads is { SameInstrument: true } ? read.Leads! with { Values = leads.Values } : leads,
            Allowances = [.. read.Allowances ?? [], .. arguments.GetValue(_allowances) ?? []],
            Scatter = _scatter.Read(arguments),
            Winding = _winding.Read(arguments, unit),
        };
        return new(reading, NewReading.Estimate(reading, evaluation), _instrument.ForAdvice(arguments, instrument, unit));
    }

    // Another instrument shows what it shows; the step alone says too little of it. Below zero neither reads.
    private double[] LeadsOfMeter(ParseResult arguments, Unit unit)
    {
        var leads = arguments.GetValue(_leads) ?? [];
        DisplayedNumbers.RefuseBelowZero(leads, unit);
        return arguments.GetValue(_leadsResolution) is null && unit.Kind == QuantityKind.Resistance ? leads : [];
    }

    /// <summary>The test leads; the accuracy of the same instrument is filled in by it.</summary>
    private TestLeads? Leads(Unit unit, ParseResult arguments)
    {
        var own = (Accuracy: InstrumentOptions.Accuracy(arguments.GetValue(_leadsAccuracy), unit), Resolution: arguments.GetValue(_leadsResolution));
        if (arguments.GetValue(_leads) is not [_, ..] values)
        {
            RefuseAny(arguments, [_leadsAccuracy, _leadsResolution], "goes with --leads");
            return null;
        }

        if (unit.Kind != QuantityKind.Resistance)
            throw CommandException.BadInput("Test leads are subtracted from a resistance only; leave out --leads.");
        return own switch
        {
            (null, null) => new(values, new(0, 0), 1, SameInstrument: true),
            ({ } other, { } step) => new(values, other, step, SameInstrument: false),
            _ => throw CommandException.BadInput("Give both --leads-accuracy and --leads-resolution for another instrument, or neither."),
        };
    }

    private static void RefuseAny(ParseResult arguments, IEnumerable<Option> options, string why)
    {
        if (options.FirstOrDefault(option => arguments.GetResult(option) is { Implicit: false }) is { } option)
            throw CommandException.BadInput($"{option.Name} {why}.");
    }

    private static Blade[] Blades(double[] sizes, double tolerance) => [.. sizes.Select(size => new Blade(size, tolerance))];
}
