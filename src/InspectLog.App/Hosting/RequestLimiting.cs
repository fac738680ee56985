namespace InspectLog.App.Hosting;

/// <summary>Holds requests to their limits.</summary>
internal static class RequestLimiting
{
    /// <summary>Answers 429 to requests beyond the limits.</summary>
    public static IApplicationBuilder UseRequestLimits(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        if (context.RequestServices.GetRequiredService<RequestLimits>().LetsIn(context))
        {
            return next(context);
        }

        context.Response.StatusCode = StatusCodes.Status429TooManyRequests;
        return Task.CompletedTask;
    });
}
