using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that say at which temperature a copper winding was measured, and to which it is referred.</summary>
internal sealed class WindingOptions
{
    private readonly Option<double?> _at = StrictNumber.Option("--at", "Temperature of the winding when it was measured, °C.");
    private readonly Option<double?> _to = StrictNumber.Option("--to", "Temperature to refer it to, °C. Without it: 20.");
    private readonly Option<double?> _within = StrictNumber.Option("--within", "How far the winding's temperature may have been off, ± °C. Without it: 0.");
    private readonly Option<double?> _constant = StrictNumber.Option("--constant", "Degrees below 0 °C at which copper's resistance would vanish. Without it: 235 (IEC 60034-1).");
    private readonly Option<double?> _alpha = StrictNumber.Option("--alpha", "Temperature coefficient at 20 °C in place of the constant, such as 0.00393 from a handbook.");

    public IReadOnlyList<Option> All => [_at, _to, _within, _constant, _alpha];

    /// <summary>The temperatures given; null where none is. Refuses half of them, and a unit no winding is measured
    /// in.</summary>
    public WindingTemperature? Read(ParseResult arguments, Unit unit)
    {
        if (arguments.GetValue(_at) is not { } at)
        {
            return All.Any(option => arguments.GetResult(option) is { Implicit: false })
                ? throw CommandException.BadInput("Give the winding's temperature with --at, such as --at 65.")
                : null;
        }

        return unit.Kind == QuantityKind.Resistance
            ? new WindingTemperature(at, arguments.GetValue(_to) ?? 20, arguments.GetValue(_within) ?? 0, InferredZero(arguments))
            : throw CommandException.BadInput($"{unit.Symbol} is not a unit of resistance. Use {Kinds.UnitList(QuantityKind.Resistance)}.");
    }

    /// <summary>How far a temperature may have been off, and the copper constant, for a rise. Refuses the options that are
    /// for referring alone.</summary>
    public (double Within, double InferredZero) ReadForRise(ParseResult arguments) =>
        new Option[] { _at, _to }.FirstOrDefault(option => arguments.GetResult(option) is { Implicit: false }) is { } stray
            ? throw CommandException.BadInput($"{stray.Name} is for referring a resistance, and does not go with --rise.")
            : (arguments.GetValue(_within) ?? 0, InferredZero(arguments));

    private double InferredZero(ParseResult arguments) => (arguments.GetValue(_constant), arguments.GetValue(_alpha)) switch
    {
        ({ }, { }) => throw CommandException.BadInput("Give --constant or --alpha, not both: one follows from the other."),
        ({ } constant, null) => constant,
        (null, > 0 and var alpha) => Copper.InferredZeroOf(alpha),
        (null, { }) => throw CommandException.BadInput("The temperature coefficient given with --alpha must be above 0."),
        _ => Copper.Iec60034,
    };
}
