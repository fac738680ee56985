using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Ui;
using InspectLog.Inspecting.Workings;
using InspectLog.Inspecting;

namespace InspectLog.App.Workings;

/// <summary>Pages that work out derived figures from an inspection's own values. Plain GET forms: nothing is stored.</summary>
public static class WorkingEndpoints
{
    public static void MapWorkings(this IEndpointRouteBuilder app)
    {
        var workings = app.MapInspection(Policies.Look, change: null, "/workings");
        workings.MapGet("/", (HttpContext context, BenchDesk desk, string vehicle, long number) =>
            Show(context, desk, vehicle, number, WorkingKinds.On(desk.Scene.Sheet)[0].Id)).WithName("workings");
        workings.MapGet("/{kind}", Show).WithName("working");
    }

    private static IResult Show(HttpContext context, BenchDesk desk, string vehicle, long number, string kind)
    {
        var scene = desk.Scene;
        if (WorkingKinds.Find(kind) is not { } working)
        {
            return Results.NotFound();
        }

        var asked = context.Request.Query;
        var fields = working.Fields(scene)
            .Select(field => asked.TryGetValue(field.Name, out var typed) ? field with { Value = typed.ToString() } : field)
            .ToList();
        var complete = asked.Count > 0 || fields.TrueForAll(field => field.Value.Length > 0);
        var (parts, problem) = complete ? Work(working, fields, scene) : ([], null);
        var status = problem is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity;
        return Page.Of<WorkingPage, WorkingView>(
            new WorkingView(scene, working, fields, parts, problem, WorkingKinds.On(scene.Sheet), desk.Garage.Problems), status);
    }

    private static (IReadOnlyList<WorkedPart> Parts, string? Problem) Work(
        WorkingKind working, IReadOnlyList<WorkingField> fields, BenchScene scene)
    {
        try
        {
            return (WorkedUncertainty.Work(working, fields, scene), null);
        }
        catch (ArgumentException problem)
        {
            return ([], problem.Message);
        }
    }
}
