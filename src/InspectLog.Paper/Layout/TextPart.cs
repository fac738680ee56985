namespace InspectLog.Paper.Layout;

/// <summary>A paragraph or a heading.</summary>
/// <param name="lines">Its lines.</param>
/// <param name="size">Size of its letters, points.</param>
/// <param name="tag">What it is, for those who listen.</param>
internal sealed class TextPart(IReadOnlyList<TextLine> lines, double size, string tag) : Part
{
    /// <summary>Lines that stand together where a paragraph is parted, at the end of a page and at the beginning of the next.
    /// </summary>
    private const int Together = 2;

    private const double Leading = 1.32;

    /// <summary>From the top of a line to where its letters stand, in parts of their size.</summary>
    private const double Rise = 1.0;

    private readonly double _line = size * Leading;

    public override double Height => lines.Count * _line;

    public override double First => (lines.Count <= Together + 1 ? lines.Count : Together) * _line;

    public override bool KeepsNext => Level is not null || IsKeptWithNext;

    /// <summary>Whether a paragraph stays on the page of what follows.</summary>
    public bool IsKeptWithNext { get; init; }

    /// <summary>Level of a heading; null for a paragraph.</summary>
    public int? Level { get; init; }

    /// <summary>Where lines that stand at the right end; null where they stand at the left.</summary>
    public double? RightOf { get; init; }

    /// <summary>Its words, for a bookmark.</summary>
    public string Plain { get; init; } = "";

    public override void Put(Flow flow, double x)
    {
        if (Level is { } level)
        {
            flow.Sheets.Bookmark(level, Plain, flow.Y);
        }

        flow.Sheets.Begin(tag);
        for (var at = 0; at < lines.Count; at++)
        {
            flow.Room(at == lines.Count - Together ? Together * _line : _line);
            Put(flow, x + (RightOf is { } right ? right - lines[at].Width : 0), lines[at]);
            flow.Y += _line;
        }

        flow.Sheets.End();
    }

    private void Put(Flow flow, double x, TextLine line)
    {
        var baseline = flow.Y + Rise * size;
        foreach (var run in line.Runs)
        {
            if (run.Mark is { } mark)
            {
                var side = run.Look.Size * 0.85;
                flow.Sheets.BeginUntold();
                flow.Sheets.Draw(mark, new(x + run.X, baseline - side * 0.9, side, side));
                flow.Sheets.End();
            }
            else if (run.Words.Length > 0)
            {
                flow.Sheets.Words(run.Words, run.Look, x + run.X, baseline);
            }
        }
    }
}
