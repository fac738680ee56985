using System.CommandLine;
using System.CommandLine.Parsing;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that describe the instrument of a displayed reading. Its numbers stay in the unit of the command
/// line, as the values do.</summary>
internal sealed class InstrumentOptions
{
    private readonly Option<string> _accuracy = AccuracyText(
        "--accuracy", "The instrument's stated accuracy: percent of the reading, percent of the range, counts of the last digit, a fixed size, or any sum of them.");

    private readonly Option<double?> _resolution =
        StrictNumber.Option("--resolution", "The smallest step the instrument displays.");

    private readonly Option<double?> _range =
        StrictNumber.Option("--range", "Full scale of the range in use. A value beyond it is refused.");

    private readonly Option<double[]> _otherRanges = StrictNumber.RepeatedOption(
        "--other-range",
        "Full scale of another range of the instrument, for advice; its accuracy is taken as the same and its steps in "
            + "proportion. Give it again for each.");

    private readonly Option<bool> _autoRange = new("--auto-range")
    {
        Description = "The instrument chooses by itself among --range and each --other-range: the finest that shows the value.",
    };

    private readonly Option<string[]> _corrections = new("--correction")
    {
        Description = "A point of its certificate: a reading, and what is added to it; between two points in a straight line, beyond them nothing. Give it again for each.",
        HelpName = "READING=CORRECTION",
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
    };

    private readonly Option<double?> _certificate =
        StrictNumber.Option("--certificate-uncertainty", "The expanded uncertainty (k = 2) of its certificate.");

    private readonly Option<double?> _ambient =
        StrictNumber.Option("--ambient", "Temperature of the air about the instrument, °C, for --temperature-coefficient.");

    private readonly Option<string> _perDegree = AccuracyText(
        "--temperature-coefficient", "What its data sheet adds for each °C outside --stated-at: \"0.1 x accuracy\", or an accuracy.");

    private readonly Option<string> _statedAt = new("--stated-at")
    {
        Description = "Temperatures its accuracy is stated for, °C: \"23±5\" or \"18 to 28\". Without it: 23±5.",
        HelpName = "SPAN",
    };

    public IReadOnlyList<Option> All =>
    [
        _accuracy, _resolution, _range, _otherRanges, _autoRange, _corrections, _certificate, _ambient, _perDegree, _statedAt,
    ];

    /// <summary>The temperature about the instrument; null where it is not given.</summary>
    public double? Ambient(ParseResult arguments) => arguments.GetValue(_ambient);

    /// <summary>Full scale of the largest range it can be on; null where none is given.</summary>
    public double? LargestRange(ParseResult arguments) => arguments.GetValue(_autoRange)
        ? (arguments.GetValue(_otherRanges) ?? []).Append(arguments.GetValue(_range).GetValueOrDefault()).Max()
        : arguments.GetValue(_range);

    /// <summary>The instrument described, on the range it shows the values on.</summary>
    public Instrument Read(ParseResult arguments, double[] values, Unit unit)
    {
        var accuracy = Accuracy(arguments.GetValue(_accuracy), unit)
            ?? throw CommandException.BadInput("Give the instrument's accuracy with --accuracy, such as --accuracy \"0.8%+3\".");
        var resolution = arguments.GetValue(_resolution)
            ?? throw CommandException.BadInput("Give the smallest step the instrument displays with --resolution, such as --resolution 0.1.");
        var others = Ranges(arguments, accuracy, resolution, unit);
        var range = arguments.GetValue(_range) is { } full ? RangeOf(full, accuracy, resolution, unit) : null;
        if (accuracy.PercentOfRange is not null && range is null)
            throw CommandException.BadInput("The accuracy has a percentage of the range: give the range in use with --range.");
        return new Instrument("given", "given", unit.Kind, accuracy, resolution)
        {
            Ranges = range is null ? null : [range, .. others],
            AutoRange = arguments.GetValue(_autoRange),
            Corrections = Corrections(arguments),
            CertificateUncertainty = AboveZero(_certificate, arguments),
            Temperature = Temperature(arguments, unit),
        }.OnRangeFor(values);
    }

