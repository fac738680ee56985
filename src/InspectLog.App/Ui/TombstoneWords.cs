using System.Globalization;
using InspectLog.Journal.State;

namespace InspectLog.App.Ui;

/// <summary>Tombstones of erasures in words. Pure.</summary>
public static class TombstoneWords
{
    /// <summary>"Entry 40, 25 November 2026, 11:30, by Tess: 3 entries and 1 recording or photo of one person erased, as asked by …".
    /// </summary>
    public static string Of(Tombstone tombstone) => string.Create(
        CultureInfo.InvariantCulture,
        $"Entry {tombstone.Entry}, {Times.DateAndClock(tombstone.Time)}, by {tombstone.By}: {HowMuch(tombstone)} of one person erased, as asked by {tombstone.Says.AskedBy}. Reason: {tombstone.Says.Reason}.");

    private static string HowMuch(Tombstone tombstone) =>
        $"{Count((int)tombstone.Says.CountTaken(), "entry", "entries")} and {Count(tombstone.Says.Media, "recording or photo", "recordings and photos")}"
        + (tombstone.Says.Nameless is { Count: > 0 and var names } ? $", and the name in {Count(names, "entry", "entries")}," : "");

    private static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}
