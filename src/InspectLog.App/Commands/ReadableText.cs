using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Results as text for people, where JSON was not asked for.</summary>
internal static class ReadableText
{
    public static void WriteDecision(
        this TextWriter output, Reading reading, Conformity conformity, Limits limits, Unit unit)
    {
        output.WriteLine(Printed.Sentence(reading, conformity, limits, unit));
        foreach (var part in conformity.Contributions)
        {
            var (_, uncertainty) = Printed.UncertainNumbers(0, part.StandardUncertainty, unit);
            output.WriteLine($"  {part.Name}: standard uncertainty {uncertainty} {unit}");
        }
    }

    public static void WriteFindings(this TextWriter output, IReadOnlyList<Finding> findings, CheckSheet sheet)
    {
        if (findings.Count == 0)
            output.WriteLine("  No finding.");
        foreach (var finding in findings)
        {
            output.WriteLine($"  {finding.Check}{At(finding)}: {What(finding, sheet)}   from \"{finding.Words}\"");
            if (finding.Doubt is { } doubt)
                output.WriteLine($"    Look twice: {doubt}");
        }
    }

    private static string At(Finding finding) => finding.Place is { } place ? $", cylinder {place.Cylinder}" : "";

    private static string What(Finding finding, CheckSheet sheet) => finding switch
    {
        { Action: { } action } => action,
        { Condition: { } condition } => finding.Negated ? $"not {condition}" : condition,
        { Bracket: { } bracket } => Printed.Span(bracket.Goes, bracket.Stops, DisplayUnit(finding, sheet)),
        _ => Printed.Value(finding.Value.GetValueOrDefault(), DisplayUnit(finding, sheet)),
    };

    private static Unit DisplayUnit(Finding finding, CheckSheet sheet) => sheet.Find(finding.Check)!.Measurand!.DisplayUnit;
}
