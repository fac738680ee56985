using InspectLog.App.Ui;
using InspectLog.Journal;

namespace InspectLog.App.Trends;

/// <summary>The page of one trend.</summary>
public static class TrendEndpoints
{
    public static void MapTrends(this IEndpointRouteBuilder app) =>
        app.MapGet("/vehicles/{vehicle}/trends/{check}", Show).WithName("trend");

    private static IResult Show(Garage garage, TimeProvider time, string vehicle, string check, string? by, string? place)
    {
        if (garage.FindVehicle(vehicle) is not { } state)
        {
            return Results.NotFound();
        }

        var trends = TrendsView.Of(state, by, time.GetLocalNow());
        var wanted = place ?? "";
        return trends.All.FirstOrDefault(facts => facts.Series.Check.Id == check && Links.Place(facts.Series.Cylinder) == wanted) is { } found
            ? Page.Of<TrendPage, TrendView>(new TrendView(state, found, trends.CanGoByOdometer, garage.Problems))
            : Results.NotFound();
    }
}
