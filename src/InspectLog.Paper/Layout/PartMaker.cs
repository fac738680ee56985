using InspectLog.Paper.Blocks;
using InspectLog.Paper.Drawing;

namespace InspectLog.Paper.Layout;

/// <summary>Makes parts of blocks: breaks their lines and measures them.</summary>
/// <param name="letters">Widths of letters.</param>
/// <param name="noPicture">What is said in place of a picture that cannot be shown.</param>
internal sealed class PartMaker(Letters letters, string noPicture)
{
    private const double BetweenColumns = 14, BetweenCells = 8, DotSize = 9.5;

    private static readonly Ink Soft = Ink.Of(0x3A4146);

    /// <summary>Blocks one below the other.</summary>
    public StackPart Stack(IReadOnlyList<Block> blocks, double width, bool isKeptTogether = false) =>
        new([.. blocks.Select(block => Of(block, width))]) { IsKeptTogether = isKeptTogether };

    private Part Of(Block block, double width) => block switch
    {
        Block.Heading heading => Heading(heading, width),
        Block.Paragraph paragraph => Paragraph(paragraph, width),
        Block.Bullets bullets => Bullets(bullets, width),
        Block.Table table => Table(table, width),
        Block.Beside beside => Beside(beside, width),
        Block.Picture picture => Picture(picture, width),
        Block.Drawn drawn => new DrawnPart(drawn, width) { Above = drawn.Above },
        Block.Group group => Group(group, width),
        _ => throw new ArgumentException($"No block that is known here: {block.GetType().Name}", nameof(block)),
    };

    private TextPart Heading(Block.Heading heading, double width)
    {
        var size = heading.Level switch { 1 => 20, 2 => 13, 3 => 11, _ => 10.0 };
        return new(Lines(heading.Words, width, new(size, IsBold: true, Ink.Black)), size, $"H{heading.Level}")
        {
            Above = heading.Above,
            Level = heading.Level,
            Plain = letters.Shown(string.Concat(heading.Words.OfType<Inline.Text>().Select(one => one.Words))),
        };
    }

    private TextPart Paragraph(Block.Paragraph text, double width) =>
        new(Lines(text.Words, width, new(text.Size, text.IsBold, text.Ink)), text.Size, "P")
        {
            Above = text.Above,
            RightOf = text.IsAtTheRight ? width : null,
            IsKeptWithNext = text.KeepsNext,
        };

    private ListPart Bullets(Block.Bullets bullets, double width)
    {
        var dot = bullets.HasDots ? Lines([new Inline.Text("•")], width, new(DotSize, false, Soft))[0] : null;
        return new(
            [.. bullets.Items.Select(item => Stack(item, dot is null ? width : width - ListPart.Indent))], dot) { Above = bullets.Above };
    }

    private TablePart Table(Block.Table table, double width)
    {
        var sum = table.Widths.Sum();
        var starts = table.Widths.Select((_, at) => table.Widths.Take(at).Sum() / sum * width).ToList();
        TableCell CellOf(Cell cell, int at) => new(
            cell.IsHeader, Stack(cell.Blocks, table.Widths[at] / sum * width - (at + 1 < starts.Count ? BetweenCells : 0)), Stack(cell.Blocks, width));
        return new([.. table.Rows.Select(row => new TableRow(row.IsHead, [.. row.Cells.Take(starts.Count).Select(CellOf)]))], starts, width, table.HasLines)
        {
            Above = table.Above,
        };
    }

    private BesidePart Beside(Block.Beside beside, double width)
    {
        var own = (width - (beside.Count - 1) * BetweenColumns) / beside.Count;
        return new(
            [.. beside.Cells.Chunk(beside.Count).Select(row => new BesideRow([.. row.Select(cell => Stack(cell, own))], [.. row.Select(cell => Stack(cell, width))]))],
            own + BetweenColumns,
            beside.IsList,
            beside.IsRuled ? own : null)
        {
            Above = beside.Above,
        };
    }

    private Part Picture(Block.Picture picture, double width)
    {
        if (picture.Jpeg is null || JpegSize.Of(picture.Jpeg) is not { } pixels)
        {
            return Paragraph(new([new Inline.Text(noPicture)]) { Above = picture.Above, Ink = Soft }, width);
        }

        var scale = Math.Min(width / pixels.X, Math.Min(picture.Tallest, Flow.Height) / pixels.Y);
        return new PicturePart(picture, new(pixels.X * scale, pixels.Y * scale)) { Above = picture.Above };
    }

    private GroupPart Group(Block.Group group, double width) => new(
        Stack(group.Blocks, group.Bar is null ? width : width - GroupPart.Indent, group.IsKeptTogether),
        group.Tag switch { GroupTag.Section => "Sect", GroupTag.Article => "Art", _ => null },
        group.Bar)
    {
        Above = group.Above,
    };

    private IReadOnlyList<TextLine> Lines(IReadOnlyList<Inline> words, double width, RunLook look) =>
        new LineBreaker(letters, width).Lines(words, look);
}
