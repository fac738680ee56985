using System.IO.Compression;
using System.Net;
using System.Security.Cryptography;
using AngleSharp.Html.Dom;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Ui;

/// <summary>What pages load: named after what is in it, kept by the browser for good, and compressed ahead.</summary>
public sealed class ShippedFilesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Whatever_a_page_loads_bears_its_hash_and_is_kept_for_good()
    {
        await using var app = await TestApp.StartAsync();
        var addresses = LoadedBy(await app.PageAsync(await app.StartInspectionAsync()));
        Assert.Equal(4, addresses.Count);

        foreach (var address in addresses)
        {
            using var answer = await app.Client.GetAsync(address, Stop);
            var bytes = await answer.Content.ReadAsByteArrayAsync(Stop);

            Assert.Equal("public, max-age=31536000, immutable", answer.Headers.CacheControl!.ToString());
            Assert.Contains("Accept-Encoding", answer.Headers.Vary);
            Assert.Contains($"-{Convert.ToHexStringLower(SHA256.HashData(bytes))[..12]}.", address, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    [InlineData("gzip, deflate, br, zstd")]
    public async Task Compressed_file_is_the_same_file(string accepted)
    {
        await using var app = await TestApp.StartAsync();
        foreach (var address in LoadedBy(await app.PageAsync(await app.StartInspectionAsync())))
        {
            var plain = await app.Client.GetByteArrayAsync(address, Stop);
            using var request = new HttpRequestMessage(HttpMethod.Get, address);
            request.Headers.Add("Accept-Encoding", accepted);
            using var answer = await app.Client.SendAsync(request, Stop);

            var encoding = Assert.Single(answer.Content.Headers.ContentEncoding);
            Assert.Equal(accepted.Contains("br", StringComparison.Ordinal) ? "br" : "gzip", encoding);
            Assert.Equal(address.EndsWith(".css", StringComparison.Ordinal) ? "text/css" : "text/javascript", answer.Content.Headers.ContentType!.MediaType);
            Assert.True(answer.Content.Headers.ContentLength < plain.Length / 2);
            await using var stream = await answer.Content.ReadAsStreamAsync(Stop);
            await using Stream opened = encoding == "br" ? new BrotliStream(stream, CompressionMode.Decompress) : new GZipStream(stream, CompressionMode.Decompress);
            using var whole = new MemoryStream();
            await opened.CopyToAsync(whole, Stop);
            Assert.Equal(plain, whole.ToArray());
        }
    }

    [Fact]
    public async Task Scripts_of_others_are_whole()
    {
        await using var app = await TestApp.StartAsync();
        var addresses = LoadedBy(await app.PageAsync(await app.StartInspectionAsync()));
        foreach (var script in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "wwwroot", "vendor"), "*.js"))
        {
            var address = Assert.Single(addresses, address => address.Contains(Path.GetFileNameWithoutExtension(script), StringComparison.Ordinal));
            Assert.Equal(await File.ReadAllBytesAsync(script, Stop), await app.Client.GetByteArrayAsync(address, Stop));
        }
    }

    [Fact]
    public async Task Page_itself_comes_compressed_and_a_version_that_is_gone_is_not_found()
    {
        await using var app = await TestApp.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Add("Accept-Encoding", "br");
        using var answer = await app.Client.SendAsync(request, Stop);
        Assert.Equal("br", Assert.Single(answer.Content.Headers.ContentEncoding));

        using var gone = await app.Client.GetAsync("/assets/app-000000000000.js", Stop);
        Assert.Equal(HttpStatusCode.NotFound, gone.StatusCode);
    }

    /// <summary>Addresses of the scripts and styles a page loads.</summary>
    private static List<string> LoadedBy(IHtmlDocument page) =>
    [
        .. page.QuerySelectorAll("script[src]").Select(script => script.GetAttribute("src")!),
        .. page.QuerySelectorAll("link[rel=stylesheet]").Select(link => link.GetAttribute("href")!),
    ];
}
