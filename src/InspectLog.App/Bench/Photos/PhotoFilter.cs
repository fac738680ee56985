using System.Globalization;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Photos;

/// <summary>Lets only photos of the inspection through.</summary>
internal sealed class PhotoFilter : IEndpointFilter
{
    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var desk = context.HttpContext.RequestServices.GetRequiredService<BenchDesk>();
        return long.TryParse((string)context.HttpContext.Request.RouteValues["photo"]!, NumberStyles.None, CultureInfo.InvariantCulture, out var photo)
            && desk.Scene.Inspection.Find(photo) is PhotoCapture
            ? await next(context)
            : Results.NotFound();
    }
}
