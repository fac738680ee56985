using Microsoft.Net.Http.Headers;

namespace InspectLog.App.Hosting;

/// <summary>Refuses requests that change something unless they come from the app's own pages. Browsers say where a
/// request comes from in <c>Sec-Fetch-Site</c>, or else in <c>Origin</c>; a request that says neither is refused.
/// The framework's antiforgery looks at form-bound endpoints only, so it is not relied on.</summary>
public static class SameOriginGuard
{
    public static bool Allows(HttpRequest request)
    {
        if (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || HttpMethods.IsOptions(request.Method))
        {
            return true;
        }

        var origin = request.Headers.Origin.ToString();
        var ownOrigin = $"{request.Scheme}://{request.Host}";
        return request.Headers["Sec-Fetch-Site"].ToString() switch
        {
            "same-origin" => origin.Length == 0 || origin == ownOrigin,
            "" => origin == ownOrigin,
            _ => false,
        };
    }

    /// <summary>Answers 403 to requests that are not allowed.</summary>
    public static IApplicationBuilder UseSameOriginGuard(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        if (Allows(context.Request))
        {
            return next(context);
        }

        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.Headers[HeaderNames.CacheControl] = "no-store";
        return context.Response.WriteAsync(
            "This request did not come from a page of this program, so nothing was changed. Open the program's own page and try again.");
    });
}
