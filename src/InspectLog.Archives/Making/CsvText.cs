using System.Buffers;
using System.Globalization;
using System.Text.RegularExpressions;

namespace InspectLog.Archives.Making;

/// <summary>A table as RFC 4180 has it, of which no cell is a formula to a spreadsheet. Pure.</summary>
public static partial class CsvText
{
    private static readonly SearchValues<char> Quoted = SearchValues.Create("\",;\t\r\n'");

    /// <summary>One line of the table, with its end.</summary>
    /// <param name="cells">Numbers and texts; null is an empty cell.</param>
    public static string Line(IEnumerable<object?> cells) => string.Join(',', cells.Select(Cell)) + "\r\n";

    private static string Cell(object? value) => value switch
    {
        null => "",
        double number => double.IsFinite(number) ? number.ToString("R", CultureInfo.InvariantCulture) : "",
        int or long => Convert.ToString(value, CultureInfo.InvariantCulture)!,
        _ => Text(Convert.ToString(value, CultureInfo.InvariantCulture) ?? ""),
    };

    /// <summary>An apostrophe before a sign that begins a formula: at the beginning, and wherever a spreadsheet that takes another
    /// separator would begin a cell.</summary>
    private static string Text(string text)
    {
        var harmless = FormulaStart().Replace(text, "$1'$2");
        return harmless.AsSpan().IndexOfAny(Quoted) < 0 && harmless.Trim() == harmless
            ? harmless
            : $"\"{harmless.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    [GeneratedRegex("(\\A|[;\\t\\r\\n|])(\\s*[=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20])")]
    private static partial Regex FormulaStart();
}
