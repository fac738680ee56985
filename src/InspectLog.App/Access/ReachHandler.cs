using System.Globalization;
using InspectLog.Journal;
using Microsoft.AspNetCore.Authorization;

namespace InspectLog.App.Access;

/// <summary>What is asked for lies within what the caller may see.</summary>
public sealed class WithinReach : IAuthorizationRequirement;

/// <summary>Keeps a caller who is tied to one vehicle, or to one inspection, to that.</summary>
public sealed class ReachHandler(Garage garage) : AuthorizationHandler<WithinReach>
{
    protected override Task HandleRequirementAsync(AuthorizationHandlerContext context, WithinReach requirement)
    {
        if (context.Resource is HttpContext http && Caller.Of(http) is { } caller && IsWithin(caller, http))
        {
            context.Succeed(requirement);
        }

        return Task.CompletedTask;
    }

    private bool IsWithin(Caller caller, HttpContext http)
    {
        if (caller.Vehicle is not { } own)
        {
            return true;
        }

        var route = http.Request.RouteValues;
        return Text("sha256") is { } sha256 ? OwnMedia.Hold(garage, own, caller.Inspection, sha256)
            : (Text("vehicle") is not { } vehicle || vehicle == own)
            && (caller.Inspection is not { } only || Text("number") is not { } number || number == only.ToString(CultureInfo.InvariantCulture));

        string? Text(string name) => route.TryGetValue(name, out var value) ? Convert.ToString(value, CultureInfo.InvariantCulture) : null;
    }
}