    /// <summary>The same instrument with the ranges it was not read on, for advice; null where there are none.</summary>
    public Instrument? ForAdvice(ParseResult arguments, Instrument instrument, Unit unit)
    {
        var inUse = instrument.LargestRange()?.FullScale;
        var all = arguments.GetValue(_otherRanges) is [_, ..] others ? others.Append(arguments.GetValue(_range).GetValueOrDefault()) : [];
        var accuracy = Accuracy(arguments.GetValue(_accuracy), unit)!;
        var step = instrument.Resolution;
        MeterRange[] rest =
        [
            .. all.Where(full => full != inUse).Select(full => RangeOf(full, accuracy.On(full), step * full / inUse.GetValueOrDefault(), unit)),
        ];
        return rest.Length == 0 ? null : instrument with { Ranges = rest };
    }

    /// <summary>An accuracy in the unit of the command line; null where none is given.</summary>
    public static Accuracy? Accuracy(string? text, Unit unit)
    {
        if (text is null)
            return null;
        return Measuring.Accuracy.TryParse(text, unit.Kind, out var accuracy, out var problem)
            ? InUnit(accuracy, unit)
            : throw CommandException.BadInput(problem);
    }

    /// <summary>An option that takes an accuracy as data sheets write it.</summary>
    public static Option<string> AccuracyText(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "\"P%+N\"",
    };

    // A meter counts to the same number on each of its ranges, so its steps go with full scale.
    private List<MeterRange> Ranges(ParseResult arguments, Accuracy accuracy, double resolution, Unit unit)
    {
        var full = arguments.GetValue(_range);
        if (arguments.GetValue(_otherRanges) is not [_, ..] others)
            return arguments.GetValue(_autoRange) ? throw CommandException.BadInput("Give --auto-range its ranges with --range and --other-range.") : [];
        if (!(full > 0) || others.Any(other => other <= 0))
            throw CommandException.BadInput("Give the range in use with --range, above 0, and each --other-range above 0.");
        return [.. others.Select(other => RangeOf(other, accuracy, resolution * other / full.Value, unit))];
    }

    private static MeterRange RangeOf(double full, Accuracy accuracy, double resolution, Unit unit) =>
        new(MeterRange.NameOf(unit.ToBase(full), unit), full, accuracy, resolution);

    private static Accuracy InUnit(Accuracy accuracy, Unit unit) =>
        accuracy with { Fixed = accuracy.Fixed is { } size ? unit.DifferenceFromBase(size) : null };

    private List<CalibrationPoint>? Corrections(ParseResult arguments)
    {
        var points = (arguments.GetValue(_corrections) ?? []).Select(Point).OrderBy(point => point.Reading).ToList();
        if (points.DistinctBy(point => point.Reading).Count() < points.Count)
            throw CommandException.BadInput("--correction gives two corrections for one reading.");
        return points.Count == 0 ? null : points;
    }

    private static CalibrationPoint Point(string text) =>
        text.Split('=') is [var reading, var correction]
        && StrictNumber.TryRead(reading.Trim(), out var at) && StrictNumber.TryRead(correction.Trim(), out var added)
        && Workable.Is(at) && Workable.Is(added)
            ? new(at, added)
            : throw CommandException.BadInput($"\"{text}\" given with --correction is not a correction. Write it like 10=-0.02, the reading first.");

    private TemperatureTerm? Temperature(ParseResult arguments, Unit unit)
    {
        var (text, span) = (arguments.GetValue(_perDegree), arguments.GetValue(_statedAt));
        if (text is null)
        {
            return span is null && arguments.GetValue(_ambient) is null
                ? null
                : throw CommandException.BadInput("Give what the data sheet adds for each °C with --temperature-coefficient, such as \"0.1 x accuracy\".");
        }

        if (!TemperatureTerm.TryParse(text, span ?? "23±5", unit.Kind, out var term, out var problem))
            throw CommandException.BadInput(problem);
        return arguments.GetValue(_ambient) is null
            ? throw CommandException.BadInput("Give the temperature of the air with --ambient, such as --ambient 33.")
            : term with { PerDegree = term.PerDegree is { } perDegree ? InUnit(perDegree, unit) : null };
    }

    private static double? AboveZero(Option<double?> option, ParseResult arguments) => arguments.GetValue(option) is not { } number ? null
        : number > 0 ? number
        : throw CommandException.BadInput($"{option.Name} must be above 0.");
}
