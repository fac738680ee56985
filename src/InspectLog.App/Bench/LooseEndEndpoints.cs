using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using System.Globalization;

namespace InspectLog.App.Bench;

/// <summary>Opens, ties and waives loose ends.</summary>
public static class LooseEndEndpoints
{
    public static void MapLooseEnds(this IEndpointRouteBuilder app)
    {
        var bench = app.MapInspection(Policies.Look, Policies.Record);
        bench.MapPost("/loose-ends", Open).WithName("open-loose-end");
        bench.MapPost("/disturb", Disturb).WithName("disturb");
        bench.MapPost("/loose-ends/tie", TieSeveral).WithName("tie-loose-ends");
        bench.MapPost("/loose-ends/untie", UntieSeveral).WithName("untie-loose-ends");
        bench.MapPost("/loose-ends/{end:long}/tie", Tie).WithName("tie-loose-end");
        bench.MapPost("/loose-ends/{end:long}/waive", Waive).WithName("waive-loose-end");
    }

    private static async Task<IResult> Open(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        var form = await PostedForm.ReadAsync(context.Request);
        var text = form.Required("text", "Say what is left undone, in a few words.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, new LooseEndOpened(number, text, "Put it right", null, null, null)))
            : desk.Show(context, scene, form.Refused("loose-end"));
    }

    private static async Task<IResult> Disturb(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        var form = await PostedForm.ReadAsync(context.Request);
        var check = scene.Sheet.Find(form.Text("check"));
        var id = form.Text("disturbance");
        if (check?.Disturbs.FirstOrDefault(disturbance => disturbance.Id == id) is not { } disturbance)
        {
            return Results.NotFound();
        }

        var cylinder = form.Whole("cylinder", "Choose a place from the list.");
        return desk.Show(context, desk.Record(scene, now => LooseEndRules.OpenEnd(now.Inspection, disturbance, cylinder) is null
            ? [LooseEndRules.Of(now, check, disturbance, cylinder)]
            : []));
    }

    private static IResult Tie(HttpContext context, BenchDesk desk, string vehicle, long number, long end)
    {
        var scene = desk.Scene;
        if (!scene.Inspection.LooseEnds.Exists(one => one.Sequence == end))
        {
            return Results.NotFound();
        }

        return desk.Show(context, desk.Record(scene, now => IsOpen(now, end) ? [new LooseEndTied(end)] : []));
    }

    /// <summary>Ties the loose ends that the form names, as those of one part are put right together.</summary>
    private static async Task<IResult> TieSeveral(HttpContext context, BenchDesk desk)
    {
        return await Named(context, desk) is { } ends
            ? desk.Show(context, desk.Record(desk.Scene, now => [.. ends.Where(end => IsOpen(now, end)).Select(end => new LooseEndTied(end))]))
            : Results.NotFound();
    }

    /// <summary>Opens the loose ends again that the form names and somebody ticked off by mistake.</summary>
    private static async Task<IResult> UntieSeveral(HttpContext context, BenchDesk desk) => await Named(context, desk) is { } ends
        ? desk.Show(context, desk.Record(desk.Scene, now => [.. ends.SelectMany(end => Withdrawing.Untie(now, end))]))
        : Results.NotFound();

    /// <summary>The loose ends that the form names; null where it names none, or one that is not there.</summary>
    private static async Task<IReadOnlyList<long>?> Named(HttpContext context, BenchDesk desk)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var named = form.All("end").ToHashSet();
        var ends = desk.Scene.Inspection.LooseEnds.Select(end => end.Sequence)
            .Where(end => named.Contains(end.ToString(CultureInfo.InvariantCulture))).ToList();
        return ends.Count == 0 || ends.Count < named.Count ? null : ends;
    }

    private static async Task<IResult> Waive(
        HttpContext context, BenchDesk desk, string vehicle, long number, long end)
    {
        var scene = desk.Scene;
        if (!scene.Inspection.LooseEnds.Exists(one => one.Sequence == end))
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
