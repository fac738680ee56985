using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Bench;

/// <summary>Puts right what was recorded, withdraws it, and lets it count again; in closed inspections as well.</summary>
public static class AmendEndpoints
{
    public static void MapAmending(this IEndpointRouteBuilder app)
    {
        var entry = app.MapInspection(Policies.Look, Policies.Record, "/entries/{entry:long}");
        entry.MapGet("/amend", Form).WithName("amend-form");
        entry.MapPost("/amend", Amend).WithName("amend");
        entry.MapPost("/withdraw", Withdraw).WithName("withdraw");
        entry.MapPost("/restore", Restore).WithName("restore");
    }

    /// <summary>The form by itself where a script puts it below the entry, else a page.</summary>
    private static IResult Form(HttpContext context, BenchDesk desk, long entry, string? at)
    {
        context.Response.Headers.Vary = "HX-Request";
        return Amendable(desk.Scene, entry) is not { } kept ? Results.NotFound()
            : IsFragment(context) ? Page.Of<AmendForm, AmendView>(View(desk.Scene, kept, at))
            : OnPage(desk, View(desk.Scene, kept, AmendView.OnPage), StatusCodes.Status200OK);
    }

    private static async Task<IResult> Amend(HttpContext context, BenchDesk desk, long entry)
    {
        var scene = desk.Scene;
        if (Amendable(scene, entry) is not { } kept)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var amended = AmendedEntry.Read(form, scene, desk.Garage.Workshop, kept, out var asked);
        if (amended is null || !form.IsValid)
        {
            return Refused(context, desk, form, scene, entry, asked);
        }

        string? news = null;
        scene = desk.Record(
            scene,
            now => (news = SeenEntry.News(form, now.Inspection.Find(entry)!)) is null
                ? AmendedEntry.Bodies(now, desk.Garage.Workshop, entry, amended)
                : [],
            afterClosing: true);
        if (news is not null)
        {
            form.Refuse("", news);
            return Refused(context, desk, form, scene, entry, null);
        }

        return IsFragment(context)
            ? desk.Show(context, scene)
            : desk.Return(context, scene, Focus(scene, entry), string.Create(CultureInfo.InvariantCulture, $"item-{entry}"));
    }

    private static IResult Refused(
        HttpContext context, BenchDesk desk, PostedForm form, BenchScene scene, long entry, AskedNumber? asked)
    {
        var view = View(scene, scene.Inspection.Find(entry)!, IsFragment(context) ? form.Text("at") : AmendView.OnPage) with
        {
            Form = form.Refused("amend"), Asked = asked,
        };
        return IsFragment(context)
            ? desk.Show(context, scene, amending: view)
            : OnPage(desk, view, StatusCodes.Status422UnprocessableEntity);
    }

    /// <summary>Takes the reason from the button of a usual one, else from what was typed.</summary>
    private static async Task<IResult> Withdraw(HttpContext context, BenchDesk desk, long entry)
    {
        var scene = desk.Scene;
        if (!Withdrawing.CanBe(scene.Inspection.Find(entry)))
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var reason = Withdrawing.IsUsual(form.Text("usual"))
            ? form.Text("usual")
            : form.Required("reason", "Say why it no longer counts, in a few words.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, now => Withdrawing.Withdraw(now, entry, reason), afterClosing: true))
            : desk.Show(context, scene, form.Refused(string.Create(CultureInfo.InvariantCulture, $"withdraw-{entry}")));
    }

    private static IResult Restore(HttpContext context, BenchDesk desk, long entry) =>
        Withdrawing.CanBe(desk.Scene.Inspection.Find(entry))
            ? desk.Show(context, desk.Record(desk.Scene, now => Withdrawing.Restore(now, entry), afterClosing: true))
            : Results.NotFound();

    private static IKept? Amendable(BenchScene scene, long entry) =>
        scene.Inspection.Find(entry) is { } kept && AmendedEntry.IsReadFromForms(kept) ? kept : null;

    private static AmendView View(BenchScene scene, IKept kept, string? at) => new(
        Links.Inspection(scene.Vehicle.Id, scene.Inspection.Number),
        scene.Sheet,
        kept,
        at is AmendView.Result or AmendView.OnPage ? at : AmendView.Captured);

    private static IResult OnPage(BenchDesk desk, AmendView view, int status) => Page.Of<AmendPage, AmendPageView>(
        new(desk.Scene.Vehicle, desk.Scene.Inspection, view, desk.Garage.Problems), status);

    private static bool IsFragment(HttpContext context) => context.Request.Headers["HX-Request"] == "true";

    /// <summary>The check and place an entry is of, so that it stands there with its check open.</summary>
    private static BenchFocus Focus(BenchScene scene, long entry) => scene.Inspection.Find(entry)!.Says switch
    {
        ReadingDecided reading => new(reading.Check, reading.Cylinder),
        ObservationMade seen => new(seen.Check, seen.Cylinder),
        ActionDone done => new(done.Check, done.Cylinder),
        NoteWritten note => new(note.Check, null),
        RecordingKept recording => new(recording.OpenCheck, null),
        _ => new(null, null),
    };
}
