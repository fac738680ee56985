using System.Globalization;
using InspectLog.App.Ui;
using InspectLog.App.Ui.Drawings;
using InspectLog.App.Wear;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Trends;

/// <summary>What a trend goes by: the date, in days, or the odometer, in its unit.</summary>
/// <param name="Odometer">Unit of the odometer; null for the date.</param>
public sealed record TrendAxis(Unit? Odometer)
{
    private const double DaysInYear = 365.25;
    private const double DistanceOfSlope = 10_000;

    /// <summary>By date.</summary>
    public static readonly TrendAxis Date = new((Unit?)null);

    /// <summary>Name in addresses.</summary>
    public string Id => Odometer is null ? "date" : "odometer";

    /// <summary>How much of x the slope is told for: a year, or 10 000 km.</summary>
    public double SlopeStep => Odometer is null ? DaysInYear : DistanceOfSlope;

    /// <summary>The same in words, after a figure: "a year", "each 10 000 km".</summary>
    public string SlopeWords => Odometer is null ? "a year" : $"each {Times.Odometer(DistanceOfSlope, Odometer.Symbol)}";

    /// <summary>The odometer, where every inspection of a vehicle that was read has noted it and it goes forward; null
    /// otherwise.</summary>
    public static TrendAxis? OdometerOf(IReadOnlyList<TrendSeries> all)
    {
        var inspections = all.SelectMany(series => series.Readings).Select(reading => reading.Inspection).DistinctBy(inspection => inspection.Number).ToList();
        return inspections.Count > 0 && inspections.TrueForAll(inspection => inspection.How.Odometer is not null)
            ? new TrendAxis(KnownOdometer.UnitOf(inspections.MaxBy(inspection => inspection.Number)!.How.OdometerUnit))
            : null;
    }

    /// <summary>Where an inspection stands.</summary>
    public double At(InspectionState inspection) => Odometer is { } unit
        ? unit.FromBase(KnownOdometer.UnitOf(inspection.How.OdometerUnit).ToBase(inspection.How.Odometer!.Value))
        : At(inspection.Started);

    /// <summary>Where a date stands on the axis of dates: days, whole and parts.</summary>
    public static double At(DateTimeOffset time) => (double)time.Ticks / TimeSpan.TicksPerDay;

    /// <summary>A place on the axis in words, as exact as a forecast deserves: "March 2028", "96 400 km".</summary>
    public string About(double x) => Odometer is { } unit
        ? Times.Odometer(Math.Round(x / 100, MidpointRounding.AwayFromZero) * 100, unit.Symbol)
        : DayAt(x).ToString("MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The same, short enough for a label in a drawing: "Mar 2028".</summary>
    public string Label(double x) => Odometer is null
        ? DayAt(x).ToString("MMM yyyy", CultureInfo.InvariantCulture)
        : About(x);

    /// <summary>Round places between two ends, not more than asked for.</summary>
    public IReadOnlyList<Tick> Ticks(double from, double to, int most) => Odometer is { } unit
        ? Ui.Drawings.Ticks.Round(from, to, most, x => Times.Odometer(x, unit.Symbol))
        : Ui.Drawings.Ticks.Calendar(from, to, most);

    private static DateTime DayAt(double x) => Ui.Drawings.Ticks.DayOf(x);
}
