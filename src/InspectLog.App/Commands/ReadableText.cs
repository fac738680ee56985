using InspectLog.Inspecting.Words;
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
            output.WriteLine($"  {finding.Check}{At(finding, sheet)}: {What(finding, sheet)}   from \"{finding.Words}\"");
            if (DoubtWords.Of(finding.Doubts, sheet) is { } doubt)
                output.WriteLine($"    Look twice: {doubt}");
        }
    }

    // Leads, plugs and towers go by the cylinder they serve; other places by what the sheet calls them.
    private static string At(Finding finding, CheckSheet sheet) => finding.Place is not { } place ? ""
        : sheet.Find(finding.Check)?.Places is { Own: not null } own ? $", {own.NameOf(place.Cylinder)}"
        : $", cylinder {place.Cylinder}";

    private static string What(Finding finding, CheckSheet sheet) => finding switch
    {
        { Action: { } action } => action,
        { Condition: { } condition } => finding.Negated ? $"not {condition}" : condition,
        { Bracket: { } bracket } => Printed.Span(bracket.Goes, bracket.Stops, DisplayUnit(finding, sheet)),
        _ => Printed.Value(finding.Value.GetValueOrDefault(), DisplayUnit(finding, sheet)),
    };

    private static Unit DisplayUnit(Finding finding, CheckSheet sheet) => sheet.Find(finding.Check)!.Measurand!.DisplayUnit;
}
