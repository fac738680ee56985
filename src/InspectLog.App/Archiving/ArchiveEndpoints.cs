using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Seals;
using InspectLog.App.Ui;
using InspectLog.Archives.Making;
using InspectLog.Journal;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Archiving;

/// <summary>The archive of a vehicle: asked for, made, downloaded.</summary>
public static class ArchiveEndpoints
{
    public static void MapArchives(this IEndpointRouteBuilder app)
    {
        var archive = app.MapGroup("/vehicles/{vehicle}/archive").WhoMay(Policies.Keep, Policies.Keep);
        archive.MapGet("/", (Garage garage, WorkshopSeals seals, string vehicle) => Form(garage, seals, vehicle, null)).WithName("archive");
        archive.MapPost("/", Make).WithName("make-archive");
        archive.MapGet("/{archive}", Made).WithName("made-archive");
        archive.MapGet("/{archive}/file", Download).WithName("archive-file");
    }

    private static IResult Form(Garage garage, WorkshopSeals seals, string vehicle, RefusedForm? refused) => garage.FindVehicle(vehicle) is { } state
        ? Page.Of<ArchivePage, ArchiveView>(
            new(state, seals.Keys.Exists, seals.Keys.IsProtected, refused, garage.Problems), refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity)
        : Results.NotFound();

    private static async Task<IResult> Make(HttpContext context, Garage garage, WorkshopSeals seals, ArchiveDesk desk, string vehicle)
    {
        if (garage.FindVehicle(vehicle) is null)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        if (ArchiveProfiles.Find(form.Text("profile")) is not { } profile)
        {
            form.Refuse("", "Say what the archive is to hold: press one of the buttons below.");
            return Form(garage, seals, vehicle, form.Refused("archive"));
        }

        try
        {
            return Results.Redirect(Links.MadeArchive(vehicle, desk.Begin(vehicle, profile, KeyOf(seals, form.Text("passphrase")))));
        }
        catch (SealKeyException problem)
        {
            form.Refuse(problem.IsPassphrase ? "passphrase" : "", problem.Message);
            return Form(garage, seals, vehicle, form.Refused("archive"));
        }
    }

    /// <summary>The key to seal with; null where there is none, or it is kept under a passphrase and none was given.</summary>
    private static SealKey? KeyOf(WorkshopSeals seals, string passphrase) =>
        !seals.Keys.Exists || (seals.Keys.IsProtected && passphrase.Length == 0) ? null : seals.Keys.Read(passphrase);

    private static IResult Made(Garage garage, ArchiveDesk desk, string vehicle, string archive) =>
        garage.FindVehicle(vehicle) is { } state && desk.Find(vehicle, archive) is { } made
            ? Page.Of<MadeArchivePage, MadeArchiveView>(new(state, archive, made, garage.Problems))
            : Results.NotFound();

    /// <summary>The file, from any byte on: a browser whose download broke off asks for the rest.</summary>
    private static IResult Download(HttpContext context, Garage garage, ArchiveDesk desk, string vehicle, string archive)
    {
        if (garage.FindVehicle(vehicle) is null || desk.Find(vehicle, archive) is not ArchiveState.Ready ready)
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = "private, no-store";
        return Results.File(
            ready.File, "application/zip", Path.GetFileName(ready.File), entityTag: new($"\"{archive}\""), enableRangeProcessing: true);
    }
}
