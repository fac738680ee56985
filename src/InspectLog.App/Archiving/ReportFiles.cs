using InspectLog.App.Reports.Files;
using InspectLog.Archives;
using InspectLog.Archives.Making;
using InspectLog.Inspecting;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Archiving;

/// <summary>What people read of an archive: the report of each closed inspection, and the table of readings. They tell what the
/// archive holds and nothing else.</summary>
/// <param name="webRoot">The folder that the style is in.</param>
public sealed class ReportFiles(string webRoot) : IReadableParts
{
    /// <inheritdoc/>
    public IEnumerable<ReadablePart> Of(ReadableRecord record)
    {
        var sheets = new SheetLibrary(record.Source.Sheets);
        yield return new(ArchiveLayout.Readings, (to, stop) => to.WriteAsync(ReadingsTable.Of(record.Vehicle, sheets), stop).AsTask());
        var style = ReportHtml.StyleIn(webRoot);
        var workshop = WorkshopReading.Of(record.Source.DataFolder).State;
        foreach (var inspection in record.Vehicle.Inspections.Where(one => one.IsClosed))
        {
            if (BenchScene.Of(record.Vehicle, sheets, inspection.Number) is { } scene)
            {
                var view = ReportFileView.Of(scene, workshop, record.Withheld) with { Style = style, IsOfArchive = true };
                yield return new(
                    ArchiveLayout.Report(inspection.Started, inspection.Number),
                    (to, stop) => ReportHtml.WriteAsync(view, record.PictureOf, to, stop: stop));
            }
        }
    }
}
