using InspectLog.App.Access;
using InspectLog.App.Media;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Then;

/// <summary>The page that takes a photo from the stand of an earlier one, which it shows over the camera's picture.</summary>
public static class AgainEndpoint
{
    public static void MapAgain(this IEndpointRouteBuilder app) =>
        app.MapInspection(Policies.Record, null, "/photos/again").MapGet("/", Show).WithName("photo-again");

    /// <param name="desk">The desk, with the inspection the photo is for.</param>
    /// <param name="like">The earlier photo, of any inspection of the vehicle.</param>
    private static IResult Show(BenchDesk desk, long like)
    {
        var vehicle = desk.Scene.Vehicle;
        return vehicle.InspectionWith(like) is { } inspection && inspection.Find(like) is PhotoCapture { History.Withdrawn: null } photo
            ? Page.Of<AgainPage, AgainView>(new(desk.Scene, new PhotoUse(vehicle, inspection, photo), desk.Garage.Problems))
            : Results.NotFound();
    }
}
