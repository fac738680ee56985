using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Journal;
using InspectLog.Journal.Noted;
using System.Globalization;

namespace InspectLog.App.Garages;

/// <summary>What journals lack of what was noted of them, and going on without it.</summary>
public static class LossEndpoints
{
    public static void MapLosses(this IEndpointRouteBuilder app)
    {
        var run = app.For(Policies.Run, Policies.Run);
        run.MapGet(Links.Losses, Show).WithName("losses");
        run.MapPost(Links.Losses, GoOn).WithName("go-on-without");
    }

    private static IResult Show(Garage garage) => Page.Of<LossesPage, LossesView>(new LossesView(garage.Losses, garage.Problems));

    /// <summary>Goes on without a loss; one that is none any more, as after a second press, is passed over.</summary>
    private static async Task<IResult> GoOn(HttpContext context, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var (vehicle, entries, head) = (form.Text("vehicle"), form.Text("entries"), form.Text("head"));
        if (garage.Losses.FirstOrDefault(loss => (loss.VehicleId ?? "") == vehicle
            && loss.Entries.ToString(CultureInfo.InvariantCulture) == entries && loss.Head == head) is { } given)
        {
            garage.Accept(PersonAtWork.Of(context), given);
        }

        return Results.Redirect(Links.Losses);
    }
}

/// <summary>What journals lack.</summary>
/// <param name="Losses">Each loss.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record LossesView(IReadOnlyList<JournalLoss> Losses, IReadOnlyList<GarageProblem> Problems);
