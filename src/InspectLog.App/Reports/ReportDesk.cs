using InspectLog.App.Media;
using InspectLog.App.Reports.Files;
using InspectLog.App.Reports.Printing;
using InspectLog.App.Seals;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Reports;

/// <summary>Makes files of reports for pages, one at a time: each is in memory until it is sent.</summary>
public sealed class ReportDesk(
    Garage garage, PhotoCopies copies, IPhotoDeveloper developer, WorkshopSeals seals, IWebHostEnvironment host, TimeProvider time) : IDisposable
{
    private readonly SemaphoreSlim _turn = new(1);
    private readonly SmallPrints _prints = new(developer);

    /// <summary>A report as its page has it: with all that is wrong, and how the record is sealed.</summary>
    public ReportView ViewOf(BenchScene scene) => ReportBuilder.Build(scene, garage.Workshop, garage.Problems) with { Sealed = seals.Of(scene.Vehicle.Id) };

    /// <summary>A report as a PDF file.</summary>
    public Task<byte[]> PdfAsync(BenchScene scene, CancellationToken stop) => InTurnAsync(
        () => ReportPaper.WriteAsync(
            FileOf(scene), async (sha256, given) => await PictureAsync(sha256, given) is { } copy ? await _prints.OfAsync(copy, given) : null, time.GetUtcNow(), stop: stop),
        stop);

    /// <summary>A report as one HTML file.</summary>
    public Task<byte[]> HtmlAsync(BenchScene scene, CancellationToken stop) => InTurnAsync(
        async () =>
        {
            using var file = new MemoryStream();
            await ReportHtml.WriteAsync(FileOf(scene) with { Style = ReportHtml.StyleIn(host.WebRootPath) }, PictureAsync, file, stop: stop);
            return file.ToArray();
        },
        stop);

    /// <inheritdoc/>
    public void Dispose() => _turn.Dispose();

    private ReportFileView FileOf(BenchScene scene) => new(ViewOf(scene) with { StandsAlone = true }, ReportHead.Words(scene), Withheld: 0);

    private async Task<byte[]?> PictureAsync(string sha256, CancellationToken stop) =>
        await copies.OfAsync(sha256, CopyKind.Display, stop) is PhotoCopy.Ready(var jpeg) ? jpeg : null;

    private async Task<byte[]> InTurnAsync(Func<Task<byte[]>> make, CancellationToken stop)
    {
        await _turn.WaitAsync(stop);
        try
        {
            return await Task.Run(make, stop);
        }
        finally
        {
            _turn.Release();
        }
    }
}
