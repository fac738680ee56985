using InspectLog.Checks;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Reports;

/// <summary>Which instruments the readings of an inspection were taken with. Pure.</summary>
public static class UsedInstruments
{
    /// <summary>Each instrument once, as it was when it was read, in the order of first use.</summary>
    public static IReadOnlyList<UsedInstrument> Of(InspectionState inspection, CheckSheet sheet) =>
    [
        .. inspection.Readings.Concat(inspection.Addenda.OfType<Recorded<ReadingDecided>>())
            .Where(reading => reading.Body.Instrument is not null)
            .GroupBy(reading => AsPrinted(reading.Body.Instrument!))
            .Select(group => new UsedInstrument(
                group.First().Body.Instrument!,
                group.All(reading => reading.Body.Reading is Bracket),
                group.Count(),
                [.. group.Select(reading => sheet.Find(reading.Body.Check)?.ShortTitle ?? reading.Body.Check).Distinct()])),
    ];

    /// <summary>What a reading was read with, in words: its instrument, or gauges that nobody named; null where nothing is
    /// known.</summary>
    public static string? NameOf(ReadingDecided reading) =>
        reading.Instrument?.Name ?? (reading.Reading is Bracket ? "gauges, not named" : null);

    private static (string Name, QuantityKind Kind, string Accuracy, double Step, string Papers) AsPrinted(Instrument one) =>
        (one.Name, one.Kind, one.WrittenAccuracy(), one.Resolution, InstrumentWords.Papers(one));
}
