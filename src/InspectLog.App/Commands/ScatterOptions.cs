using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that say how far single readings are known to scatter.</summary>
internal sealed class ScatterOptions
{
    private readonly Option<double?> _scatter = StrictNumber.Option(
        "--scatter", "Standard deviation of single readings, known from earlier repeats of the same kind.");

    private readonly Option<double?> _degrees = StrictNumber.Option(
        "--scatter-degrees", "Degrees of freedom of --scatter: the readings it comes from less one for each group. Without it: taken as known.");

    public IReadOnlyList<Option> All => [_scatter, _degrees];

    /// <summary>The scatter; null where none was given.</summary>
    /// <exception cref="CommandException">Degrees of freedom were given for none.</exception>
    public KnownScatter? Read(ParseResult arguments)
    {
        var (scatter, degrees) = (arguments.GetValue(_scatter), arguments.GetValue(_degrees));
        return (scatter, degrees) switch
        {
            ({ } deviation, _) => new(deviation, degrees),
            (null, { }) => throw CommandException.BadInput("--scatter-degrees goes with --scatter."),
            _ => null,
        };
    }
}
