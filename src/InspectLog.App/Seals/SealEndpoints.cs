using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Ui;

namespace InspectLog.App.Seals;

/// <summary>Sealing the record of a vehicle, from the report of one of its inspections.</summary>
public static class SealEndpoints
{
    public static void MapSeals(this IEndpointRouteBuilder app)
    {
        var seal = app.MapInspection(Policies.Keep, Policies.Keep, "/report/seal");
        seal.MapGet("/", (BenchDesk desk, WorkshopSeals seals) => Show(desk, seals, null)).WithName("seal-form");
        seal.MapPost("/", Seal).WithName("seal");
        app.MapSealKey();
    }

    private static async Task<IResult> Seal(HttpContext context, BenchDesk desk, WorkshopSeals seals, string vehicle, long number)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var passphrase = form.Text("passphrase");
        if (form.IsValid && seals.Seal(vehicle, passphrase) is { } problem)
        {
            form.Refuse(seals.Keys.IsProtected ? "passphrase" : "", problem);
        }

        return form.IsValid ? Results.Redirect($"{Links.Report(vehicle, number)}#seal") : Show(desk, seals, form.Refused("seal"));
    }

    private static IResult Show(BenchDesk desk, WorkshopSeals seals, RefusedForm? refused) => Page.Of<SealPage, SealView>(
        new(
            desk.Scene.Vehicle.Id,
            desk.Scene.Vehicle.Name,
            desk.Scene.Inspection.Number,
            seals.Of(desk.Scene.Vehicle.Id),
            seals.Keys.Exists,
            seals.Keys.IsProtected,
            refused,
            desk.Garage.Problems),
        refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
