using InspectLog.Journal;
using InspectLog.Photos;

namespace InspectLog.App.Media;

/// <summary>Recordings and photos. A name is the hash of the bytes, so an answer never changes.</summary>
public static class MediaEndpoints
{
    private const string Forever = "private, max-age=31536000, immutable";

    public static void MapMedia(this IEndpointRouteBuilder app)
    {
        app.MapGet("/media/{sha256}", Original).WithName("media");
        app.MapGet("/photos/{sha256}/display", (HttpContext context, PhotoCopies copies, string sha256) =>
            Copy(context, copies, sha256, PhotoIntake.DisplayEdge)).WithName("photo-display");
        app.MapGet("/photos/{sha256}/thumbnail", (HttpContext context, PhotoCopies copies, string sha256) =>
            Copy(context, copies, sha256, PhotoIntake.ThumbnailEdge)).WithName("photo-thumbnail");
    }

    /// <summary>The original bytes. Only recordings are played in a page; an original photo, which may carry a location,
    /// is sent as a download.</summary>
    private static IResult Original(HttpContext context, Garage garage, string sha256)
    {
        if (garage.Media.PathOf(sha256) is not { } path)
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = Forever;
        var type = TypeOf(path);
        var name = type == MediaTypes.Wav ? null : $"{sha256[..12]}{(type == MediaTypes.Png ? ".png" : ".jpg")}";
        return Results.File(path, type, name, enableRangeProcessing: true);
    }

    private static async Task<IResult> Copy(HttpContext context, PhotoCopies copies, string sha256, int longestEdge)
    {
        if (await copies.PathOf(sha256, longestEdge, context.RequestAborted) is not { } path)
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = Forever;
        return Results.File(path, MediaTypes.Jpeg);
    }

    /// <summary>The content decides the type: the store holds WAV, JPEG and PNG files only.</summary>
    private static string TypeOf(string path)
    {
        Span<byte> start = stackalloc byte[4];
        using var file = File.OpenRead(path);
        file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        return start[0] switch
        {
            (byte)'R' => MediaTypes.Wav,
            0x89 => MediaTypes.Png,
            _ => MediaTypes.Jpeg,
        };
    }
}
