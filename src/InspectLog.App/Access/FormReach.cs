using InspectLog.Journal;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Routing.Template;

namespace InspectLog.App.Access;

/// <summary>Whether whoever looks at a page may send a form of it: asked of the endpoint that would take the form, so that what
/// is shown and what is allowed cannot part.</summary>
public sealed class FormReach
{
    private readonly Lazy<IReadOnlyList<(TemplateMatcher Matcher, string? Policy)>> _endpoints;
    private readonly Garage _garage;

    public FormReach(EndpointDataSource endpoints, Garage garage)
    {
        _garage = garage;
        _endpoints = new(() => [.. endpoints.Endpoints.OfType<RouteEndpoint>().Where(IsForChanges).OrderBy(endpoint => endpoint.RoutePattern.Parameters.Count).Select(Of)]);
    }

    /// <summary>Why a form cannot be sent, in a sentence; null where it can.</summary>
    /// <param name="context">The request for the page.</param>
    /// <param name="action">Where the form goes.</param>
    public static string? WhyNot(HttpContext context, string action) =>
        context.RequestServices.GetService<FormReach>()?.WhyNot(Caller.Of(context), action);

    private string? WhyNot(Caller? caller, string action)
    {
        var path = new PathString(action.Split('?', '#')[0]);
        if (_endpoints.Value.FirstOrDefault(one => one.Matcher.TryMatch(path, [])) is not { Matcher: not null } taker)
        {
            return null; // no endpoint of ours: then the answer tells
        }

        return _garage.IsLookedAtOnly ? "This data folder is only looked at, so nothing can be changed here."
            : taker.Policy is null || caller?.May(taker.Policy) == true ? null
            : "You may look at this, and not change it.";
    }

    private static bool IsForChanges(RouteEndpoint endpoint) =>
        endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains(HttpMethods.Post) == true;

    private static (TemplateMatcher Matcher, string? Policy) Of(RouteEndpoint endpoint) => (
        new(TemplateParser.Parse(WithoutConstraints(endpoint.RoutePattern.RawText!)), []),
        endpoint.Metadata.GetMetadata<IAllowAnonymous>() is null ? endpoint.Metadata.GetMetadata<IAuthorizeData>()?.Policy : null);

    private static string WithoutConstraints(string pattern) => System.Text.RegularExpressions.Regex.Replace(pattern, @"\{([a-zA-Z0-9]+):[^}]*\}", "{$1}");
}
