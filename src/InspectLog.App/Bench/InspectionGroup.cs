using InspectLog.App.Access;

namespace InspectLog.App.Bench;

/// <summary>Maps endpoints below an inspection's address.</summary>
public static class InspectionGroup
{
    /// <summary>Address of an inspection.</summary>
    private const string Base = "/vehicles/{vehicle}/inspections/{number:long}";

    /// <summary>A group of endpoints below an inspection's address; each finds it in <see cref="BenchDesk.Scene"/>.</summary>
    /// <param name="app">Where the group is mapped.</param>
    /// <param name="look">Who may look.</param>
    /// <param name="change">Who may change something; null where nothing is changed.</param>
    /// <param name="below">The rest of the group's address.</param>
    public static RouteGroupBuilder MapInspection(this IEndpointRouteBuilder app, string look, string? change, string below = "")
    {
        var group = app.MapGroup(Base + below).WhoMay(look, change);
        group.AddEndpointFilter<RouteGroupBuilder, SceneFilter>();
        return group;
    }
}
