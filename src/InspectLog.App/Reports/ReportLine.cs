using System.Globalization;
using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Reports;

/// <summary>A line of a check in the report: one place with its reading, or all places of which the same is said.</summary>
/// <param name="Places">"Lead 4", "Cylinders 1, 2 and 3"; empty for a check done once.</param>
/// <param name="Outcome">What it says of them.</param>
/// <param name="Text">What was read, seen and done, in sentences.</param>
/// <param name="Reading">The reading to draw; null without one.</param>
public sealed record ReportLine(string Places, PlaceOutcome Outcome, string Text, ReadingDecided? Reading)
{
    /// <summary>The lines of a check, in the order of its places.</summary>
    public static IReadOnlyList<ReportLine> Of(Check check, CheckProgress progress) =>
    [
        .. progress.Places
            .Where(place => place.IsDone || place.Actions.Count > 0)
            .GroupBy(place => (place.Outcome, Text: TextOf(check, place), Alone: place.Reading is null ? null : place))
            .Select(group => new ReportLine(
                Names(check, [.. group]), group.Key.Outcome, group.Key.Text, group.First().Reading?.Body)),
    ];

    private static string TextOf(Check check, PlaceView place)
    {
        var rest = PlaceHistory.Of(place, check);
        return place.Reading is { } reading ? $"{RecordWords.Sentence(reading.Body, check)} {rest}".TrimEnd() : rest;
    }

    private static string Names(Check check, IReadOnlyList<PlaceView> places)
    {
        if (!check.PerCylinder)
        {
            return "";
        }

        if (places.Count == 1)
        {
            return places[0].Name;
        }

        var numbers = places.Select(place => place.Cylinder?.ToString(CultureInfo.InvariantCulture)).ToList();
        return $"{Capital(check.PlaceNoun!)}s {string.Join(", ", numbers[..^1])} and {numbers[^1]}";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
