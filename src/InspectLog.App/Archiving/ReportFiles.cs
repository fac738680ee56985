using System.Buffers.Text;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using System.Text.Unicode;
using InspectLog.App.Reports;
using InspectLog.App.Ui;
using InspectLog.Archives;
using InspectLog.Archives.Making;
using InspectLog.Inspecting;
using InspectLog.Journal.Verification;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace InspectLog.App.Archiving;

/// <summary>What people read of an archive: the report of each closed inspection, and the table of readings. They tell what the
/// archive holds and nothing else.</summary>
/// <param name="webRoot">The folder that the style is in.</param>
public sealed partial class ReportFiles(string webRoot) : IReadableParts
{
    /// <inheritdoc/>
    public IEnumerable<ReadablePart> Of(ReadableRecord record)
    {
        var sheets = new SheetLibrary(record.Source.Sheets);
        yield return new(ArchiveLayout.Readings, (to, stop) => to.WriteAsync(ReadingsTable.Of(record.Vehicle, sheets), stop).AsTask());
        var style = File.ReadAllText(Path.Combine(webRoot, Assets.In(webRoot)["app.css"].TrimStart('/')));
        var workshop = WorkshopReading.Of(record.Source.DataFolder).State;
        var withheld = record.Entries.Count(entry => entry is { IsWithheld: true, IsRestated: false });
        foreach (var inspection in record.Vehicle.Inspections.Where(one => one.IsClosed))
        {
            if (BenchScene.Of(record.Vehicle, sheets, inspection.Number) is { } scene)
            {
                var report = ReportBuilder.Build(scene, workshop, []) with { StandsAlone = true };
                var view = new ReportFileView(report, style, ReportHead.Style(scene), withheld);
                yield return new(
                    ArchiveLayout.Report(inspection.Started, inspection.Number), (to, stop) => WriteAsync(view, record.PictureOf, to, stop));
            }
        }
    }

    /// <summary>Writes a report with its pictures in it, one picture at a time.</summary>
    private static async Task WriteAsync(
        ReportFileView view, Func<string, CancellationToken, Task<byte[]?>> pictureOf, Stream to, CancellationToken stop)
    {
        var html = await HtmlOf(view);
        var at = 0;
        foreach (Match picture in PictureAddress().Matches(html))
        {
            var address = html.AsMemory(picture.Index, picture.Length);
            await WriteAsync(html.AsMemory(at, picture.Index - at), to, stop);
            await WritePictureAsync(address[..address.Span.IndexOf('=')], await pictureOf(Sha256In(address.Span), stop), to, stop);
            at = picture.Index + picture.Length;
        }

        await WriteAsync(html.AsMemory(at), to, stop);
    }

    private static async Task<string> HtmlOf(ReportFileView view)
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
    private static async Task WritePictureAsync(ReadOnlyMemory<char> attribute, byte[]? jpeg, Stream to, CancellationToken stop)
    {
        await WriteAsync(attribute, to, stop);
        await WriteAsync("=\"data:image/jpeg;base64,".AsMemory(), to, stop);
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

    private static string Sha256In(ReadOnlySpan<char> address) => address[^73..^9].ToString();

    [GeneratedRegex("(?:src|href)=\"/photos/[0-9a-f]{64}/display\"")]
    private static partial Regex PictureAddress();
}
