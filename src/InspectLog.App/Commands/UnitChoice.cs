using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The option that names the unit of every number on a command line.</summary>
internal static class UnitChoice
{
    public static Option<Unit> RequiredOption() => Option(required: true, "");

    /// <summary>An option that may be left out where something else says the unit.</summary>
    /// <param name="otherwise">What counts then, to end the description.</param>
    public static Option<Unit?> Option(string otherwise) => Option(required: false, otherwise)!;

    private static Option<Unit> Option(bool required, string otherwise) => new("--unit")
    {
        Description = $"Unit of every number: {string.Join(", ", Units.All)}; or its name, such as ohm, kohm, Nm, ft-lb, uF.{otherwise}",
        HelpName = "UNIT",
        Required = required,
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            var units = Units.Named(text);
            if (units is [var unit])
                return unit;
            result.AddError(units.Count > 1
                ? $"\"{text}\" can mean {string.Join(" or ", units)}. Write the one that is meant."
                : $"\"{text}\" is not a unit known here. Use one of {string.Join(", ", Units.All)}.");
            return null;
        },
    };
}
