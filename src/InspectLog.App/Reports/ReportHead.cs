using System.Globalization;
using System.Text;
using InspectLog.App.Ui;
using InspectLog.Inspecting;

namespace InspectLog.App.Reports;

/// <summary>The running head and foot of a printed report, as a style of its own: margins of pages take their words from
/// styles alone, and pages here have no style inline. Pure.</summary>
public static class ReportHead
{
    /// <summary>What stands at the head and foot of every page of a report.</summary>
    public static ReportHeadWords Words(BenchScene scene) =>
        new(scene.Vehicle.Name, $"Inspected on {Times.Date(scene.Inspection.Started)}", "Condition report");

    /// <summary>The style: the vehicle and the day at the head of every page, its number at the foot.</summary>
    public static string Style(ReportHeadWords words) => $$"""
        @page {
          margin: 20mm 15mm 18mm;
          @top-left { content: {{Quoted(words.Vehicle)}}; font: 9pt system-ui, sans-serif; }
          @top-right { content: {{Quoted(words.Inspected)}}; font: 9pt system-ui, sans-serif; }
          @bottom-left { content: {{Quoted(words.Kind)}}; font: 9pt system-ui, sans-serif; }
          @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 9pt system-ui, sans-serif; }
        }

        """;

    /// <summary>Text as a string of a style: whatever could end it or mean something there is written by its number.
    /// </summary>
    public static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            quoted.Append(Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or '.' or ',' or '-'
                ? rune.ToString()
                : string.Create(CultureInfo.InvariantCulture, $"\\{rune.Value:X6} "));
        }

        return quoted.Append('"').ToString();
    }
}

/// <summary>What stands at the head and foot of every page of a report.</summary>
/// <param name="Vehicle">The vehicle's name.</param>
/// <param name="Inspected">"Inspected on 12 March 2026".</param>
/// <param name="Kind">What it is.</param>
public sealed record ReportHeadWords(string Vehicle, string Inspected, string Kind)
{
    /// <summary>Of a page and how many there are.</summary>
    public static string Page(int page, int of) => string.Create(CultureInfo.InvariantCulture, $"Page {page} of {of}");
}
