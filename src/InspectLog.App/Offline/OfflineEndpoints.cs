using InspectLog.App.Access;
using InspectLog.App.Ui;
using InspectLog.Journal;

namespace InspectLog.App.Offline;

/// <summary>What a device needs to go on without the network, and where it begins when it is opened by its icon.</summary>
public static class OfflineEndpoints
{
    public static void MapOffline(this IEndpointRouteBuilder app)
    {
        var offline = app.For(Policies.Visit);
        offline.MapGet(Links.OfflineFiles, Files).WithName("offline-files");
        offline.MapGet(Links.Now, Now).WithName("now");
    }

    /// <summary>Addresses of all scripts and styles that pages load, and of what only a microphone loads.</summary>
    private static IResult Files(Assets assets) => Results.Json(
        assets.Addresses.Concat(["/icon.svg", "/js/recorder-worklet.js"]).Order(StringComparer.Ordinal));

    /// <summary>The inspection that is open, the one worked on last where there are several; the garage where none is.</summary>
    private static IResult Now(HttpContext context, Garage garage) => Results.Redirect(
        garage.Vehicles()
            .Where(one => Caller.Of(context)?.Vehicle is not { } own || own == one.Id)
            .Select(one => (one.Id, garage.FindVehicle(one.Id)?.OpenInspection?.Number))
            .FirstOrDefault(one => one.Number is not null) is (var vehicle, { } number) && Caller.Of(context)!.May(Policies.Look)
                ? Links.Inspection(vehicle, number)
                : Links.Garage);
}
