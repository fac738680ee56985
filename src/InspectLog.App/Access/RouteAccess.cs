using Microsoft.AspNetCore.Authorization;

namespace InspectLog.App.Access;

/// <summary>States who may use endpoints.</summary>
public static class RouteAccess
{
    /// <summary>States who may look (GET) and who may change something (any other method), for each endpoint of a group.
    /// </summary>
    /// <param name="group">The group.</param>
    /// <param name="look">A policy of <see cref="Policies"/>.</param>
    /// <param name="change">A policy of <see cref="Policies"/>; null where nothing below changes anything, and then nobody
    /// may.</param>
    public static RouteGroupBuilder WhoMay(this RouteGroupBuilder group, string look, string? change = null)
    {
        ((IEndpointConventionBuilder)group).Add(endpoint =>
        {
            var isLook = endpoint.Metadata.OfType<HttpMethodMetadata>().Single().HttpMethods.SequenceEqual([HttpMethods.Get]);
            endpoint.Metadata.Add(new AuthorizeAttribute(isLook ? look : change ?? Policies.Run));
        });
        return group;
    }

    /// <summary>A group of endpoints that stand where their names say, with who may use them.</summary>
    public static RouteGroupBuilder For(this IEndpointRouteBuilder app, string look, string? change = null) =>
        app.MapGroup("").WhoMay(look, change);
}
