using AngleSharp.Dom;
using InspectLog.Paper.Blocks;

namespace InspectLog.App.Reports.Printing;

/// <summary>Takes over the tables of a report. Pure.</summary>
internal static class PaperTables
{
    /// <summary>A table.</summary>
    /// <param name="table">Its element.</param>
    /// <param name="blocks">Takes over what stands in its cells.</param>
    public static Block.Table Of(IElement table, PaperBlocks blocks)
    {
        var rows = table.QuerySelectorAll("tr").Select(row => new Row(
            row.ParentElement?.LocalName == "thead",
            [.. row.Children.Select(cell => new Cell(blocks.Within(cell), cell.LocalName == "th"))])).ToList();
        return new(Widths(table, rows.Max(row => row.Cells.Count)), rows) { HasLines = !table.ClassList.Contains("budget"), Above = 6 };
    }

    // The first column names what the others say of it.
    private static IReadOnlyList<double> Widths(IElement table, int columns) => table.ClassList.Contains("budget") && columns == 4
        ? [44, 26, 12, 18]
        : columns <= 1 ? [1] : [.. Enumerable.Range(0, columns).Select(column => column == 0 ? 2.0 : 1.0)];
}
