using InspectLog.App.Access;
using InspectLog.App.Bench.Photos;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Addenda;

/// <summary>Adds a note, a photo or a reading to an inspection that is closed. It stands in the report as added later, and
/// changes no check.</summary>
public static class AddendumEndpoints
{
    public static void MapAddenda(this IEndpointRouteBuilder app)
    {
        var addendum = app.MapInspection(Policies.Look, Policies.Remark, "/addendum");
        addendum.MapGet("/", Open).WithName("addendum-form");
        addendum.MapPost("/notes", Note).WithName("add-note-later");
        addendum.MapPost("/readings", Reading).WithName("add-reading-later");
        addendum.MapPost("/photos", Photos)
            .WithName("add-photos-later")
            .WithMetadata(SentPhotos.Limit);
    }

    /// <summary>An open inspection takes what there is on its bench.</summary>
    private static IResult Open(BenchDesk desk, string vehicle, long number) => desk.Scene.Inspection.IsClosed
        ? Show(desk, null, null)
        : Results.Redirect(Links.Inspection(vehicle, number));

    private static async Task<IResult> Note(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        RefuseWhileOpen(form, desk);
        var check = form.Text("check") is { Length: > 0 } id ? desk.Scene.Sheet.Find(id) : null;
        if (check is null && form.Text("check").Length > 0)
        {
            form.Refuse("check", "Choose what it is about from the list.");
        }

        var text = form.Required("text", "Write a few words first.");
        if (!form.IsValid)
        {
            return Show(desk, form.Refused("note"), null);
        }

        return Added(desk, vehicle, number, new NoteWritten(number, check?.Id, text));
    }

    private static async Task<IResult> Reading(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        var form = await PostedForm.ReadAsync(context.Request);
        RefuseWhileOpen(form, desk);
        var where = WhereField.Read(form, scene.Sheet);
        if (where?.Check.Measurand is not { } measurand)
        {
            form.Refuse("at", "Choose a check that is measured.");
            return Show(desk, form.Refused("reading"), null);
        }

        var chosen = form.Text("instrument");
        var instruments = InstrumentChoice.For(measurand, desk.Garage.Workshop, chosen);
        var instrument = instruments[0];
        if (chosen.Length > 0 && chosen != instrument.Id)
        {
            form.Refuse("instrument", $"That instrument does not measure {where.Check.ShortTitle}. Choose another.");
        }

        var taken = ReadingFields.Values(form, where.Check, values => ReadOff.By(instrument, values, instruments), out var asked);
        if (!form.IsValid || taken is null)
        {
            return Show(desk, form.Refused("reading"), form.IsValid ? asked : null);
        }

        try
        {
            var decided = ReadingRecords.Decide(
                scene, new(where.Check, where.Cylinder, taken.Values, null, form.Text("value"), taken.Instrument, []));
            return Added(desk, vehicle, number, decided);
        }
        catch (ArgumentException problem)
        {
            form.Refuse("value", problem.Message);
            return Show(desk, form.Refused("reading"), null);
        }
    }

    private static async Task<IResult> Photos(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        RefuseWhileOpen(form, desk);
        var where = WhereField.Read(form, desk.Scene.Sheet);
        await SentPhotos.KeepAsync(
            context,
            desk,
            form,
            new(number, new MediaFile("", 0, ""), 0, 0, where?.Check.Id, where?.Cylinder) { Caption = PhotoForms.Caption(form) },
            afterClosing: true);
        return form.IsValid ? Results.Redirect(Links.AddedLater(vehicle, number)) : Show(desk, form.Refused("photo"), null);
    }

    /// <summary>Records it by itself: what is added later leaves nothing undone and settles nothing.</summary>
    private static IResult Added(BenchDesk desk, string vehicle, long number, EntryBody body)
    {
        desk.Record(desk.Scene, _ => [body], afterClosing: true);
        return Results.Redirect(Links.AddedLater(vehicle, number));
    }

    private static void RefuseWhileOpen(PostedForm form, BenchDesk desk)
    {
        if (!desk.Scene.Inspection.IsClosed)
        {
            form.Refuse("", "This inspection is still open, so nothing was added later. Record it on the bench.");
        }
    }

    private static IResult Show(BenchDesk desk, RefusedForm? form, AskedNumber? asked)
    {
        var (vehicle, inspection, sheet) = desk.Scene;
        var view = new AddendumView(
            vehicle,
            inspection,
            [("", "Choose a check"), .. WhereField.Options(sheet, sheet.Checks.Where(check => check.Measurand is not null))],
            [("", "The inspection as a whole"), .. WhereField.Options(sheet, sheet.Checks)],
            [("", "The inspection as a whole"), .. sheet.Checks.Select(check => (check.Id, check.ShortTitle))],
            InstrumentChoice.InUse(desk.Garage.Workshop),
            form,
            asked,
            desk.Garage.Problems);
        return Page.Of<AddendumPage, AddendumView>(
            view, form is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }
}
