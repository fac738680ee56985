using System.Globalization;
using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Vocabulary;

/// <summary>Writes example findings as they should be written down: "Coil secondary 71.5 k.", "Number 7 lead is burnt."
/// </summary>
internal sealed class ExampleSentences(CheckSheet sheet, ExampleFigures figures)
{
    private int _turn;

    /// <summary>A finding of a check: a reading where it is measured, else a condition; null where none can be made.</summary>
    public string? Of(Check check) => check.Measurand is { } measurand
        ? Reading(check, measurand.DisplayUnit)
        : Observation(check, Named(check), Condition(check));

    /// <summary>A finding that uses a word of the workshop's own; null where none can be made.</summary>
    public string? Of(OwnWord word) => sheet.Find(word.Check) switch
    {
        null => null,
        var check when word.Condition is not null => Observation(check, Named(check), word.Phrase),
        { Measurand: { } measurand } check => Reading(check, measurand.DisplayUnit, word.Phrase),
        var check => Observation(check, word.Phrase, Condition(check)),
    };

    /// <summary>A reading of a check in a unit; null where no figure will do.</summary>
    public string? Reading(Check check, Unit unit) => Reading(check, unit, Named(check));

    private string? Reading(Check check, Unit unit, string name) =>
        figures.Value(check.Measurand!, unit) is { } value ? $"{Subject(check, name)} {value}." : null;

    private string? Observation(Check check, string name, string? condition) => condition is null
        ? null
        : $"{Subject(check, name)}{(check.PerCylinder ? " is" : ":")} {condition}.";

    private string Subject(Check check, string name) => check.PerCylinder
        ? string.Create(CultureInfo.InvariantCulture, $"Number {figures.Cylinder(_turn++)} {name}")
        : char.ToUpperInvariant(name[0]) + name[1..];

    private static string Named(Check check) => check.PlaceNoun ?? check.Spoken.Subjects[0];

    // What is found amiss is said more often than that all is well.
    private static string? Condition(Check check) =>
        (check.Conditions.FirstOrDefault(condition => condition.Meaning != ConditionMeaning.Good) ?? (check.Conditions is [var first, ..] ? first : null))?.Id;
}
