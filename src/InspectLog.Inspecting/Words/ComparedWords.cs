using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>Readings that are decided with those of another check, in words. Pure.</summary>
public static class ComparedWords
{
    /// <summary>Why a reading is decided by itself although its check is compared with another.</summary>
    public static string Missing(Comparison by) => $"Decided by itself while {Lower(by.Name)} is not read.";

    /// <summary>What decides where the other check is read, on the page of the sheet: "Where battery voltage is read as well
    /// it decides: at most 0.5 V below it."</summary>
    public static string Rule(Comparison by, Unit unit) =>
        $"Where {Lower(by.Name)} is read as well, this decides instead: {Allowed(by, by.Limits, unit)} {Tie(by.Form)} {Lower(by.Name)}.";

    /// <summary>What decides with a value of the other check: "At most 0.5 V below battery voltage, which read 12.8 V."</summary>
    /// <param name="by">How the check is compared.</param>
    /// <param name="unit">The unit the check itself is printed in.</param>
    /// <param name="other">The other reading.</param>
    public static string Why(Comparison by, Unit unit, Reading other) =>
        $"{Capital(Allowed(by, by.Limits, unit))} {Tie(by.Form)} {Lower(by.Name)}, which read {OtherValue(by, other)}.";

    /// <summary>The limits a reading was decided against, told of the reading: "at most 0.5 V below battery voltage,
    /// 12.80 V", "within 0.6 to 2.0 Ω".</summary>
    public static string Within(ReadingDecided reading, Check check) =>
        (reading, check.Measurand) is ({ With: { } with, Limits: { } figure }, { DecidedBy: { } by } compared)
            ? $"{Allowed(by, Limits.Of(figure.Lower, figure.Upper), compared.DisplayUnit)} {Tie(with.Form)} {Lower(by.Name)}, {OtherValue(by, with.Reading)}"
        : (reading.Limits, check.Measurand) is ({ } limits, { } measurand) ? RecordWords.Within(limits, measurand)
        : "";

    /// <summary>What a reading and the other make together: "1.200 V ± 0.041 V below battery voltage, 12.80 V"; null for one
    /// that was decided by itself.</summary>
    public static string? Figure(ReadingDecided reading, Check check)
    {
        if ((reading, check.Measurand) is not ({ With: { } with, Conformity: { } conformity }, { DecidedBy: { } by }))
        {
            return null;
        }

        var isAbove = with.Form == ComparisonForm.Difference && conformity.Value < 0;
        var figure = Printed.Uncertain(
            isAbove ? -conformity.Value : conformity.Value, conformity.ExpandedUncertainty, FigureUnit(reading, check));
        return $"{figure}{Printed.Coverage(conformity)} {(isAbove ? "above" : Tie(with.Form))} {Lower(by.Name)}, {OtherValue(by, with.Reading)}";
    }

    /// <summary>The unit of what was decided: of the reading, or of what it makes together with another.</summary>
    public static Unit FigureUnit(ReadingDecided reading, Check check) =>
        (reading.With, check.Measurand) is ({ } with, { DecidedBy: { } by } measurand)
            ? ComparedUnits.Of(with.Form, measurand.DisplayUnit, by.OtherUnit)
            : RecordWords.UnitOf(reading, check);

    private static string Allowed(Comparison by, Limits limits, Unit unit) =>
        (limits is { Lower: not null, Upper: not null } ? "within " : "") + Printed.Span(limits, by.UnitFor(unit));

    private static string Tie(ComparisonForm form) => form == ComparisonForm.Difference ? "below" : "for the";

    private static string OtherValue(Comparison by, Reading other) => other switch
    {
        Bracket bracket => Printed.Span(bracket.Goes, bracket.Stops, by.OtherUnit),
        _ when RecordWords.EstimateOf(other) is { } estimate =>
            Printed.Uncertain(estimate.Value, estimate.ExpandedUncertainty, by.OtherUnit).Split(" ± ")[0],
        _ => "too large to work with",
    };

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
