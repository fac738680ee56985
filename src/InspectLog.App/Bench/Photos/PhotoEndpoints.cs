using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Media;
using InspectLog.App.Ui;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Bench.Photos;

/// <summary>A photo, large, and what can be put right about it: where it is filed, its caption, what it shows, whether it
/// counts. All of it is possible after closing too, and is then marked as later.</summary>
public static class PhotoEndpoints
{
    public static void MapPhotos(this IEndpointRouteBuilder app)
    {
        var inspection = app.MapInspection(Policies.Look, Policies.Record);
        inspection.MapPhotoIntake();
        inspection.MapPhotoPieces();
        inspection.MapPost("/photos/move", Move).WithName("move-photos");
        var photo = app.MapInspection(Policies.Look, Policies.Record, "/photos/{photo:long}").AddEndpointFilter<RouteGroupBuilder, PhotoFilter>();
        photo.MapGet("/", Open).WithName("photo");
        photo.MapPost("/caption", Caption).WithName("caption-photo");
        photo.MapPost("/shows", Shows).WithName("attach-photo");
        photo.MapPost("/withdraw", Withdraw).WithName("withdraw-photo");
        photo.MapPost("/restore", Restore).WithName("restore-photo");
        photo.MapPost("/show", ShowAgain).WithName("show-photo-again");
    }

    private static IResult Open(HttpContext context, BenchDesk desk, long photo) => Show(
        desk, desk.Scene, photo, PhotoBack.Read(context.Request.QueryString.Value),
        did: SaidOnce.Take(context, Links.Inspection(desk.Scene.Vehicle.Id, desk.Scene.Inspection.Number)));

    private static async Task<IResult> Move(HttpContext context, BenchDesk desk)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var photos = form.All("photo").Select(Number).ToList();
        var place = form.Has("where") ? PhotoPlace.ReadWhere(form, desk.Scene.Sheet) : PhotoPlace.Read(form, desk.Scene.Sheet);
        if (photos.Count == 0 || photos.Exists(one => desk.Scene.Inspection.Find(one) is not PhotoCapture))
        {
            return Results.NotFound();
        }

        return Record(context, desk, form, photos[^1], "photo", now => PhotoMending.Move(now, photos, place.Check, place.Cylinder));
    }

    private static async Task<IResult> Caption(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var text = PhotoForms.Caption(form) ?? "";
        return Record(context, desk, form, photo, $"caption-{photo}", now => PhotoMending.Caption(now, Photo(now, photo)!, text));
    }

    private static async Task<IResult> Shows(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var record = form.Text("shows") is { Length: > 0 } chosen ? Number(chosen) : (long?)null;
        if (record is { } named && !IsRecord(desk.Scene, named))
        {
            form.Refuse("shows", "Choose what the photo shows from the list.");
        }

        return Record(context, desk, form, photo, $"shows-{photo}", now => PhotoMending.Attach(
            now, Photo(now, photo)!, record is { } sequence ? now.Inspection.Find(sequence) : null));
    }

    private static async Task<IResult> Withdraw(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var reason = PhotoForms.Reason(form);
        return Record(context, desk, form, photo, $"withdraw-{photo}", now => Withdrawing.Withdraw(now, photo, reason));
    }

    private static async Task<IResult> Restore(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        return Record(context, desk, form, photo, "", now => Withdrawing.Restore(now, photo));
    }

    /// <summary>Tries once more to make the copies of a photo that could not be shown.</summary>
    private static async Task<IResult> ShowAgain(HttpContext context, BenchDesk desk, PhotoCopies copies, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var sha256 = Photo(desk.Scene, photo)!.Photo.Media.Sha256;
        copies.TryAgain(sha256);
        await copies.OfAsync(sha256, CopyKind.Display, context.RequestAborted);
        return Results.Redirect(
            Links.Photo(desk.Scene.Vehicle.Id, desk.Scene.Inspection.Number, photo) + PhotoBack.Read(form.Text("viewer")).Query);
    }

    /// <summary>Records what a good form asks for, and answers with the page it came from: the photo's, which says so in
    /// the field <c>viewer</c>, or the bench.</summary>
    private static IResult Record(
        HttpContext context, BenchDesk desk, PostedForm form, long photo, string name, Func<BenchScene, IReadOnlyList<EntryBody>> decide)
    {
        var back = form.Has("viewer") ? PhotoBack.Read(form.Text("viewer")) : null;
        if (!form.IsValid)
        {
            var refused = form.Refused(name);
            return back is null ? desk.Show(context, desk.Scene, refused) : Show(desk, desk.Scene, photo, back, refused);
        }

        var scene = desk.Record(desk.Scene, decide, afterClosing: true);
        return back is null
            ? desk.Show(context, scene)
            : desk.ReturnTo(context, scene, Links.Photo(scene.Vehicle.Id, scene.Inspection.Number, photo) + back.Query);
    }

    /// <summary>The page of a photo, with a form that was refused where one was.</summary>
    internal static IResult Show(BenchDesk desk, BenchScene scene, long photo, PhotoBack back, RefusedForm? form = null, string? did = null) =>
        Page.Of<PhotoPage, PhotoView>(
            PhotoView.Of(scene, Photo(scene, photo)!, back, form, desk.Garage.Problems) with { Did = did },
            form is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static PhotoCapture? Photo(BenchScene scene, long photo) => scene.Inspection.Find(photo) as PhotoCapture;

    private static bool IsRecord(BenchScene scene, long sequence) =>
        scene.Inspection.Find(sequence) is { History.Withdrawn: null } kept && PhotoEvidence.PlaceOf(kept.Says) is not null;

    private static long Number(string text) =>
        long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
