using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;

namespace InspectLog.App.Hosting;

/// <summary>Pages compressed as they go out.</summary>
/// <remarks>No page holds a secret that its length could give away bit by bit: the device's cookie is in no page, and forms
/// have no tokens, because the cookie is for own pages only.</remarks>
internal static class PageCompression
{
    public static void CompressPages(this IServiceCollection services) => services.AddHttpContextAccessor().AddResponseCompression(compression =>
    {
        compression.EnableForHttps = true;
        compression.Providers.Add<Brotli>();
        compression.Providers.Add<GzipCompressionProvider>();
    });

    /// <summary>Brotli. A page that is opened is made small in some thirty milliseconds, once; what a page then reads anew, again
    /// and again, in two, at the quality from which on the next make it hardly smaller. The framework's own levels have neither.
    /// </summary>
    private sealed class Brotli(IHttpContextAccessor requests) : ICompressionProvider
    {
        private const int Small = 10;
        private const int Quick = 6;

        public string EncodingName => "br";

        public bool SupportsFlush => true;

        public Stream CreateStream(Stream outputStream) =>
            new BrotliStream(outputStream, new BrotliCompressionOptions { Quality = IsReadAnew ? Quick : Small }, leaveOpen: true);

        private bool IsReadAnew => requests.HttpContext?.Request.Headers["HX-Request"].ToString() == "true";
    }
}
