using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that give a winding's resistance cold and hot, for its temperature.</summary>
internal sealed class RiseOptions
{
    private readonly Option<bool> _rise = new("--rise")
    {
        Description = "Work out how warm a winding is by what its resistance has risen, and how far above what cools it (IEC 60034-1, 8.6.2).",
    };

    private readonly Option<double?> _cold = StrictNumber.Option("--cold", "With --rise: the resistance cold.");
    private readonly Option<double?> _coldAt = StrictNumber.Option("--cold-at", "With --rise: temperature of the winding then, °C.");
    private readonly Option<double?> _hot = StrictNumber.Option("--hot", "With --rise: the resistance hot.");
    private readonly Option<double?> _coolant = StrictNumber.Option("--coolant", "With --rise: temperature of the air or what else cools it, when it was hot, °C.");

    private readonly Option<bool> _twoMeters = new("--two-meters")
    {
        Description = "With --rise and --accuracy: two meters of that accuracy took the two readings. Otherwise one did, and its error in percent drops out.",
    };

    private readonly Option<bool> _oneThermometer = new("--one-thermometer")
    {
        Description = "With --rise and --within: one thermometer took both temperatures, and is off by the same.",
    };

    private readonly InstrumentOptions _meter = new();

    public IReadOnlyList<Option> All => [_rise, .. Own];

    private IReadOnlyList<Option> Own => [_cold, _coldAt, _hot, _coolant, _twoMeters, _oneThermometer, .. _meter.All];

    /// <summary>Whether a rise is asked for.</summary>
    /// <exception cref="CommandException">It is not, but something is given for one.</exception>
    public bool IsAskedFor(ParseResult arguments) => arguments.GetValue(_rise)
        || (Own.FirstOrDefault(option => arguments.GetResult(option) is { Implicit: false }) is { } stray
            ? throw CommandException.BadInput($"{stray.Name} goes with --rise.")
            : false);

    /// <summary>The rise.</summary>
    /// <param name="arguments">The command line.</param>
    /// <param name="unit">The unit of the resistances.</param>
    /// <param name="uncertainty">Standard uncertainty of each resistance, in it; null where it is not given.</param>
    /// <param name="within">How far each temperature may be off.</param>
    /// <param name="inferredZero">The copper constant.</param>
    /// <exception cref="CommandException">Something is missing.</exception>
    /// <exception cref="ArgumentException">A number cannot be used; the message says why.</exception>
    public WindingRise Read(ParseResult arguments, Unit unit, double? uncertainty, double within, double inferredZero)
    {
        var (cold, hot) = (Needed(arguments, _cold), Needed(arguments, _hot));
        var temperatures = new RiseTemperatures(
            Needed(arguments, _coldAt), Needed(arguments, _coolant), within, arguments.GetValue(_oneThermometer), inferredZero);
        if (!(cold > 0 && hot > 0))
            throw CommandException.BadInput("A resistance must be above 0.");
        return WindingRise.Of(Ratio(arguments, cold, hot, unit, uncertainty), temperatures);
    }

    private Estimate Ratio(ParseResult arguments, double cold, double hot, Unit unit, double? uncertainty)
    {
        var meterIsGiven = _meter.All.Any(option => arguments.GetResult(option) is { Implicit: false });
        if (meterIsGiven && uncertainty is not null)
            throw CommandException.BadInput("Give --uncertainty, or the meter with --accuracy and --resolution, not both.");
        return meterIsGiven
            ? Compared.Of(ComparisonForm.Proportion, AsRead(arguments, hot, unit), AsRead(arguments, cold, unit), !arguments.GetValue(_twoMeters))
            : Derived.Of(
                from => from[0] / from[1],
                [new("resistance hot", hot, uncertainty ?? 0), new("resistance cold", cold, uncertainty ?? 0)]);
    }

    private DisplayedReading AsRead(ParseResult arguments, double value, Unit unit) =>
        Measuring.AsRead.Of(_meter.Read(arguments, [value], unit), [value], null, _meter.Ambient(arguments));

    private static double Needed(ParseResult arguments, Option<double?> option) => arguments.GetValue(option)
        ?? throw CommandException.BadInput($"Give {option.Name}: a rise needs --cold, --cold-at, --hot and --coolant.");
}
