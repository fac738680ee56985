using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Journal;
using InspectLog.Measuring;
using System.Globalization;

namespace InspectLog.App.Instruments;

/// <summary>The workshop's instruments.</summary>
public static class InstrumentEndpoints
{
    public static void MapInstruments(this IEndpointRouteBuilder app)
    {
        var instruments = app.For(Policies.LookAtAll, Policies.Keep);
        instruments.MapGet(Links.Instruments, (Garage garage, TimeProvider time) => Show(garage, time, null)).WithName("instruments");
        instruments.MapPost(Links.Instruments, Add).WithName("add-instrument");
        instruments.MapGet(Links.Instruments + "/{id}", (Garage garage, string id) => ShowOne(garage, id, null)).WithName("instrument");
        instruments.MapPost(Links.Instruments + "/{id}", Change).WithName("change-instrument");
        instruments.MapPost(Links.Instruments + "/{id}/retire", Retire).WithName("retire-instrument");
    }

    private static async Task<IResult> Add(HttpContext context, Garage garage, TimeProvider time)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        if (InstrumentForm.Read(form, garage.Workshop) is not { } instrument)
        {
            return Show(garage, time, form.Refused("instrument"));
        }

        garage.AppendToWorkshop(PersonAtWork.Of(context), new InstrumentAdded(instrument));
        return Results.Redirect(Links.Instruments);
    }

    private static async Task<IResult> Change(HttpContext context, Garage garage, string id)
    {
        if (garage.Workshop.Instruments.Find(one => one.Id == id) is not { } before)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        if (InstrumentForm.Read(form, garage.Workshop, before) is not { } instrument)
        {
            return ShowOne(garage, id, form.Refused("instrument"));
        }

        if (instrument != before)
        {
            garage.AppendToWorkshop(PersonAtWork.Of(context), new InstrumentAdded(instrument));
        }

        return Results.Redirect(Links.Instruments);
    }

    private static IResult Retire(HttpContext context, Garage garage, string id)
    {
        if (!garage.Workshop.Instruments.Exists(instrument => instrument.Id == id))
        {
            return Results.NotFound();
        }

        garage.AppendToWorkshop(PersonAtWork.Of(context), new InstrumentRetired(id));
        return Results.Redirect(Links.Instruments);
    }

    private static IResult ShowOne(Garage garage, string id, RefusedForm? refused) =>
        garage.Workshop.Instruments.Find(one => one.Id == id) is { } instrument
            ? Page.Of<InstrumentPage, InstrumentView>(
                new InstrumentView(instrument, refused, garage.Problems),
                refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity)
            : Results.NotFound();

    private static IResult Show(Garage garage, TimeProvider time, RefusedForm? refused)
    {
        var own = garage.Workshop.Instruments;
        var assumed = InstrumentChoice.Assumed.Where(assumed => !own.Exists(one => one.Kind == assumed.Kind)).ToList();
        return Page.Of<InstrumentsPage, InstrumentsView>(
            new InstrumentsView(own, assumed, refused, garage.Problems) { Today = Times.DayOf(time.GetLocalNow()) },
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }
}
