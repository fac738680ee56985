using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal;

namespace InspectLog.App.Trends;

/// <summary>The page of one trend.</summary>
public static class TrendEndpoints
{
    public static void MapTrends(this IEndpointRouteBuilder app) =>
        app.For(Policies.Look).MapGet("/vehicles/{vehicle}/trends/{check}", Show).WithName("trend");

    private static IResult Show(
        Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle, string check, string? sheet, string? by, string? place)
    {
        if (garage.FindVehicle(vehicle) is not { } state)
        {
            return Results.NotFound();
        }

        var trends = TrendsView.Of(state, sheets, by, time.GetLocalNow());
        var wanted = place ?? "";

        // An address from before trends named their sheet stands for the first that has the check.
        return trends.All.FirstOrDefault(facts => facts.Series.Check.Id == check
            && (sheet is null || facts.Series.Sheet.IsOneWith(sheet))
            && Links.Place(facts.Series.Cylinder) == wanted) is { } found
            ? Page.Of<TrendPage, TrendView>(new TrendView(state, found, trends.CanGoByOdometer, garage.Problems))
            : Results.NotFound();
    }
}
