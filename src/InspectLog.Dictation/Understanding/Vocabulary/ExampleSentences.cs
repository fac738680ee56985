using System.Globalization;
using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Vocabulary;

/// <summary>Writes example findings as they should be written down: "Coil secondary 71.5 k.", "Lead 7, 143 k.", "Number 8 lead burnt.", "Rotor tip worn, replaced it."
/// </summary>
/// <remarks>Short, as people speak with both hands busy. Measured with the shipped model on clips it did not hear clearly:
/// such sentences, of parts, conditions and actions as well as of figures, helped; whole ones of figures alone did not.</remarks>
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
        figures.Value(check.Measurand!, unit) is { } value ? $"{Measured(check, name)} {value}." : null;

    private string? Observation(Check check, string name, string? condition) => condition is null
        ? null
        : $"{Observed(check, name)} {condition}{(check.Actions.Contains(PartActions.Replaced) && !check.PerCylinder ? ", replaced it" : "")}.";

    private string Measured(Check check, string name) => check.PerCylinder ? $"{Capital(name)} {Cylinder()}," : Capital(name);

    private string Observed(Check check, string name) => check.PerCylinder ? $"Number {Cylinder()} {name}" : Capital(name);

    private string Cylinder() => figures.Cylinder(_turn++).ToString(CultureInfo.InvariantCulture);

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Named(Check check) => check.PlaceNoun ?? check.Spoken.Subjects[0];

    // What is found amiss is said more often than that all is well.
    private static string? Condition(Check check) =>
        (check.Conditions.FirstOrDefault(condition => condition.Meaning != ConditionMeaning.Good) ?? (check.Conditions is [var first, ..] ? first : null))?.Id;
}
