using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using InspectLog.App.Reports.Files;
using InspectLog.Paper;
using InspectLog.Paper.Blocks;

namespace InspectLog.App.Reports.Printing;

/// <summary>Writes a report as a PDF file: what the report's one HTML file says, laid out for paper.</summary>
public static class ReportPaper
{
    /// <summary>Writes it.</summary>
    /// <param name="view">The report.</param>
    /// <param name="pictureOf">A clean copy of a photo as JPEG, by its SHA-256; null where it cannot be shown.</param>
    /// <param name="made">When it is made.</param>
    /// <param name="progress">Is told how far it is.</param>
    /// <param name="stop">Gives it up.</param>
    /// <returns>The file.</returns>
    public static async Task<byte[]> WriteAsync(
        ReportFileView view,
        Func<string, CancellationToken, Task<byte[]?>> pictureOf,
        DateTimeOffset made,
        IProgress<ReportProgress>? progress = null,
        CancellationToken stop = default)
    {
        using var html = new HtmlParser().ParseDocument(await ReportHtml.OfAsync(view));
        var pictures = await PicturesAsync(html, pictureOf, progress, stop);
        var document = new PaperDocument(view.Title, "en-GB", new PaperBlocks(pictures).Within(html.Body!))
        {
            HeadLeft = view.Head.Vehicle,
            HeadRight = view.Head.Inspected,
            FootLeft = view.Head.Kind,
            PageNumber = ReportHeadWords.Page,
            NoPicture = "This photo cannot be shown.",
            Program = ProgramName.WithVersion,
            Made = made,
        };
        return PaperWriter.Write(document, progress is null ? null : new Pages(progress), stop);
    }

    private static async Task<Dictionary<string, byte[]?>> PicturesAsync(
        IDocument html, Func<string, CancellationToken, Task<byte[]?>> pictureOf, IProgress<ReportProgress>? progress, CancellationToken stop)
    {
        var pictures = new Dictionary<string, byte[]?>(StringComparer.Ordinal);
        var addresses = html.Images.Select(image => image.GetAttribute("src") ?? "")
            .Concat(html.QuerySelectorAll("svg.marked image").Select(image => image.GetAttribute("href") ?? "")).Distinct().ToList();
        foreach (var address in addresses)
        {
            stop.ThrowIfCancellationRequested();
            progress?.Report(new("photo", pictures.Count + 1, addresses.Count));
            pictures[address] = address.Split('/') is ["", "photos", { Length: 64 } sha256, _] ? await pictureOf(sha256, stop) : null;
        }

        return pictures;
    }

    private sealed class Pages(IProgress<ReportProgress> progress) : IProgress<PaperProgress>
    {
        public void Report(PaperProgress value) => progress.Report(new("page", value.Page, value.Of));
    }
}
