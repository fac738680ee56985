using System.Globalization;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>What a form that changes a finding or a record offers to choose from: first what belongs to its own check, then
/// what belongs to the others, for the check may be changed as well.</summary>
public static class FindingChoices
{
    /// <summary>Checks that take such a finding.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="kind">reading, observation or action.</param>
    public static IReadOnlyList<(string, string)> Checks(CheckSheet sheet, string kind) =>
        [.. Fitting(sheet, kind).Select(check => (check.Id, check.Title))];

    /// <summary>The places of the checks that have several, and none. One number may be a place of several checks, so the
    /// names it goes by on any of them stand behind it.</summary>
    public static IReadOnlyList<(string, string)> Places(CheckSheet sheet) =>
    [
        ("", "none"),
        .. sheet.Checks.SelectMany(check => sheet.PlacesOf(check)).Distinct().Order().Select(number => (Text(number), Named(sheet, number))),
    ];

    /// <summary>Units of every check that could be meant.</summary>
    public static IReadOnlyList<(string, string)> UnitsOf(CheckSheet sheet, Check? own)
    {
        var shown = own?.Measurand?.DisplayUnit;
        return
        [
            .. Fitting(sheet, "reading").SelectMany(check => TypedUnits.For(check.Measurand!))
                .OrderBy(unit => unit == shown ? 0 : unit.Kind == shown?.Kind ? 1 : 2)
                .Distinct().Select(unit => (unit.Symbol, unit.Symbol)),
        ];
    }

    /// <summary>Conditions with what they mean.</summary>
    public static IReadOnlyList<(string, string)> Conditions(CheckSheet sheet, Check? own) =>
    [
        .. (own?.Conditions ?? []).Concat(sheet.Checks.SelectMany(check => check.Conditions)).DistinctBy(condition => condition.Id)
            .Select(condition => (condition.Id, $"{condition.Id} ({ConditionWords.Meaning(condition.Meaning)})")),
    ];

    /// <summary>Actions.</summary>
    public static IReadOnlyList<(string, string)> Actions(CheckSheet sheet, Check? own) =>
        [.. (own?.Actions ?? []).Concat(sheet.Checks.SelectMany(check => check.Actions)).Distinct().Select(word => (word, word))];

    private static IEnumerable<Check> Fitting(CheckSheet sheet, string kind) => sheet.Checks.Where(check => kind switch
    {
        "reading" => check.Measurand is not null,
        "observation" => check.Conditions.Count > 0,
        _ => check.Actions.Count > 0,
    });

    private static string Named(CheckSheet sheet, int number)
    {
        var names = sheet.Checks.Select(check => check.Places).OfType<CheckPlaces>()
            .Where(places => number <= places.Names.Count).Select(places => places.NameOf(number)).Distinct().ToList();
        return names.Count == 0 ? Text(number) : $"{Text(number)} ({string.Join(", ", names)})";
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
