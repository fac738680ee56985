using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Photos;

/// <summary>Takes in photos at the bench.</summary>
public static class PhotoIntakeEndpoint
{
    public static void MapPhotoIntake(this IEndpointRouteBuilder inspection) => inspection.MapPost("/photos", Keep)
        .WithName("keep-photos")
        .WithMetadata(SentPhotos.Limit);

    private static async Task<IResult> Keep(HttpContext context, BenchDesk desk)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var follows = Followed(form, desk);
        var place = follows is null ? PhotoPlace.Read(form, desk.Scene.Sheet) : new(follows.Check, follows.Cylinder);
        var scene = await SentPhotos.KeepAsync(context, desk, form, new(
            desk.Scene.Inspection.Number, new MediaFile("", 0, ""), 0, 0, place.Check, place.Cylinder)
        {
            Caption = PhotoForms.Caption(form),
            Shows = follows?.Shows ?? Shown(form, desk.Scene),
        });
        return desk.Show(context, scene, form.IsValid ? null : form.Refused("photo"));
    }

    /// <summary>What a photo follows that waited on a device behind what was said or recorded before it: only now is it known
    /// where that belongs. Null where it follows nothing of that person's, and goes where the form says.</summary>
    private static SpokenPlace? Followed(PostedForm form, BenchDesk desk) =>
        form.Text("follows") == "newest"
        && SpokenPlace.Newest(desk.Scene) is { } newest
        && desk.Scene.Inspection.Find(newest.Note)?.History is { Came: not null } history
        && history.By == desk.Person.Name
            ? newest
            : null;

    /// <summary>What the photo is to show. One that is not there is passed over: a photo is not lost for it.</summary>
    private static long? Shown(PostedForm form, BenchScene scene) =>
        long.TryParse(form.Text("shows"), NumberStyles.None, CultureInfo.InvariantCulture, out var shows)
        && scene.Inspection.Find(shows) is { } and not PhotoCapture
            ? shows
            : null;
}
