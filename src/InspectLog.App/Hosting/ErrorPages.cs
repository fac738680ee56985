using InspectLog.App.Bench;
using InspectLog.App.Ui;
using InspectLog.Journal;
using Microsoft.AspNetCore.Diagnostics;

namespace InspectLog.App.Hosting;

/// <summary>Pages for what went wrong. Every one says what was not done and what to do.</summary>
public static class ErrorPages
{
    public static void UseErrorPages(this WebApplication app)
    {
        app.UseExceptionHandler(handler => handler.Run(context =>
        {
            var error = context.Features.Get<IExceptionHandlerFeature>()?.Error;
            var (status, title, message) = Words(error);
            return Show(context, status, title, message);
        }));
        app.UseStatusCodePages(pages => pages.HttpContext.Response.StatusCode switch
        {
            StatusCodes.Status404NotFound => Show(
                pages.HttpContext, 404, "There is nothing here", "The address leads nowhere. Go to the garage and start from there."),
            StatusCodes.Status413PayloadTooLarge => Show(
                pages.HttpContext, 413, "Too large", "The file is larger than is taken here, so it was not kept. Send a smaller one."),
            _ => Task.CompletedTask,
        });
    }

    private static (int Status, string Title, string Message) Words(Exception? error) => error switch
    {
        JournalReadOnlyException => (503, "Not saved", error.Message),
        UnknownVehicleException => (404, "No such vehicle", error.Message + " Go to the garage and choose one."),
        InspectionClosedException => (409, "The inspection is closed", error.Message),
        BadHttpRequestException { StatusCode: 413 } => (
            413, "Too large", "The file is larger than is taken here, so it was not kept. Send a smaller one."),
        BadHttpRequestException => (400, "Not understood", "The request was not whole, so nothing was saved. Try again."),
        _ => (500, "Something went wrong in the program",
            "What you sent may not have been saved. Go back, look whether it is there, and try again."),
    };

    /// <summary>Scripts ask for JSON and get the message alone; people get a page.</summary>
    private static Task Show(HttpContext context, int status, string title, string message)
    {
        if (context.Request.Headers.Accept.ToString().Contains("application/json", StringComparison.Ordinal))
        {
            context.Response.StatusCode = status;
            return context.Response.WriteAsJsonAsync(new { message });
        }

        var problems = context.RequestServices.GetRequiredService<Garage>().Problems;
        return Page.Of<MessagePage, MessageView>(new MessageView(title, message, problems), status).ExecuteAsync(context);
    }
}
