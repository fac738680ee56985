using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Network;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Devices;

/// <summary>The devices that may come over the network: seen, invited and revoked by the owner.</summary>
public static class DeviceEndpoints
{
    public static void MapDevices(this IEndpointRouteBuilder app)
    {
        var devices = app.MapGroup(Links.Devices).RequireAuthorization(Policies.Run);
        devices.MapGet("/", (DevicesDesk desk) => Show(desk, null)).WithName("devices");
        devices.MapPost("/", Invite).WithName("invite-device");
        devices.MapGet("/codes/{id}", ShowOffer).WithName("pairing-code");
        devices.MapPost("/{access:long}/revoke", Revoke).WithName("revoke-device");
    }

    private static async Task<IResult> Invite(HttpContext context, Garage garage, PairingCodes codes, DevicesDesk desk)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        return DeviceForm.Read(form, garage) is { } invitation
            ? Results.Redirect(Links.PairingCode(codes.Offer(invitation).Id))
            : Show(desk, form.Refused("device"));
    }

    private static IResult Show(DevicesDesk desk, RefusedForm? refused) => Page.Of<DevicesPage, DevicesView>(
        desk.All(refused), refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static IResult ShowOffer(DevicesDesk desk, PairingCodes codes, string id) => codes.Find(id) is { } offer
        ? Page.Of<OfferPage, OfferView>(desk.One(offer))
        : Results.Redirect(Links.Devices);

    private static IResult Revoke(HttpContext context, Garage garage, TimeProvider time, long access)
    {
        if (garage.Workshop.Accesses.Find(one => one.Number == access) is not { } given)
        {
            return Results.NotFound();
        }

        if (given.Holds(time.GetLocalNow()))
        {
            garage.AppendToWorkshop(PersonAtWork.Of(context), new AccessWithdrawn(access));
        }

        return Results.Redirect(Links.Devices);
    }
}
