using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Network;
using InspectLog.App.Ui;
using InspectLog.Journal;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Seals;

/// <summary>The key of the workshop's seals, for its owner.</summary>
internal static class SealKeyEndpoints
{
    public static void MapSealKey(this IEndpointRouteBuilder app)
    {
        var key = app.MapGroup(Links.SealKey).RequireAuthorization(Policies.Run);
        key.MapGet("/", (WorkshopSeals seals, Garage garage) => Show(seals, garage, null, null)).WithName("seal-key");
        key.MapPost("/sheet", Sheet).WithName("recovery-sheet");
    }

    /// <summary>Shows the recovery sheet: the answer to a form, so that nothing keeps it, and at the workshop's own computer
    /// alone, so that the secret never leaves it but on paper.</summary>
    private static async Task<IResult> Sheet(HttpContext context, WorkshopSeals seals, Garage garage)
    {
        context.Response.Headers.CacheControl = "no-store";
        var form = await PostedForm.ReadAsync(context.Request);
        if (Doors.Of(context) != Door.Workshop)
        {
            form.Refuse("", "The recovery sheet is shown at the workshop's own computer alone. Open this page there.");
            return Show(seals, garage, null, form.Refused("sheet"));
        }

        try
        {
            using var key = seals.Keys.Read(form.Text("passphrase"));
            return Show(seals, garage, key, null);
        }
        catch (SealKeyException problem)
        {
            form.Refuse(problem.IsPassphrase ? "passphrase" : "", problem.Message);
            return Show(seals, garage, null, form.Refused("sheet"));
        }
    }

    private static IResult Show(WorkshopSeals seals, Garage garage, SealKey? shown, RefusedForm? refused) => Page.Of<SealKeyPage, SealKeyView>(
        new(
            shown is null ? Fingerprint(seals.Keys) : KeyFingerprint.Printed(shown.Public),
            seals.Keys.Exists,
            seals.Keys.IsProtected,
            seals.Keys.Path,
            shown is null ? null : RecoverySheet.Write(shown),
            refused,
            garage.Problems),
        refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static string? Fingerprint(SealKeyFile keys)
    {
        try
        {
            using var key = keys.Read(passphrase: null);
            return KeyFingerprint.Printed(key.Public);
        }
        catch (SealKeyException)
        {
            return null; // there is none, or only its passphrase gives it away
        }
    }
}
