using InspectLog.App.Bench;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Trends;

/// <summary>The trends of a vehicle, as its page shows them.</summary>
/// <param name="Axis">What they go by.</param>
/// <param name="CanGoByOdometer">Whether every inspection has an odometer reading.</param>
/// <param name="All">The trends, in the order of the sheet.</param>
public sealed record TrendsView(TrendAxis Axis, bool CanGoByOdometer, IReadOnlyList<TrendFacts> All)
{
    /// <summary>The trends of a vehicle.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="sheets">The sheets its inspections were started with.</param>
    /// <param name="by">odometer, where that is wanted and can be had; anything else is the date.</param>
    /// <param name="now">The present.</param>
    public static TrendsView Of(VehicleState vehicle, SheetLibrary sheets, string? by, DateTimeOffset now)
    {
        var all = TrendSeries.Of(vehicle, sheets);
        var odometer = TrendAxis.OdometerOf(all);
        var axis = odometer is not null && by == odometer.Id ? odometer : TrendAxis.Date;
        return new(axis, odometer is not null, [.. all
            .Where(series => series.Current.Count > 0)
            .Select(series => TrendFacts.Of(series, axis, now))]);
    }
}

/// <summary>The page of one trend.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Facts">The trend.</param>
/// <param name="CanGoByOdometer">Whether every inspection has an odometer reading.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record TrendView(
    VehicleState Vehicle, TrendFacts Facts, bool CanGoByOdometer, IReadOnlyList<GarageProblem> Problems);
