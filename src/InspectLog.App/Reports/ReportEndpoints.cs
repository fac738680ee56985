using System.Globalization;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>Closing an inspection, and its report.</summary>
public static class ReportEndpoints
{
    public static void MapReports(this IEndpointRouteBuilder app)
    {
        var inspection = app.MapGroup(BenchEndpoints.Base);
        inspection.MapGet("/report", Report).WithName("report");
        inspection.MapGet("/close", CloseForm).WithName("close-form");
        inspection.MapPost("/close", Close).WithName("close");
    }

    private static IResult Report(BenchDesk desk, string vehicle, long number) =>
        desk.Find(vehicle, number) is { } scene
            ? Page.Of<ReportPage, ReportView>(ReportBuilder.Build(scene, desk.Garage.Workshop, desk.Garage.Problems))
            : Results.NotFound();

    private static IResult CloseForm(BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        return scene.Inspection.IsClosed
            ? Results.Redirect(Links.Report(vehicle, number))
            : Page.Of<ClosePage, CloseView>(View(desk, scene, null));
    }

    /// <summary>Closes the inspection when every check is done or has a reason and every loose end is tied or waived.
    /// Reasons given and ends tied on the way are kept even when something else is still missing.</summary>
    private static async Task<IResult> Close(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        scene = desk.Record(scene, now => [.. Settled(form, now)]);
        foreach (var line in Missing(scene))
        {
            form.Refuse($"reason-{line.Check.Id}", $"{line.Check.Title}: do it, or say why it is left out.");
        }

        foreach (var end in scene.Inspection.OpenLooseEnds)
        {
            form.Refuse(Field("waive", end.Sequence), $"{end.What.Text}: put it right, or say why it stays.");
        }

        if (!form.IsValid)
        {
            return Page.Of<ClosePage, CloseView>(
                View(desk, scene, form.Refused("close")), StatusCodes.Status422UnprocessableEntity);
        }

        desk.Record(scene, now => IsReady(now) ? [new InspectionClosed(number)] : []);
        return Results.Redirect(Links.Report(vehicle, number));
    }

    private static IEnumerable<EntryBody> Settled(PostedForm form, BenchScene scene)
    {
        var number = scene.Inspection.Number;
        foreach (var line in Missing(scene))
        {
            if (form.Text($"reason-{line.Check.Id}") is { Length: > 0 } reason)
            {
                yield return new CheckLeftOut(number, line.Check.Id, reason);
            }
        }

        foreach (var end in scene.Inspection.OpenLooseEnds)
        {
            if (form.Ticked(Field("tie", end.Sequence)))
            {
                yield return new LooseEndTied(end.Sequence);
            }
            else if (form.Text(Field("waive", end.Sequence)) is { Length: > 0 } reason)
            {
                yield return new LooseEndWaived(end.Sequence, reason);
            }
        }
    }

    private static bool IsReady(BenchScene scene) =>
        !Missing(scene).Any() && !scene.Inspection.OpenLooseEnds.Any();

    private static IEnumerable<CheckLine> Missing(BenchScene scene) => scene.Sheet.Checks
        .Select(check => new CheckLine(check, Standings.Of(scene.Inspection, scene.Sheet, check), false))
        .Where(line => line.Progress.Standing is CheckStanding.NotDone or CheckStanding.Captured);

    private static string Field(string what, long sequence) =>
        string.Create(CultureInfo.InvariantCulture, $"{what}-{sequence}");

    private static CloseView View(BenchDesk desk, BenchScene scene, RefusedForm? form) => new(
        scene.Vehicle,
        scene.Inspection,
        [.. Missing(scene)],
        [.. scene.Inspection.OpenLooseEnds],
        ProposalGroups.OpenIn(scene.Inspection).Count(),
        scene.Inspection.VoiceNotes.Count(note => note.IsWaiting),
        form,
        desk.Garage.Problems);
}
