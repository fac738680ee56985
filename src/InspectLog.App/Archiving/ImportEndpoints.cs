using InspectLog.App.Access;
using InspectLog.App.Listening;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Archives.Checking;
using InspectLog.Archives.Importing;
using InspectLog.Journal;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;
using System.Text;

namespace InspectLog.App.Archiving;

/// <summary>Taking archives in: sent, looked at, and then taken in or not.</summary>
public static class ImportEndpoints
{
    /// <summary>What an I/O error has where the reader of forms made it itself, at the end of a body that is not whole; one of
    /// the system, such as a full disk, has the system's number.</summary>
    private const int EndedEarly = unchecked((int)0x80131620);

    private const int LongestPrinted = 1000;

    public static void MapImports(this IEndpointRouteBuilder app)
    {
        var import = app.MapGroup(Links.Import).WhoMay(Policies.Keep, Policies.Keep);
        import.MapGet("/", (Garage garage) => Form(garage, null)).WithName("import");
        import.MapPost("/", Send).WithName("send-archive").WithMetadata(new RequestSizeLimit(ImportDesk.LargestArchive));
        import.MapGet("/{archive}", Look).WithName("sent-archive");
        import.MapPost("/{archive}", TakeIn).WithName("take-in-archive");
    }

    private static IResult Form(Garage garage, string? problem, string field = "archive", string printed = "") => Page.Of<ImportPage, ImportView>(
        new(problem is null ? null : new("import", new Dictionary<string, string> { ["printed"] = printed }, new Dictionary<string, string> { [field] = problem }), garage.Problems),
        problem is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static async Task<IResult> Send(HttpContext context, Garage garage, ImportDesk desk)
    {
        try
        {
            var (printed, file) = await PartsAsync(context.Request);
            if (printed.Length > 0 && !PrintedCheck.CanRead(printed))
            {
                return Form(garage, "This is neither the head of a record, 64 digits and letters from a to f, nor the text of a report’s picture. Type it as printed, or leave it empty.", "printed", printed);
            }

            if (file is null)
            {
                return Form(garage, "Choose the ZIP file of an archive first.", printed: printed);
            }

            var (id, found) = await desk.TakeAsync(file, printed, context.RequestAborted);
            return id is null ? Show(garage, null, found, printed) : Results.Redirect(Links.Imported(id));
        }
        catch (Exception cut) when (cut is InvalidDataException || (cut is IOException and not BadHttpRequestException && cut.HResult == EndedEarly))
        {
            return Form(garage, "The file did not come whole. Send it again.");
        }
    }

    /// <summary>What was typed, and the file, read as it comes: it may be larger than would fit anywhere else on the way. Null
    /// where none was chosen.</summary>
    private static async Task<(string Printed, Stream? File)> PartsAsync(HttpRequest request)
    {
        var printed = "";
        if (!MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
            || HeaderUtilities.RemoveQuotes(type.Boundary).Value is not { Length: > 0 } boundary)
        {
            return (printed, null);
        }

        var form = new MultipartReader(boundary, request.Body);
        while (await form.ReadNextSectionAsync(request.HttpContext.RequestAborted) is { } section)
        {
            if (!ContentDispositionHeaderValue.TryParse(section.ContentDisposition, out var part))
            {
                continue;
            }

            if (part.Name == "printed" && !part.FileName.HasValue)
            {
                printed = await TextAsync(section.Body, request.HttpContext.RequestAborted);
            }
            else if (part.Name == "archive" && part.FileName.HasValue && part.FileName.Value!.Trim('"').Length > 0)
            {
                return (printed, section.Body);
            }
        }

        return (printed, null);
    }

    /// <summary>The beginning of a text, which is longer than any that can be meant.</summary>
    private static async Task<string> TextAsync(Stream body, CancellationToken stop)
    {
        var bytes = new byte[LongestPrinted];
        return Encoding.UTF8.GetString(bytes, 0, await body.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false, stop)).Trim();
    }

    private static IResult Look(Garage garage, ImportDesk desk, string archive) => desk.Find(archive) is var (facts, printed)
        ? Show(garage, archive, new([], facts), printed)
        : Gone(garage);

    private static async Task<IResult> TakeIn(HttpContext context, Garage garage, ImportDesk desk, BenchEvents events, string archive)
    {
        try
        {
            if (await Task.Run(() => desk.TakeIn(archive, context.RequestAborted)) is not { } vehicle)
            {
                return Gone(garage);
            }

            events.PublishToAll(new BenchEvent.Changed());
            return Results.Redirect(Links.Vehicle(vehicle));
        }
        catch (ImportRefusedException refused)
        {
            return Form(garage, refused.Message);
        }
    }

    private static IResult Gone(Garage garage) =>
        Form(garage, "That archive is not here any more: it was taken in, or others were sent since. Send it again.");

    private static IResult Show(Garage garage, string? id, CheckedArchive found, string printed) => Page.Of<ImportCheckPage, ImportCheckView>(
        new(id, found.Faults, found.Facts, found.IsIntact ? ImportPlan.Of(found.Facts!, garage) : null, found.Facts is { } facts ? PrintedCheck.Of(printed, facts.Seals.Chain) : null, garage.Problems),
        found.IsIntact ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
