using System.CommandLine;
using System.CommandLine.Parsing;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Allowances for what the instrument's accuracy does not cover, written <c>operator=0.02</c>.</summary>
internal static class AllowanceOption
{
    private static readonly Dictionary<string, AllowanceSource> Sources = new(StringComparer.OrdinalIgnoreCase)
    {
        ["method"] = AllowanceSource.Method,
        ["operator"] = AllowanceSource.Operator,
        ["leads"] = AllowanceSource.TestLeads,
        ["temperature"] = AllowanceSource.Temperature,
        ["reference"] = AllowanceSource.Reference,
    };

    public static Option<Allowance[]> Option() => new("--allow")
    {
        Description = "What else may have moved the reading, and how far to either side, such as operator=0.02: method, "
            + "operator, temperature, leads (neither nulled nor subtracted), reference (its certificate's expanded "
            + "uncertainty, k = 2). Give it again for each.",
        HelpName = "WHAT=NUMBER",
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
        CustomParser = result => [.. result.Tokens.Select(token => Read(result, token.Value)).OfType<Allowance>()],
    };

    private static Allowance? Read(ArgumentResult result, string text)
    {
        if (text.Split('=', 2, StringSplitOptions.TrimEntries) is [var what, var size]
            && Sources.TryGetValue(what, out var source)
            && StrictNumber.TryRead(size, out var number))
        {
            return StrictNumber.RefuseTooLarge(result, size, number) ? null : new Allowance(
                source,
                number,
                source == AllowanceSource.Reference ? AllowanceShape.TwoStandardDeviations : AllowanceShape.Even);
        }

        result.AddError($"\"{text}\" given with --allow is not an allowance. Write it like operator=0.02; "
            + $"there are {string.Join(", ", Sources.Keys)}.");
        return null;
    }
}
