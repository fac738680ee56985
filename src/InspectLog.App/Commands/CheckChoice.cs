using System.CommandLine;
using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that name a measured check of a sheet, whose unit, limits and rule count where no others are given.
/// </summary>
internal sealed class CheckChoice
{
    private readonly Option<string?> _sheet = SheetChoice.Option(
        $"A check sheet to take unit, limits and rule from, where no others are given: {SheetChoice.Ids}; or the file of another sheet.");

    private readonly Option<string?> _check = new("--check")
    {
        Description = "The check of the sheet, such as plug-gap.",
        HelpName = "ID",
    };

    public IReadOnlyList<Option> All => [_sheet, _check];

    /// <summary>The check that is named; null where none is.</summary>
    public ChosenCheck? Read(ParseResult arguments) => (arguments.GetValue(_sheet), arguments.GetValue(_check)) switch
    {
        (null, null) => null,
        (null, _) => throw CommandException.BadInput("--check is of use with a check sheet only. Name one with --sheet ID or --sheet FILE."),
        ({ } sheet, null) => throw CommandException.BadInput($"Name the check with --check: {Measured(SheetChoice.Find(sheet, null))}."),
        ({ } sheet, { } check) => Find(SheetChoice.Find(sheet, null), check),
    };

    private static ChosenCheck Find(CheckSheet sheet, string id) => sheet.Find(id) switch
    {
        null => throw CommandException.BadInput($"The check sheet {sheet.Id} has no check \"{id}\". Measured are: {Measured(sheet)}."),
        { Measurand: { } measurand } check => new(sheet, check, measurand),
        var seen => throw CommandException.BadInput($"{seen.Title} is looked at, not measured. Measured are: {Measured(sheet)}."),
    };

    private static string Measured(CheckSheet sheet) =>
        string.Join(", ", sheet.Checks.Where(check => check.Measurand is not null).Select(check => check.Id));
}

/// <summary>A measured check of a sheet.</summary>
internal sealed record ChosenCheck(CheckSheet Sheet, Check Check, Measurand Measurand)
{
    /// <summary>The unit of the command line: the one given, which has to be one of the check's kind, else the check's.</summary>
    public Unit UnitOf(Unit? given) => given is null || given.Kind == Measurand.Kind
        ? given ?? Measurand.DisplayUnit
        : throw CommandException.BadInput(
            $"{given.Symbol} is a unit of {Kinds.Noun(given.Kind)}, but {Check.Id} measures {Kinds.Noun(Measurand.Kind)} in {Kinds.UnitList(Measurand.Kind)}.");

    /// <summary>The limits of the sheet, in a unit.</summary>
    public Limits LimitsIn(Unit unit) => Measurand.Limits is { } limits
        ? Limits.Of(In(limits.Lower, unit), In(limits.Upper, unit))
        : throw CommandException.BadInput($"{Check.Title} has no limits on the sheet: give them with --lower and --upper. {Measurand.LimitSource}");

    private static double? In(double? limit, Unit unit) => limit is { } value ? unit.FromBase(value) : null;
}
