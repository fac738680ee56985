using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal;
using Microsoft.AspNetCore.Diagnostics;

namespace InspectLog.App.Hosting;

/// <summary>Pages for what went wrong. Every one says what was not done and what to do.</summary>
public static class ErrorPages
{
    private const string NotUnderstood = "Not understood";

    private const string NotWhole = "The request was not whole, so nothing was saved. Try again.";

    public static void UseErrorPages(this WebApplication app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandler = context =>
            {
                var (status, title, message) = Words(context.Features.Get<IExceptionHandlerFeature>()?.Error);
                return Show(context, status, title, message);
            },

            // What is told to the sender and expected is no news for the terminal.
            SuppressDiagnosticsCallback = handled => Words(handled.Exception).Status < 500,
        });
        app.UseStatusCodePages(pages => pages.HttpContext.Response.StatusCode switch
        {
            StatusCodes.Status404NotFound => Show(
                pages.HttpContext, 404, "There is nothing here", "The address leads nowhere. Go to the garage and start from there."),
            StatusCodes.Status413PayloadTooLarge => Show(
                pages.HttpContext, 413, "Too large", "The file is larger than is taken here, so it was not kept. Send a smaller one."),
            StatusCodes.Status405MethodNotAllowed when FormAddresses.Lead(pages.HttpContext) => Task.CompletedTask,
            StatusCodes.Status405MethodNotAllowed => Show(
                pages.HttpContext, 405, "Nothing to show here", "This address only takes forms. Go to the garage and start from there."),
            StatusCodes.Status401Unauthorized => Show(
                pages.HttpContext, 401, "This device is not paired",
                "Nothing is shown to devices the workshop does not know. Pair it with a code from the workshop's computer (page Devices)."),
            StatusCodes.Status403Forbidden => Show(
                pages.HttpContext, 403, "Not for this device",
                "This device was paired for other things than this. Whoever runs the workshop can pair it anew for more."),
            StatusCodes.Status429TooManyRequests => Show(
                pages.HttpContext, 429, "Too much at once", "So much was asked for from here that others would have to wait. Try again in a minute."),
            StatusCodes.Status400BadRequest => Show(pages.HttpContext, 400, NotUnderstood, NotWhole),
            _ => Task.CompletedTask,
        });
    }

    private static (int Status, string Title, string Message) Words(Exception? error) => error switch
    {
        JournalReadOnlyException => (503, "Not saved", error.Message),
        UnknownVehicleException => (404, "No such vehicle", error.Message + " Go to the garage and choose one."),
        SheetMissingException => (409, "The check sheet is missing", error.Message),
        EntryRefusedException => (422, "Not recorded", error.Message),
        InspectionClosedException => (409, "The inspection is closed", error.Message),
        BadHttpRequestException { StatusCode: 413 } => (
            413, "Too large", "The file is larger than is taken here, so it was not kept. Send a smaller one."),
        BadHttpRequestException => (400, NotUnderstood, NotWhole),
        UnreadableFormException => (400, NotUnderstood, error.Message),
        IOException or UnauthorizedAccessException => (
            503, "Not done", $"The disk could not be read or written, so this was not saved. Make room on it, then try again. ({error.Message})"),
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

        // Trouble with the garage is no stranger's business.
        var problems = Caller.Of(context) is null ? [] : context.RequestServices.GetRequiredService<Garage>().Problems;
        return Page.Of<MessagePage, MessageView>(new MessageView(title, message, problems) { LeadsToPairing = status == StatusCodes.Status401Unauthorized }, status).ExecuteAsync(context);
    }
}
