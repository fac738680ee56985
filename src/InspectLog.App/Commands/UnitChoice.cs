using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The option that names the unit of every number on a command line.</summary>
internal static class UnitChoice
{
    public static Option<Unit> Option() => new("--unit")
    {
        Description = $"Unit of every number: {string.Join(", ", Units.All)}; ohm and kohm will do for Ω and kΩ.",
        HelpName = "UNIT",
        Required = true,
        CustomParser = result =>
        {
            // Normalising turns the ohm sign U+2126 into the Greek letter the symbols are written with.
            var symbol = result.Tokens[0].Value.Normalize().Replace("ohm", "Ω", StringComparison.Ordinal);
            var unit = Units.Find(symbol);
            if (unit is null)
                result.AddError($"\"{symbol}\" is not a unit known here. Use one of {string.Join(", ", Units.All)}.");
            return unit;
        },
    };
}
