using InspectLog.Paper.Blocks;

namespace InspectLog.Paper.Layout;

/// <summary>Parts that belong together, with a bar at their left or a name for those who listen.</summary>
/// <param name="stack">The parts.</param>
/// <param name="tag">What they are; null for nothing that is told.</param>
/// <param name="bar">Colour of a bar; null for none.</param>
internal sealed class GroupPart(StackPart stack, string? tag, Ink? bar) : Part
{
    /// <summary>How far what stands beside a bar is moved in, points.</summary>
    public const double Indent = 9;

    public override double Above => Math.Max(base.Above, stack.Above);

    public override double Height => stack.Height;

    public override double First => stack.First;

    public override void Put(Flow flow, double x)
    {
        if (tag is not null)
        {
            flow.Sheets.Begin(tag);
        }

        if (bar is { } ink)
        {
            flow.Room(stack.First);
            flow.WithBar(x + 1, ink, () => stack.Put(flow, x + Indent));
        }
        else
        {
            stack.Put(flow, x);
        }

        if (tag is not null)
        {
            flow.Sheets.End();
        }
    }
}

/// <summary>A list.</summary>
/// <param name="items">What stands in it.</param>
/// <param name="dot">What stands before each; null for nothing.</param>
internal sealed class ListPart(IReadOnlyList<StackPart> items, TextLine? dot) : Part
{
    /// <summary>How far what stands beside a dot is moved in, points.</summary>
    public const double Indent = 11;

    public override double Height { get; } = items.Sum(item => item.Height) + items.Skip(1).Sum(item => item.Above);

    public override double First => items.Count > 0 ? items[0].First : 0;

    public override void Put(Flow flow, double x)
    {
        flow.Sheets.Begin("L");
        for (var one = 0; one < items.Count; one++)
        {
            var gap = one == 0 ? 0 : items[one].Above;
            flow.Room(gap + items[one].First);
            flow.Skip(gap);
            flow.Sheets.Begin("LI");
            PutDot(flow, x);
            flow.Sheets.Begin("LBody");
            items[one].Put(flow, dot is null ? x : x + Indent);
            flow.Sheets.End();
            flow.Sheets.End();
        }

        flow.Sheets.End();
    }

    private void PutDot(Flow flow, double x)
    {
        if (dot is { Runs: [var run] })
        {
            flow.Sheets.Begin("Lbl");
            flow.Sheets.Words(run.Words, run.Look, x + 1, flow.Y + run.Look.Size);
            flow.Sheets.End();
        }
    }
}
