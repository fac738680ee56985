using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Ui;

/// <summary>Withheld entries in words. Pure.</summary>
public static class WithheldWords
{
    /// <summary>"1 entry withheld".</summary>
    public static string Title(int count) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "entry" : "entries")} withheld");

    /// <summary>"#12, reading decided, 25 November 2026, 11:30, by Tess Okafor".</summary>
    public static string Of(WithheldEntry entry) => string.Create(
        CultureInfo.InvariantCulture,
        $"#{entry.Sequence}, {entry.Kind.Replace('-', ' ')}, {Times.DateAndClock(entry.Time)}, by {entry.Actor}{(entry.ErasedBy is { } by ? $"; erased, as entry {by} says" : "")}");

    /// <summary>Those that may have said something of an inspection, in one sentence; null where there are none.</summary>
    public static string? InOneSentence(VehicleState vehicle, InspectionState inspection)
    {
        var entries = vehicle.Withheld.FindAll(entry => entry.MayBeOf(inspection));
        return entries.IsEmpty ? null : $"{Title(entries.Count)}: {string.Join("; ", entries.Select(Of))}.";
    }
}
