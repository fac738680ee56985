using System.Globalization;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Words;

/// <summary>Words for how long loose ends were open and may be. Pure.</summary>
public static class EndTimes
{
    /// <summary>As a clock shows it: "1:23", "1:02:03". What is left of a second is dropped.</summary>
    public static string Clock(TimeSpan time) => time.TotalHours >= 1
        ? string.Create(CultureInfo.InvariantCulture, $"{(long)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}")
        : string.Create(CultureInfo.InvariantCulture, $"{time.Minutes}:{time.Seconds:00}");

    /// <summary>As a sentence says it: "2 min", "1 min 30 s", "1 h 20 min"; of a day and more without seconds.</summary>
    public static string Duration(TimeSpan time)
    {
        (long Count, string Unit)[] parts =
        [
            ((long)time.TotalHours, "h"), (time.Minutes, "min"), (time.TotalDays >= 1 ? 0 : time.Seconds, "s"),
        ];
        var told = parts.Where(part => part.Count > 0)
            .Select(part => string.Create(CultureInfo.InvariantCulture, $"{part.Count}\u00a0{part.Unit}"))
            .ToList();
        return told.Count == 0 ? "0\u00a0s" : string.Join(' ', told);
    }

    /// <summary>What a sheet allows: "at most 2 min".</summary>
    public static string AtMost(TimeLimit limit) => $"at most {Duration(limit.Longest)}";

    /// <summary>What was left as it is for longer than the sheet allows and then put right or given a reason, in the order
    /// it was opened: "Ignition switched on for 4 min; the sheet allows 2 min".</summary>
    /// <param name="inspection">The inspection.</param>
    /// <param name="sheet">Its sheet.</param>
    public static IReadOnlyList<string> TooLong(InspectionState inspection, CheckSheet sheet) =>
    [
        .. TimedEnd.Among(inspection.LooseEnds.Where(end => !end.IsOpen), sheet)
            .Where(one => one.OpenFor(one.End.Opened).TotalSeconds > one.LimitSeconds)
            .Select(one => $"{one.End.What.Text}{(one.End.What.Cylinder is null ? "" : ",")} for {Duration(one.OpenFor(one.End.Opened))}; "
                + $"the sheet allows {Duration(one.Limit.Longest)}"),
    ];

    /// <summary>What is said of an end that is open still and has a limit: "since 12:41, and the sheet allows 2 min"; null
    /// where it has none.</summary>
    public static string? StillOpen(LooseEnd end, CheckSheet sheet) => TimedEnd.Among([end], sheet) is [var timed]
        ? string.Create(CultureInfo.InvariantCulture, $"since {end.Opened:HH:mm}, and the sheet allows {Duration(timed.Limit.Longest)}")
        : null;
}
