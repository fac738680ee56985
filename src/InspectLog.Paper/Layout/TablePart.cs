using InspectLog.Paper.Blocks;

namespace InspectLog.Paper.Layout;

/// <summary>A table. Its head stands again on each page it reaches, for those who see it.</summary>
/// <param name="rows">Its rows.</param>
/// <param name="columns">Where each column begins, points from its left side.</param>
/// <param name="width">Its width, points.</param>
/// <param name="hasLines">Whether a line stands below each row.</param>
internal sealed class TablePart(IReadOnlyList<TableRow> rows, IReadOnlyList<double> columns, double width, bool hasLines) : Part
{
    private static readonly Ink Line = Ink.Of(0xB9B4AA);

    private readonly TableRow? _head = rows.FirstOrDefault(row => row.IsHead);

    public override double Height { get; } = rows.Sum(row => row.Height);

    /// <summary>A short table stands on one page; of a longer one the head stands with a row.</summary>
    public override double First => Height <= Flow.Height / 4 ? Height : Math.Min(rows.Take(2).Sum(row => row.Height), Flow.Height / 2);

    public override void Put(Flow flow, double x)
    {
        flow.Sheets.Begin("Table");
        foreach (var row in rows)
        {
            if (flow.Room(Math.Min(row.Height, Flow.Height / 2)) && !row.IsHead && _head is { } head)
            {
                flow.Sheets.BeginUntold();
                PutRow(flow, x, head);
                flow.Sheets.End();
            }

            PutRow(flow, x, row);
        }

        flow.Sheets.End();
    }

    private void PutRow(Flow flow, double x, TableRow row)
    {
        flow.Sheets.Begin("TR");
        if (row.Height > Flow.Height / 2)
        {
            foreach (var cell in row.Cells)
            {
                PutCell(flow, x, row, cell, cell.Whole);
            }
        }
        else
        {
            flow.Beside(row.Height, row.Cells.Select<TableCell, Action>((cell, at) => () =>
            {
                flow.Y += TableRow.Padding;
                PutCell(flow, x + columns[at], row, cell, cell.Narrow);
            }));
        }

        flow.Sheets.End();
        if (hasLines)
        {
            flow.Sheets.BeginUntold();
            flow.Sheets.Rule(new(x, flow.Y), new(x + width, flow.Y), Line, row.IsHead ? 1 : 0.5);
            flow.Sheets.End();
        }
    }

    private static void PutCell(Flow flow, double x, TableRow row, TableCell cell, StackPart content)
    {
        if (cell.IsHeader)
        {
            flow.Sheets.BeginHeader(row.IsHead);
        }
        else
        {
            flow.Sheets.Begin("TD");
        }

        content.Put(flow, x);
        flow.Sheets.End();
    }
}

/// <summary>A row of a table.</summary>
/// <param name="IsHead">Whether it names the columns.</param>
/// <param name="Cells">Its cells.</param>
internal sealed record TableRow(bool IsHead, IReadOnlyList<TableCell> Cells)
{
    /// <summary>Space above and below what stands in a row, points.</summary>
    public const double Padding = 3;

    public double Height { get; } = Cells.Max(cell => cell.Narrow.Height) + 2 * Padding;
}

/// <summary>A cell of a table.</summary>
/// <param name="IsHeader">Whether it names its row or column.</param>
/// <param name="Narrow">What stands in it, for the width of its column.</param>
/// <param name="Whole">The same for the width of the table.</param>
internal sealed record TableCell(bool IsHeader, StackPart Narrow, StackPart Whole);
