using InspectLog.App.Ui;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using System.Globalization;

namespace InspectLog.App.Vehicles;

/// <summary>What to heed about an entry besides what it says: that the chain is broken before it, or that clocks do not
/// agree. Pure.</summary>
public static class EntryRemarks
{
    /// <summary>From here on a clock that is wrong, or a capture that waited, is worth a word.</summary>
    private static readonly TimeSpan Unlike = TimeSpan.FromMinutes(1);

    /// <summary>The remarks on an entry, each a sentence or two.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="before">The sound entry before it; null where it is the first.</param>
    public static IReadOnlyList<string> Of(JournalEntry entry, JournalEntry? before) =>
        [.. new[] { Chain(entry, before), Clock(entry, before), Device(entry) }.OfType<string>()];

    private static string? Chain(JournalEntry entry, JournalEntry? before) => entry.Follows(before)
        ? null
        : $"The chain is broken here{Missing(before?.Sequence ?? 0, entry.Sequence)}. It cannot be shown that this entry follows from what stands before.";

    private static string Missing(long before, long after) => (after - before - 1) switch
    {
        <= 0 => "",
        1 => Text($": entry {before + 1} is missing or damaged"),
        _ => Text($": entries {before + 1} to {after - 1} are missing or damaged"),
    };

    private static string? Clock(JournalEntry entry, JournalEntry? before) => before is not null && entry.Time < before.Time
        ? $"The workshop’s clock was set back: by the clock this came {Span(before.Time - entry.Time)} before the entry before it. What counts is the order of the numbers."
        : null;

    private static string? Device(JournalEntry entry) => entry.Body?.Stamp is { } stamp ? Device(stamp, entry) : null;

    private static string? Device(CaptureStamp stamp, JournalEntry entry) => (entry.Time - stamp.At) switch
    {
        var late when late > Unlike => $"By the clock of the device this was captured {Moment(stamp, entry)}, {Span(late)} before it came in: it waited on the device, or the device’s clock is slow.",
        var early when early < -Unlike => $"By the clock of the device this was captured {Moment(stamp, entry)}, {Span(-early)} after it came in: the device’s clock is fast.",
        _ => null,
    };

    private static string Moment(CaptureStamp stamp, JournalEntry entry)
    {
        // A device may send any time at all; one at the ends of the calendar stays in the offset it came with.
        var local = stamp.At.Year is > 1 and < 9999 ? stamp.At.ToOffset(entry.Offset) : stamp.At;
        return local.Date == entry.LocalTime.Date
            ? local.ToString("'at' HH:mm:ss", CultureInfo.InvariantCulture)
            : $"on {Times.DateAndClock(local)}";
    }

    private static string Span(TimeSpan span) => span switch
    {
        { TotalMinutes: < 2 } => Text($"{Math.Max(1, (long)span.TotalSeconds)} s"),
        { TotalHours: < 2 } => Text($"{(long)span.TotalMinutes} minutes"),
        { TotalDays: < 2 } => Text($"{(long)span.TotalHours} hours"),
        _ => Text($"{(long)span.TotalDays} days"),
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
