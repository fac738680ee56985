using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Reads points from lines of text: <c>x,y</c>, a point for the decimal mark, exponents allowed. Blank lines are
/// passed over, and so is a heading on the first line that is not blank.</summary>
internal static class TrendInput
{
    public static async Task<IReadOnlyList<TrendPoint>> ReadAsync(TextReader input, CancellationToken stop)
    {
        var points = new List<TrendPoint>();
        string? heading = null;
        var number = 0;
        while (await input.ReadLineAsync(stop) is { } line)
        {
            number++;
            var text = line.Trim('\uFEFF', ' ', '\t', '\r');
            if (text.Length == 0)
                continue;
            if (heading is null && points.Count == 0 && IsHeading(text))
                heading = text;
            else
                points.Add(Point(text, number));
        }

        return heading is not null && points.Count == 0
            ? throw CommandException.BadInput($"There is a heading, \"{heading}\", but no x,y line after it.")
            : points;
    }

    // Two names, neither of which begins as a number does: a mistyped number is no heading.
    private static bool IsHeading(string text) =>
        text.Split(',', StringSplitOptions.TrimEntries) is { Length: 2 } names
        && names.All(name => name.Length > 0 && char.IsLetter(name.Trim('"')[..1].FirstOrDefault()) && !IsNumber(name, out _));

    private static TrendPoint Point(string text, int number) =>
        text.Split(',', StringSplitOptions.TrimEntries) is [var x, var y] && IsNumber(x, out var when) && IsNumber(y, out var value)
            ? new TrendPoint(when, value)
            : throw CommandException.BadInput(
                $"Line {number}, \"{text}\", is not a pair of numbers. Write each as x,y with points for decimals, such as 120,1.85.");

    private static bool IsNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number);
}
