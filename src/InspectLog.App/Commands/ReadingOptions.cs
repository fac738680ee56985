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

    private readonly Option<Accuracy> _accuracy = AccuracyOption(
        "--accuracy", "The instrument's stated accuracy: percent of the reading plus counts of the last digit.");

    private readonly Option<double?> _resolution =
        StrictNumber.Option("--resolution", "The smallest step the instrument displays.");

    private readonly Option<double?> _range =
        StrictNumber.Option("--range", "Full scale of the range in use. A value beyond it is refused.");

    private readonly Option<double[]> _otherRanges = StrictNumber.RepeatedOption(
        "--other-range",
        "Full scale of another range of the instrument, for advice; its accuracy is taken as the same and its steps in "
            + "proportion. Give it again for each.");

    private readonly Option<double[]> _leads = StrictNumber.RepeatedOption(
        "--leads", "Resistance of the test leads, read with their tips together, to be subtracted. Give it again for each repeat.");

    private readonly Option<Accuracy> _leadsAccuracy = AccuracyOption(
        "--leads-accuracy", "Accuracy of another instrument the leads were read with. Without it: the same instrument and range, "
            + "whose error in percent is common to both readings.");

    private readonly Option<double?> _leadsResolution =
        StrictNumber.Option("--leads-resolution", "The smallest step that other instrument displays.");

    private readonly Option<Allowance[]> _allowances = AllowanceOption.Option();
    private readonly WindingOptions _winding = new();

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
        _values, _accuracy, _resolution, _range, _otherRanges, _leads, _leadsAccuracy, _leadsResolution, _allowances,
        .. _winding.All, _uncertainty, _degrees, _goes, _stops, _bladeTolerance,
    ];

    private IReadOnlyList<Option> OfDisplay =>
    [
        _accuracy, _resolution, _range, _otherRanges, _leads, _leadsAccuracy, _leadsResolution, _allowances,
        .. _winding.All,
    ];

    /// <summary>The reading described.</summary>
    /// <exception cref="ArgumentException">It cannot be used; the message says why.</exception>
    public ReadingTaken Read(ParseResult arguments, Unit unit)
    {
        var values = arguments.GetValue(_values) ?? [];
        var gauges = arguments.GetValue(_goes) is [_, ..] || arguments.GetValue(_stops) is [_, ..];
        return (values, gauges) switch
        {
            ([], false) => throw CommandException.BadInput("Give the reading with --value, or with --goes and --stops."),
            ([], true) => Gauged(arguments),
            (_, true) => throw CommandException.BadInput("Give either --value or the gauges --goes and --stops, not both."),
            _ when arguments.GetValue(_uncertainty) is { } u => Known(values, u, arguments),
            _ => Displayed(values, unit, arguments),
        };
    }

    private ReadingTaken Gauged(ParseResult arguments)
    {
        RefuseAny(arguments, [.. OfDisplay, _uncertainty, _degrees], "is for a displayed value, not for gauges");
        if (arguments.GetValue(_goes) is not [_, ..] goes || arguments.GetValue(_stops) is not [_, ..] stops)
        {
            throw CommandException.BadInput(
                "Give both gauges: --goes for the largest that goes, --stops for the smallest that does not.");
        }

        var bracket = arguments.GetValue(_bladeTolerance) is { } tolerance
            ? FeelerBlades.Bracket(Blades(goes, tolerance), Blades(stops, tolerance))
            : new Bracket(goes.Sum(), stops.Sum());
        return new(bracket, Estimate.Of(bracket), null);
    }

    private ReadingTaken Known(double[] values, double uncertainty, ParseResult arguments)
    {
        RefuseAny(arguments, [.. OfDisplay, _bladeTolerance], "cannot be given with --uncertainty, which stands for the whole budget");
        return values is [var value]
            ? new(null, Estimate.Known(value, uncertainty, arguments.GetValue(_degrees) ?? double.PositiveInfinity), null)
            : throw CommandException.BadInput("Give one --value with --uncertainty: the mean, where there were repeats.");
    }

    private ReadingTaken Displayed(double[] values, Unit unit, ParseResult arguments)
    {
        RefuseAny(arguments, [_degrees], "goes with --uncertainty");
        RefuseAny(arguments, [_bladeTolerance], "goes with --goes and --stops");
        var accuracy = arguments.GetValue(_accuracy)
            ?? throw CommandException.BadInput("Give the instrument's accuracy with --accuracy, such as --accuracy \"0.8%+3\".");
        var resolution = arguments.GetValue(_resolution)
            ?? throw CommandException.BadInput("Give the smallest step the instrument displays with --resolution, such as --resolution 0.1.");
        RefuseBeyond(arguments.GetValue(_range), values);
        var reading = new DisplayedReading(values, accuracy, resolution)
        {
            Leads = Leads(accuracy, resolution, unit, arguments),
            Allowances = arguments.GetValue(_allowances),
            Winding = _winding.Read(arguments, unit),
        };
        return new(reading, Estimate.Of(reading), Instrument(accuracy, resolution, unit, arguments));
    }

    private TestLeads? Leads(Accuracy accuracy, double resolution, Unit unit, ParseResult arguments)
    {
        var own = (Accuracy: arguments.GetValue(_leadsAccuracy), Resolution: arguments.GetValue(_leadsResolution));
        if (arguments.GetValue(_leads) is not [_, ..] values)
        {
            RefuseAny(arguments, [_leadsAccuracy, _leadsResolution], "goes with --leads");
            return null;
        }

        if (unit.Kind != QuantityKind.Resistance)
            throw CommandException.BadInput("Test leads are subtracted from a resistance only; leave out --leads.");
        return own switch
        {
            (null, null) => new(values, accuracy, resolution, SameInstrument: true),
            ({ } other, { } step) => new(values, other, step, SameInstrument: false),
            _ => throw CommandException.BadInput("Give both --leads-accuracy and --leads-resolution for another instrument, or neither."),
        };
    }

    // A meter counts to the same number on each of its ranges, so its steps go with full scale.
    private Instrument? Instrument(Accuracy accuracy, double resolution, Unit unit, ParseResult arguments)
    {
        if (arguments.GetValue(_otherRanges) is not [_, ..] others)
            return null;
        var full = arguments.GetValue(_range).GetValueOrDefault();
        if (full <= 0 || others.Any(other => other <= 0))
            throw CommandException.BadInput("Give the range in use with --range, above 0, and each --other-range above 0.");
        return new("given", "given", unit.Kind, accuracy, resolution)
        {
            Ranges = [.. others.Select(other => new MeterRange(
                Printed.Value(unit.ToBase(other), unit), other, accuracy, resolution * other / full))],
        };
    }

    private static void RefuseBeyond(double? range, double[] values)
    {
        foreach (var value in values.Where(value => Math.Abs(value) > range))
            throw CommandException.BadInput(FormattableString.Invariant(
                $"{value} lies beyond the range of {range}: a meter shows an overload there, not a value. Use a larger range."));
    }

    private static void RefuseAny(ParseResult arguments, IEnumerable<Option> options, string why)
    {
        if (options.FirstOrDefault(option => arguments.GetResult(option) is { Implicit: false }) is { } option)
            throw CommandException.BadInput($"{option.Name} {why}.");
    }

    private static Blade[] Blades(double[] sizes, double tolerance) => [.. sizes.Select(size => new Blade(size, tolerance))];

    private static Option<Accuracy> AccuracyOption(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "\"P%+N\"",
        CustomParser = result =>
        {
            if (Accuracy.TryParse(result.Tokens[0].Value, out var accuracy, out var problem))
                return accuracy;
            result.AddError(problem);
            return null;
        },
    };
}
