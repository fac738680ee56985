using InspectLog.App.Access;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal;

namespace InspectLog.App.Vehicles.Wall;

/// <summary>The page with all photos of a vehicle.</summary>
public static class WallEndpoint
{
    public static void MapWall(this IEndpointRouteBuilder app) =>
        app.For(Policies.Look).MapGet("/vehicles/{vehicle}/photos", Show).WithName("photo-wall");

    private static IResult Show(Garage garage, SheetLibrary sheets, string vehicle, string? part) =>
        garage.FindVehicle(vehicle) is { } state && WallView.Of(state, sheets, part, garage.Problems) is { } view
            ? Page.Of<WallPage, WallView>(view)
            : Results.NotFound();
}
