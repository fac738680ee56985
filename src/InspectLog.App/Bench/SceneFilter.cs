using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Bench;

/// <summary>Finds the inspection that an address names before anything else is done, so that no endpoint below it has to
/// ask whether there is one.</summary>
public sealed class SceneFilter(TimeProvider clock) : IEndpointFilter
{
    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var request = context.HttpContext.Request;
        var desk = context.HttpContext.RequestServices.GetRequiredService<BenchDesk>();
        var vehicle = (string)request.RouteValues["vehicle"]!;
        var number = long.Parse((string)request.RouteValues["number"]!, CultureInfo.InvariantCulture);

        // Scripts show the message of an answer; people get the page for what is not there.
        return desk.Enter(PersonAtWork.Of(context.HttpContext), await StampOf(request), vehicle, number) ? await Answer(context, next, desk)
            : context.HttpContext.GetEndpoint()?.Metadata.GetMetadata<AnswersScripts>() is null ? Results.NotFound()
            : Results.NotFound(new { message = "There is no such inspection. Nothing was kept." });
    }

    /// <summary>Says by the hash of its entry that a capture is in the journal, or that there was nothing to add to it: only
    /// then may a device forget it.</summary>
    private static ValueTask<object?> Answer(EndpointFilterInvocationContext context, EndpointFilterDelegate next, BenchDesk desk)
    {
        var response = context.HttpContext.Response;
        if (desk.IsCapture)
        {
            response.OnStarting(() =>
            {
                if (response.StatusCode < StatusCodes.Status400BadRequest)
                {
                    response.Headers["Entry-Hash"] = desk.HashOfCapture() ?? "none";
                }

                return Task.CompletedTask;
            });
        }

        return next(context);
    }

    private async ValueTask<CaptureStamp?> StampOf(HttpRequest request) =>
        !HttpMethods.IsPost(request.Method) ? null
        : request.HasFormContentType ? PostedStamp.Of(await PostedForm.ReadAsync(request), request.Query, clock)
        : PostedStamp.Of(request.Query, clock);
}

/// <summary>Marks an endpoint that a script calls, and that answers in JSON.</summary>
public sealed record AnswersScripts;
