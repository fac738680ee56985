using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Recording;

/// <summary>A loose end that the inspection's sheet allows for a limited time only. Pure.</summary>
/// <param name="End">The loose end.</param>
/// <param name="Limit">How long it may stay so.</param>
public sealed record TimedEnd(LooseEnd End, TimeLimit Limit)
{
    /// <summary>The limit in seconds, at least one.</summary>
    public int LimitSeconds => Math.Max(1, (int)Math.Round(Limit.Longest.TotalSeconds));

    /// <summary>The loose ends that have a limit, in their order.</summary>
    /// <param name="ends">The loose ends.</param>
    /// <param name="sheet">The inspection's sheet.</param>
    public static IReadOnlyList<TimedEnd> Among(IEnumerable<LooseEnd> ends, CheckSheet sheet) =>
        [.. ends.SelectMany(end => LimitOf(end.What, sheet) is { } limit ? [new(end, limit)] : Array.Empty<TimedEnd>())];

    /// <summary>How long it was open, in whole seconds: until it was put right or left for a reason, and until
    /// <paramref name="now"/> while neither. Never below zero, whatever the clocks did meanwhile.</summary>
    public TimeSpan OpenFor(DateTimeOffset now)
    {
        var open = (End.Tied ?? End.Waived ?? now) - End.Opened;
        return TimeSpan.FromSeconds(Math.Max(0, Math.Floor(open.TotalSeconds)));
    }

    /// <summary>Whether its time is over.</summary>
    public bool IsOver(DateTimeOffset now) => OpenFor(now).TotalSeconds >= LimitSeconds;

    // One id means the same throughout a sheet, whichever check it was opened with.
    private static TimeLimit? LimitOf(LooseEndOpened end, CheckSheet sheet) => end.Disturbance is null
        ? null
        : sheet.Checks.SelectMany(check => check.Disturbs).FirstOrDefault(one => one.Id == end.Disturbance)?.Limit;
}
