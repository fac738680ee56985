using InspectLog.App.Access;
using InspectLog.Journal;

namespace InspectLog.App.Media;

/// <summary>Recordings and photos. A name is the hash of the bytes, so an answer never changes.</summary>
public static class MediaEndpoints
{
    private const string Forever = "private, max-age=31536000, immutable";

    public static void MapMedia(this IEndpointRouteBuilder app)
    {
        app.For(Policies.HaveOriginals).MapGet("/media/{sha256}", Original).WithName("media");
        var copies = app.For(Policies.SeePhotos);
        copies.MapGet("/photos/{sha256}/display", (HttpContext context, PhotoCopies photos, string sha256) =>
            Copy(context, photos, sha256, CopyKind.Display)).WithName("photo-display");
        copies.MapGet("/photos/{sha256}/thumbnail", (HttpContext context, PhotoCopies photos, string sha256) =>
            Copy(context, photos, sha256, CopyKind.Thumbnail)).WithName("photo-thumbnail");
        copies.MapGet("/photos/{sha256}/print", (HttpContext context, PhotoCopies photos, string sha256) =>
            Copy(context, photos, sha256, CopyKind.Print)).WithName("photo-print");
    }

    /// <summary>The original bytes. Only recordings are played in a page; an original photo, which may carry a location,
    /// is sent as a download.</summary>
    private static async Task<IResult> Original(HttpContext context, Garage garage, string sha256)
    {
        if (await garage.Media.OpenAsync(sha256, context.RequestAborted) is not { } file)
        {
            return Results.NotFound();
        }

        context.Response.RegisterForDisposeAsync(file);
        context.Response.Headers.CacheControl = Forever;
        var type = await TypeOfAsync(file, context.RequestAborted);
        var name = type == MediaTypes.Wav ? null : $"{sha256[..12]}{(type == MediaTypes.Png ? ".png" : ".jpg")}";
        return Results.Stream(file, type, name, enableRangeProcessing: true);
    }

    /// <summary>A copy, in bounded time. The program's stop is not held up by it.</summary>
    private static async Task<IResult> Copy(HttpContext context, PhotoCopies photos, string sha256, CopyKind kind)
    {
        switch (await photos.OfAsync(sha256, kind, context.RequestAborted))
        {
            case PhotoCopy.Ready(var jpeg):
                context.Response.Headers.CacheControl = Forever;
                return Results.Bytes(jpeg, MediaTypes.Jpeg);
            case PhotoCopy.CannotBeShown(var fault):
                return Results.Text(
                    $"This photo cannot be shown: {fault.Words()}. The original is kept as it was sent.",
                    statusCode: StatusCodes.Status422UnprocessableEntity);
            case PhotoCopy.Later:
                return Results.Text(
                    "This photo cannot be shown now. Ask for it again in a minute.",
                    statusCode: StatusCodes.Status503ServiceUnavailable);
            default:
                return Results.NotFound();
        }
    }

    /// <summary>The content decides the type: the store holds WAV, JPEG and PNG files only.</summary>
    private static async Task<string> TypeOfAsync(Stream file, CancellationToken stop)
    {
        var start = new byte[4];
        await file.ReadAtLeastAsync(start, start.Length, throwOnEndOfStream: false, stop);
        file.Position = 0;
        return start[0] switch
        {
            (byte)'R' => MediaTypes.Wav,
            0x89 => MediaTypes.Png,
            _ => MediaTypes.Jpeg,
        };
    }
}
