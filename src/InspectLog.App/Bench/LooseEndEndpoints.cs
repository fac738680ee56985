using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Bench;

/// <summary>Opens, ties and waives loose ends.</summary>
public static class LooseEndEndpoints
{
    public static void MapLooseEnds(this IEndpointRouteBuilder app)
    {
        var bench = app.MapGroup(BenchEndpoints.Base);
        bench.MapPost("/loose-ends", Open).WithName("open-loose-end");
        bench.MapPost("/disturb", Disturb).WithName("disturb");
        bench.MapPost("/loose-ends/{end:long}/tie", Tie).WithName("tie-loose-end");
        bench.MapPost("/loose-ends/{end:long}/waive", Waive).WithName("waive-loose-end");
    }

    private static async Task<IResult> Open(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var text = form.Required("text", "Say what is left undone, in a few words.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, new LooseEndOpened(number, text, "Put it right", null, null, null)))
            : desk.Show(context, scene, form.Refused("loose-end"));
    }

    private static async Task<IResult> Disturb(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var check = scene.Sheet.Find(form.Text("check"));
        var id = form.Text("disturbance");
        if (check?.Disturbs.FirstOrDefault(disturbance => disturbance.Id == id) is not { } disturbance)
        {
            return Results.NotFound();
        }

        return desk.Show(context, desk.Record(scene, now =>
            now.Inspection.OpenLooseEnds.Any(end => end.What.Disturbance == id)
                ? []
                : [LooseEndRules.Of(now.Inspection, check, disturbance)]));
    }

    private static IResult Tie(HttpContext context, BenchDesk desk, string vehicle, long number, long end)
    {
        if (desk.Find(vehicle, number) is not { } scene || !scene.Inspection.LooseEnds.Exists(one => one.Sequence == end))
        {
            return Results.NotFound();
        }

        return desk.Show(context, desk.Record(scene, now => IsOpen(now, end) ? [new LooseEndTied(end)] : []));
    }

    private static async Task<IResult> Waive(
        HttpContext context, BenchDesk desk, string vehicle, long number, long end)
    {
        if (desk.Find(vehicle, number) is not { } scene || !scene.Inspection.LooseEnds.Exists(one => one.Sequence == end))
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var reason = form.Required("reason", "Say why it stays as it is, in a few words.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, now => IsOpen(now, end) ? [new LooseEndWaived(end, reason)] : []))
            : desk.Show(context, scene, form.Refused(string.Create(CultureInfo.InvariantCulture, $"waive-{end}")));
    }

    private static bool IsOpen(BenchScene scene, long end) =>
        scene.Inspection.OpenLooseEnds.Any(one => one.Sequence == end);
}
