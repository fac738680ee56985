using System.Globalization;
using System.Text;
using InspectLog.App.Ui;
using InspectLog.Inspecting;

namespace InspectLog.App.Reports;

/// <summary>The running head and foot of a printed report, as a style of its own: margins of pages take their words from
/// styles alone, and pages here have no style inline. Pure.</summary>
public static class ReportHead
{
    /// <summary>The style: the vehicle and the day at the head of every page, its number at the foot.</summary>
    public static string Style(BenchScene scene)
    {
        var inspected = $"Inspected on {Times.Date(scene.Inspection.Started)}";
        return $$"""
            @page {
              margin: 20mm 15mm 18mm;
              @top-left { content: {{Quoted(scene.Vehicle.Name)}}; font: 9pt system-ui, sans-serif; }
              @top-right { content: {{Quoted(inspected)}}; font: 9pt system-ui, sans-serif; }
              @bottom-left { content: "Condition report"; font: 9pt system-ui, sans-serif; }
              @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 9pt system-ui, sans-serif; }
            }

            """;
    }

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
