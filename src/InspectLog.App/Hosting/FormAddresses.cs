using Microsoft.AspNetCore.Routing.Template;

namespace InspectLog.App.Hosting;

/// <summary>Addresses that only take forms, opened as pages: after a refused form the browser shows such an address, and
/// whoever opens it again is led to the page the form stands on. One place for all of them.</summary>
public static class FormAddresses
{
    /// <summary>The nearest address above one that only takes forms, at which there is a page; null where there is none.
    /// </summary>
    /// <param name="endpoints">All endpoints.</param>
    /// <param name="path">The path that was opened.</param>
    public static string? PageAbove(IReadOnlyList<Endpoint> endpoints, string path)
    {
        for (var above = Above(path); above.Length > 0; above = Above(above))
        {
            if (endpoints.OfType<RouteEndpoint>().Any(endpoint => IsPageAt(endpoint, above)))
            {
                return above;
            }
        }

        return null;
    }

    /// <summary>Leads to the page above; false where the request is not for a page or there is none.</summary>
    public static bool Lead(HttpContext context)
    {
        var (request, response) = (context.Request, context.Response);
        if (!HttpMethods.IsGet(request.Method)
            || request.Headers.Accept.ToString().Contains("application/json", StringComparison.Ordinal)
            || PageAbove(context.RequestServices.GetRequiredService<EndpointDataSource>().Endpoints, request.Path) is not { } page)
        {
            return false;
        }

        response.Headers.Allow = default;
        response.Redirect(page);
        return true;
    }

    private static string Above(string path) => path[..Math.Max(0, path.TrimEnd('/').LastIndexOf('/'))];

    private static bool IsPageAt(RouteEndpoint endpoint, string path)
    {
        var values = new RouteValueDictionary();
        return endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains(HttpMethods.Get) == true
            && new TemplateMatcher(new RouteTemplate(endpoint.RoutePattern), []).TryMatch(path, values)
            && endpoint.RoutePattern.ParameterPolicies.All(parameter => parameter.Value.All(policy =>
                policy.Content is not "long" and not "int" || long.TryParse(
                    values[parameter.Key]?.ToString(), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out _)));
    }
}
