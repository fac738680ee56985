using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal;
using System.Globalization;

namespace InspectLog.App.Wear;

/// <summary>Parts that wear: watching them, fitting new ones, and no longer watching them.</summary>
public static class WearEndpoints
{
    public static void MapWearParts(this IEndpointRouteBuilder app)
    {
        var parts = app.MapGroup("/vehicles/{vehicle}/parts").WhoMay(Policies.Look, Policies.Keep);
        parts.MapGet("/new", NewForm).WithName("new-wear-part");
        parts.MapPost("/new", Add).WithName("add-wear-part");
        parts.MapGet("/{part:long}", Show).WithName("wear-part");
        parts.MapPost("/{part:long}/fitted", Fitted).WithName("wear-part-fitted");
        parts.MapPost("/{part:long}/not-renewed", NotRenewed).WithName("wear-part-not-renewed");
        parts.MapPost("/{part:long}/interval", SetInterval).WithName("wear-part-interval");
        parts.MapPost("/{part:long}/retire", Retire).WithName("retire-wear-part");
    }

    private static IResult NewForm(Garage garage, TimeProvider time, string vehicle) =>
        garage.FindVehicle(vehicle) is { } state ? NewPage(garage, time, state, null) : Results.NotFound();

    private static async Task<IResult> Add(HttpContext context, Garage garage, TimeProvider time, string vehicle)
    {
        if (garage.FindVehicle(vehicle) is not { } state)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        if (WearFields.Part(form, Today(time)) is not { } added)
        {
            return NewPage(garage, time, state, form.Refused("part"));
        }

        garage.Append(vehicle, PersonAtWork.Of(context), _ => [added]);
        return Results.Redirect(Links.WearParts(vehicle));
    }

    private static IResult Show(Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle, long part) =>
        Find(garage, sheets, time, vehicle, part) is { } found ? PartPage(garage, time, found) : Results.NotFound();

    private static async Task<IResult> Fitted(
        HttpContext context, Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle, long part)
    {
        if (Find(garage, sheets, time, vehicle, part) is not { } found)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        if (WearFields.Fitting(form, Today(time)) is not { } fitting)
        {
            return PartPage(garage, time, found, form.Refused("fitting"));
        }

        garage.Append(vehicle, PersonAtWork.Of(context), now => IsWatched(now, part) ? [new WearPartFitted(part, fitting)] : []);
        return Results.Redirect(Links.WearParts(vehicle));
    }

    /// <summary>Says no to an offer. One that is no longer made, since something more was recorded, is left as it stands.</summary>
    private static async Task<IResult> NotRenewed(
        HttpContext context, Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle, long part)
    {
        if (Find(garage, sheets, time, vehicle, part) is not { } found)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var reason = form.Required("reason", "Say why no new one counts, such as: a used one was put in.");
        if (!form.IsValid)
        {
            return PartPage(garage, time, found, form.Refused("not-renewed"));
        }

        var upTo = form.Text("upTo");

        garage.Append(vehicle, PersonAtWork.Of(context), now =>
            now.WearParts.Find(one => one.Number == part) is { } watched
            && Replacement.Of(now, sheets, watched) is { } offer
            && offer.Entry.ToString(CultureInfo.InvariantCulture) == upTo
                ? [new WearPartNotRenewed(part, offer.Entry, reason)]
                : []);
        return Results.Redirect(Links.WearParts(vehicle));
    }

    private static async Task<IResult> SetInterval(
        HttpContext context, Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle, long part)
    {
        if (Find(garage, sheets, time, vehicle, part) is not { } found)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var interval = WearFields.Interval(form);
        if (!form.IsValid)
        {
            return PartPage(garage, time, found, form.Refused("interval"));
        }

        garage.Append(vehicle, PersonAtWork.Of(context), now =>
            now.WearParts.Find(one => one.Number == part) is { } watched && watched.Interval != interval ? [new WearPartIntervalSet(part, interval)] : []);
        return Results.Redirect(Links.WearPart(vehicle, part));
    }

    private static IResult Retire(HttpContext context, Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle, long part)
    {
        if (Find(garage, sheets, time, vehicle, part) is null)
        {
            return Results.NotFound();
        }

        garage.Append(vehicle, PersonAtWork.Of(context), now => IsWatched(now, part) ? [new WearPartRetired(part)] : []);
        return Results.Redirect(Links.WearParts(vehicle));
    }

    private static bool IsWatched(VehicleState vehicle, long part) => vehicle.WearParts.Exists(one => one.Number == part);

    private static (VehicleState Vehicle, WearLine Line)? Find(
        Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle, long part) =>
        garage.FindVehicle(vehicle) is { } state
        && WearLine.Of(state, sheets, Today(time)).FirstOrDefault(line => line.Part.Number == part) is { } line
            ? (state, line)
            : null;

    private static IResult NewPage(Garage garage, TimeProvider time, VehicleState vehicle, RefusedForm? refused) =>
        Page.Of<NewWearPartPage, NewWearPartView>(
            new NewWearPartView(vehicle, Today(time), refused, garage.Problems), StatusOf(refused));

    private static IResult PartPage(
        Garage garage, TimeProvider time, (VehicleState Vehicle, WearLine Line) found, RefusedForm? refused = null) =>
        Page.Of<WearPartPage, WearPartView>(
            new WearPartView(found.Vehicle, found.Line, Today(time), refused, garage.Problems), StatusOf(refused));

    private static int StatusOf(RefusedForm? refused) =>
        refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity;

    private static DateOnly Today(TimeProvider time) => Times.DayOf(time.GetLocalNow());
}
