using System.Buffers.Text;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using System.Text.Unicode;
using InspectLog.App.Ui;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace InspectLog.App.Reports.Files;

/// <summary>Writes a report as one HTML file with its style and its pictures in it.</summary>
public static partial class ReportHtml
{
    /// <summary>The style of pages, of the folder they are served from.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static string StyleIn(string webRoot) => File.ReadAllText(Path.Combine(webRoot, Assets.In(webRoot)["app.css"].TrimStart('/')));

    /// <summary>Writes it, one picture at a time.</summary>
    /// <param name="view">The report.</param>
    /// <param name="pictureOf">A clean copy of a photo as JPEG, by its SHA-256; null where it cannot be shown.</param>
    /// <param name="to">Where to.</param>
    /// <param name="progress">Is told how far it is.</param>
    /// <param name="stop">Gives it up.</param>
    public static async Task WriteAsync(
        ReportFileView view,
        Func<string, CancellationToken, Task<byte[]?>> pictureOf,
        Stream to,
        IProgress<ReportProgress>? progress = null,
        CancellationToken stop = default)
    {
        var html = await OfAsync(view);
        var at = 0;
        var pictures = PictureAddress().Matches(html);
        foreach (var (number, picture) in pictures.Index())
        {
            progress?.Report(new("photo", number + 1, pictures.Count));
            await WriteAsync(html.AsMemory(at, picture.Index - at), to, stop);
            await WritePictureAsync(picture.Groups["attribute"].Value, await pictureOf(picture.Groups["sha256"].Value, stop), to, stop);
            at = picture.Index + picture.Length;
        }

        await WriteAsync(html.AsMemory(at), to, stop);
    }

    /// <summary>The file's text, with the addresses of its pictures in place of them.</summary>
    public static async Task<string> OfAsync(ReportFileView view)
    {
        await using var services = new ServiceCollection()
            .AddLogging()
            .AddSingleton(HtmlEncoder.Create(UnicodeRanges.All))
            .BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var parameters = ParameterView.FromDictionary(new Dictionary<string, object?> { [nameof(ReportFile.Model)] = view });
            return (await renderer.RenderComponentAsync<ReportFile>(parameters)).ToHtmlString();
        });
    }

    /// <summary>A picture as part of the file; one that cannot be shown leaves its words.</summary>
    private static async Task WritePictureAsync(string attribute, byte[]? jpeg, Stream to, CancellationToken stop)
    {
        await WriteAsync($"{attribute}=\"data:image/jpeg;base64,".AsMemory(), to, stop);
        if (jpeg is not null)
        {
            var text = new byte[Base64.GetMaxEncodedToUtf8Length(jpeg.Length)];
            Base64.EncodeToUtf8(jpeg, text, out _, out var length);
            await to.WriteAsync(text.AsMemory(0, length), stop);
        }

        await WriteAsync("\"".AsMemory(), to, stop);
    }

    private static async Task WriteAsync(ReadOnlyMemory<char> text, Stream to, CancellationToken stop)
    {
        var bytes = new byte[Encoding.UTF8.GetByteCount(text.Span)];
        Encoding.UTF8.GetBytes(text.Span, bytes);
        await to.WriteAsync(bytes, stop);
    }

    [GeneratedRegex("(?<attribute>src|href)=\"/photos/(?<sha256>[0-9a-f]{64})/display\"", RegexOptions.ExplicitCapture)]
    private static partial Regex PictureAddress();
}
