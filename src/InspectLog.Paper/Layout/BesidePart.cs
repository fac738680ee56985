using InspectLog.Paper.Blocks;

namespace InspectLog.Paper.Layout;

/// <summary>Things beside each other, in rows. A row that no page has room for stands one below the other.</summary>
/// <param name="rows">The rows, each with its cells for their width and, in place of those, for the whole one.</param>
/// <param name="step">From one cell's left side to the next, points.</param>
/// <param name="isList">Whether it is a list for those who listen.</param>
/// <param name="rule">How long a line above each is; null for none.</param>
internal sealed class BesidePart(IReadOnlyList<BesideRow> rows, double step, bool isList, double? rule) : Part
{
    private const double Gap = 12;

    /// <summary>Room to sign in, and between the line and the words below it.</summary>
    private const double ToSign = 36, BelowRule = 3;

    private readonly double _head = rule is null ? 0 : ToSign + BelowRule;

    public override double Height => rows.Sum(row => _head + row.Height) + (rows.Count - 1) * Gap;

    public override double First => rows.Count > 0 ? _head + Math.Min(rows[0].Height, Flow.Height - _head) : 0;

    public override void Put(Flow flow, double x)
    {
        Begin(flow, "L");
        for (var one = 0; one < rows.Count; one++)
        {
            var gap = one == 0 ? 0 : Gap;
            if (rows[one].Height + _head > Flow.Height)
            {
                flow.Skip(gap);
                Put(flow, rows[one].Whole, _ => x);
                continue;
            }

            flow.Room(gap + _head + rows[one].Height);
            flow.Skip(gap);
            PutRules(flow, x, rows[one].Cells.Count);
            flow.Beside(rows[one].Height, rows[one].Cells.Select<StackPart, Action>((cell, at) => () => PutCell(flow, cell, x + at * step)));
        }

        End(flow);
    }

    private void Put(Flow flow, IReadOnlyList<StackPart> cells, Func<int, double> x)
    {
        for (var at = 0; at < cells.Count; at++)
        {
            PutCell(flow, cells[at], x(at));
            flow.Skip(Gap);
        }
    }

    private void PutCell(Flow flow, StackPart cell, double x)
    {
        Begin(flow, "LI");
        Begin(flow, "LBody");
        cell.Put(flow, x);
        End(flow);
        End(flow);
    }

    private void PutRules(Flow flow, double x, int count)
    {
        if (rule is not { } length)
        {
            return;
        }

        flow.Y += ToSign;
        flow.Sheets.BeginUntold();
        for (var at = 0; at < count; at++)
        {
            flow.Sheets.Rule(new(x + at * step, flow.Y), new(x + at * step + length, flow.Y), Ink.Black, 0.6);
        }

        flow.Sheets.End();
        flow.Y += BelowRule;
    }

    private void Begin(Flow flow, string tag)
    {
        if (isList)
        {
            flow.Sheets.Begin(tag);
        }
    }

    private void End(Flow flow)
    {
        if (isList)
        {
            flow.Sheets.End();
        }
    }
}

/// <summary>A row of things beside each other.</summary>
/// <param name="Cells">The things, for their width.</param>
/// <param name="Whole">The same for the whole width.</param>
internal sealed record BesideRow(IReadOnlyList<StackPart> Cells, IReadOnlyList<StackPart> Whole)
{
    public double Height { get; } = Cells.Max(cell => cell.Height);
}
