using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Results as text for people, where JSON was not asked for.</summary>
internal static class ReadableText
{
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
