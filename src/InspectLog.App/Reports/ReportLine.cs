using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>A line of a check in the report: one place with its reading, or all places of which the same is said.</summary>
/// <param name="Places">"Lead 4", "Cylinders 1, 2 and 3"; empty for a check done once.</param>
/// <param name="Outcome">What it says of them.</param>
/// <param name="Text">What was read, seen and done, in sentences.</param>
/// <param name="Reading">The reading to draw; null without one.</param>
public sealed record ReportLine(string Places, PlaceOutcome Outcome, string Text, ReadingDecided? Reading)
{
    /// <summary>What was put right after closing, in sentences; empty for nothing.</summary>
    public string PutRight { get; private init; } = "";

    /// <summary>The lines of a check, in the order of its places.</summary>
    public static IReadOnlyList<ReportLine> Of(CheckSheet sheet, Check check, CheckProgress progress) =>
    [
        .. progress.Places
            .Where(place => place.IsDone || place.Actions.Count > 0)
            .GroupBy(place => (
                place.Outcome,
                Text: TextOf(check, place),
                PutRight: PutRightAt(place, sheet),
                Alone: place.Reading is null ? null : place))
            .Select(group => new ReportLine(
                PlaceNames.Of(check, [.. group]), group.Key.Outcome, group.Key.Text, group.First().Reading?.Body)
            {
                PutRight = group.Key.PutRight,
            }),
    ];

    private static string TextOf(Check check, PlaceView place)
    {
        var rest = PlaceHistory.Of(place, check);
        if (place.Reading is not { } reading)
        {
            return rest;
        }

        var overdue = InstrumentWords.Overdue(reading.Body, reading.Time) is { } said ? $" {said}" : "";
        return $"{RecordWords.Sentence(reading.Body, check)}{overdue} {rest}".TrimEnd();
    }

    private static string PutRightAt(PlaceView place, CheckSheet sheet)
    {
        IEnumerable<IKept> records =
        [
            .. place.EarlierReadings, .. new[] { place.Reading }.OfType<IKept>(), .. place.Observations, .. place.Actions,
        ];
        return string.Join(" ", records.SelectMany(record => ReportChanges.PutRight(record, sheet, later: true)));
    }
}
