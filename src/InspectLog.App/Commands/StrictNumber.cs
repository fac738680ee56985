using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Numbers on the command line: a point for the decimal mark, no thousands marks, nothing guessed. Programs
/// write these, so a comma is refused and not asked about as it is in a form.</summary>
internal static class StrictNumber
{
    private const NumberStyles Style =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    public static Option<double?> Option(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "NUMBER",
        CustomParser = result => Read(result, result.Tokens[0].Value),
    };

    public static Option<double[]> RepeatedOption(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "NUMBER",
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
        CustomParser = result => [.. result.Tokens.Select(token => Read(result, token.Value) ?? 0)],
    };

    /// <summary>Reads a finite number.</summary>
    public static bool TryRead(string text, out double number) =>
        double.TryParse(text, Style, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);

    /// <summary>Notes that a number is too large, where it is.</summary>
    public static bool RefuseTooLarge(ArgumentResult result, string text, double number)
    {
        if (Workable.Is(number))
            return false;
        result.AddError($"\"{text}\" given with {NameOf(result)} is too large to work with. Check the number and its unit.");
        return true;
    }

    private static double? Read(ArgumentResult result, string text)
    {
        if (TryRead(text, out var number))
            return RefuseTooLarge(result, text, number) ? null : number;
        result.AddError($"\"{text}\" given with {NameOf(result)} is not a number. Write it like 9400 or 0.35, with a point and no commas.");
        return null;
    }

    private static string? NameOf(ArgumentResult result) => (result.Parent as OptionResult)?.Option.Name;
}
