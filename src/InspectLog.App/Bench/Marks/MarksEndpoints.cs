using System.Globalization;
using InspectLog.App.Access;
using InspectLog.App.Bench.Photos;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Marks;

/// <summary>Marks a photo, and measures in it. After closing too; it is then marked as later.</summary>
public static class MarksEndpoints
{
    public static void MapMarks(this IEndpointRouteBuilder app)
    {
        var marks = app.MapInspection(Policies.Record, Policies.Record, "/photos/{photo:long}/marks").AddEndpointFilter<RouteGroupBuilder, PhotoFilter>();
        marks.MapGet("/", Open).WithName("marks");
        marks.MapPost("/", Save).WithName("mark-photo").WithMetadata(new RequestSizeLimit(500_000));
        marks.MapPost("/length", Length).WithName("measure-in-photo").WithMetadata(new AnswersScripts());
        marks.MapPost("/reading", Reading).WithName("reading-of-photo");
        marks.MapPost("/withdraw", Withdraw).WithName("withdraw-marks");
        marks.MapPost("/restore", Restore).WithName("restore-marks");
    }

    private static IResult Open(HttpContext context, BenchDesk desk, long photo) =>
        Show(desk, desk.Scene, photo, PhotoBack.Read(context.Request.QueryString.Value), null);

    private static async Task<IResult> Save(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var marks = PostedMarks.Read(form, MarksOver.CopyOf(Photo(desk.Scene, photo).Photo));
        if (marks.Count > PhotoMarking.MostMarks)
        {
            form.Refuse("", $"A photo takes {PhotoMarking.MostMarks} marks. Take some away, or mark another photo.");
        }

        var scene = desk.Scene;
        if (form.IsValid && desk.RecordedBefore(scene) is null)
        {
            scene = desk.Record(scene, now => News(form, now, photo) is { } news ? Refused(form, news) : PhotoMarking.Bodies(now, Photo(now, photo), marks), afterClosing: true);
        }

        var back = PhotoBack.Read(form.Text("viewer"));
        return !form.IsValid ? Show(desk, scene, photo, back, form.Refused("marks"))
            : context.Request.Headers["HX-Request"] == "true" ? Results.NoContent()
            : desk.ReturnTo(context, scene, AddressOf(scene, photo, back));
    }

    /// <summary>What a length would be, without keeping it: for the script, while points are picked.</summary>
    private static async Task<IResult> Length(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var mark = PostedMarks.One(form, form.All("mark") is [var only, ..] ? only : "", MarksOver.CopyOf(Photo(desk.Scene, photo).Photo));
        return form.IsValid && mark?.Measured is { } measured
            ? Results.Ok(new { says = MarkWords.Length(measured), how = MarkWords.How(measured) })
            : Results.UnprocessableEntity(new { message = form.Refused("marks").Errors.Values.FirstOrDefault() ?? "This is no measuring line." });
    }

    /// <summary>Takes a measured length as the reading of a check, with the photo as its evidence where it is none of another.
    /// </summary>
    private static async Task<IResult> Reading(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var scene = desk.Scene;
        var place = PhotoPlace.ReadWhere(form, scene.Sheet);
        var mark = MarksOver.Of(scene.Inspection, Photo(scene, photo)).ElementAtOrDefault(form.Whole("mark", "Choose what was measured.") ?? -1);
        ReadingDecided? reading = null;
        if (mark?.Measured is not { } measured || place.Check is null || scene.Sheet.Find(place.Check) is not { } check)
        {
            form.Refuse("where", "Choose the check that the length is a reading of.");
        }
        else
        {
            try
            {
                reading = PhotoLengths.Reading(scene, check, place.Cylinder, measured, PhotoLengths.AsGiven(measured));
            }
            catch (ArgumentException problem)
            {
                form.Refuse("where", problem.Message);
            }
        }

        if (reading is null || !form.IsValid)
        {
            return PhotoEndpoints.Show(desk, scene, photo, PhotoBack.Read(form.Text("viewer")), form.Refused("photo"));
        }

        scene = desk.Record(scene, reading);
        if (Photo(scene, photo).Photo.Shows is null && scene.Inspection.LastReading(reading.Check, reading.Cylinder) is { } kept)
        {
            scene = desk.Record(scene, now => PhotoMending.Attach(now, Photo(now, photo), now.Inspection.Find(kept.Sequence)), part: "evidence");
        }

        return desk.Return(context, scene, new BenchFocus(reading.Check, reading.Cylinder), "result");
    }

    private static async Task<IResult> Withdraw(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var reason = PhotoForms.Reason(form);
        var back = PhotoBack.Read(form.Text("viewer"));
        if (!form.IsValid)
        {
            return PhotoEndpoints.Show(desk, desk.Scene, photo, back, form.Refused("withdraw-marks"));
        }

        var scene = desk.Record(
            desk.Scene, now => now.Inspection.MarksOf(photo) is { } kept ? Withdrawing.Withdraw(now, kept.Sequence, reason) : [], afterClosing: true);
        return desk.ReturnTo(context, scene, AddressOf(scene, photo, back));
    }

    private static async Task<IResult> Restore(HttpContext context, BenchDesk desk, long photo)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var scene = desk.Record(
            desk.Scene, now => now.Inspection.MarksOf(photo) is { } kept ? Withdrawing.Restore(now, kept.Sequence) : [], afterClosing: true);
        return desk.ReturnTo(context, scene, AddressOf(scene, photo, PhotoBack.Read(form.Text("viewer"))));
    }

    /// <summary>What to say where somebody else marked the photo since the form was opened; null where nobody did.</summary>
    private static string? News(PostedForm form, BenchScene now, long photo)
    {
        var kept = now.Inspection.MarksOf(photo);
        return !form.Has("seen") || form.Text("seen") == (kept is null ? "" : SeenEntry.Of(kept)) ? null
            : $"{kept?.History.LastChange?.By ?? kept?.History.By ?? "Somebody"} marked this photo meanwhile. Look at it, and save again if your marks are to stand; the others stay in its history.";
    }

    private static IReadOnlyList<EntryBody> Refused(PostedForm form, string news)
    {
        form.Refuse("", news);
        return [];
    }

    private static IResult Show(BenchDesk desk, BenchScene scene, long photo, PhotoBack back, RefusedForm? form) => Page.Of<MarksPage, MarksView>(
        new(scene, Photo(scene, photo), back, form, desk.Garage.Problems),
        form is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static string AddressOf(BenchScene scene, long photo, PhotoBack back) =>
        string.Create(CultureInfo.InvariantCulture, $"{Links.Photo(scene.Vehicle.Id, scene.Inspection.Number, photo)}{back.Query}#marks");

    private static PhotoCapture Photo(BenchScene scene, long photo) => (PhotoCapture)scene.Inspection.Find(photo)!;
}
