using InspectLog.App.Ui;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Net.Http.Headers;

namespace InspectLog.App.Hosting;

/// <summary>Scripts, styles and icons. Those named after what is in them are kept by the browser for good, and come as they
/// were compressed when the program was built; of the others the browser asks each time, and is told that nothing
/// changed.</summary>
internal static class StaticFiles
{
    private const string ForGood = "public, max-age=31536000, immutable";
    private const string AskEachTime = "no-cache";

    /// <summary>Ways to compress, best first, with the end of the names of files compressed so.</summary>
    private static readonly (string Encoding, string End)[] Compressions = [("br", ".br"), ("gzip", ".gz")];

    public static void UseOwnFiles(this WebApplication app)
    {
        app.Use((context, next) =>
        {
            if (IsAsset(context.Request.Path) && Accepted(context.Request) is { } end)
            {
                context.Request.Path += end;
            }

            return next(context);
        });
        app.UseStaticFiles(new StaticFileOptions { ContentTypeProvider = new TypesInside(), OnPrepareResponse = Prepare });
    }

    private static void Prepare(StaticFileResponseContext file)
    {
        var headers = file.Context.Response.Headers;
        var isAsset = IsAsset(file.Context.Request.Path);
        headers.CacheControl = isAsset ? ForGood : AskEachTime;
        if (isAsset)
        {
            headers.Vary = HeaderNames.AcceptEncoding;
        }

        if (Compressions.FirstOrDefault(one => file.File.Name.EndsWith(one.End, StringComparison.Ordinal)) is { Encoding: { } encoding })
        {
            headers.ContentEncoding = encoding;
        }
    }

    private static bool IsAsset(PathString path) => path.Value!.StartsWith(Assets.Under, StringComparison.Ordinal);

    /// <summary>How the name of the compressed file ends that a browser takes; null for one that takes none.</summary>
    private static string? Accepted(HttpRequest request)
    {
        var accepted = request.GetTypedHeaders().AcceptEncoding.Where(one => one.Quality is null or > 0).Select(one => one.Value.Value).ToList();
        return Compressions.FirstOrDefault(one => accepted.Contains(one.Encoding)).End;
    }

    /// <summary>A compressed file has the type of what is in it.</summary>
    private sealed class TypesInside : IContentTypeProvider
    {
        private readonly FileExtensionContentTypeProvider _types = new();

        public bool TryGetContentType(string subpath, [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out string contentType) =>
            _types.TryGetContentType(
                Compressions.Any(one => subpath.EndsWith(one.End, StringComparison.Ordinal)) ? Path.ChangeExtension(subpath, null) : subpath,
                out contentType);
    }
}
