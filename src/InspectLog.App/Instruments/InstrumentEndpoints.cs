using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.App.Vehicles;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>The workshop's instruments.</summary>
public static class InstrumentEndpoints
{
    public static void MapInstruments(this IEndpointRouteBuilder app)
    {
        app.MapGet(Links.Instruments, (Garage garage) => Show(garage, null)).WithName("instruments");
        app.MapPost(Links.Instruments, Add).WithName("add-instrument");
        app.MapPost(Links.Instruments + "/{id}/retire", Retire).WithName("retire-instrument");
    }

    private static async Task<IResult> Add(HttpContext context, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        if (InstrumentForm.Read(form, garage.Workshop) is not { } instrument)
        {
            return Show(garage, form.Refused("instrument"));
        }

        garage.AppendToWorkshop(Technician.Of(context), new InstrumentAdded(instrument));
        return Results.Redirect(Links.Instruments);
    }

    private static IResult Retire(HttpContext context, Garage garage, string id)
    {
        if (!garage.Workshop.Instruments.Exists(instrument => instrument.Id == id))
        {
            return Results.NotFound();
        }

        garage.AppendToWorkshop(Technician.Of(context), new InstrumentRetired(id));
        return Results.Redirect(Links.Instruments);
    }

    private static IResult Show(Garage garage, RefusedForm? refused)
    {
        var own = garage.Workshop.Instruments;
        var assumed = InstrumentChoice.InUse(garage.Workshop).Except(own).ToList();
        return Page.Of<InstrumentsPage, InstrumentsView>(
            new InstrumentsView(own, assumed, refused, garage.Problems),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }
}
