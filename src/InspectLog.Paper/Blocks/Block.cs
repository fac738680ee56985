namespace InspectLog.Paper.Blocks;

/// <summary>Something that stands below something else.</summary>
public abstract record Block
{
    /// <summary>Least space above it, points; the larger of two neighbours' counts, and none at the top of a page.</summary>
    public double Above { get; init; } = 4;

    /// <summary>A heading. It stays with what follows, and stands among the bookmarks.</summary>
    /// <param name="Level">1 to 6.</param>
    /// <param name="Words">Its words.</param>
    public sealed record Heading(int Level, IReadOnlyList<Inline> Words) : Block;

    /// <summary>A paragraph.</summary>
    /// <param name="Words">Its words.</param>
    public sealed record Paragraph(IReadOnlyList<Inline> Words) : Block
    {
        /// <summary>Size of its letters, points.</summary>
        public double Size { get; init; } = 9.5;

        /// <summary>Its colour.</summary>
        public Ink Ink { get; init; } = Ink.Black;

        /// <summary>Whether it is bold.</summary>
        public bool IsBold { get; init; }

        /// <summary>Whether it stays on the page of what follows, as a heading does.</summary>
        public bool KeepsNext { get; init; }

        /// <summary>Whether its lines end at the right.</summary>
        public bool IsAtTheRight { get; init; }
    }

    /// <summary>A list.</summary>
    /// <param name="Items">What stands in it.</param>
    /// <param name="HasDots">Whether a dot stands before each.</param>
    public sealed record Bullets(IReadOnlyList<IReadOnlyList<Block>> Items, bool HasDots) : Block;

    /// <summary>A table. Its head is said again on each page.</summary>
    /// <param name="Widths">Width of each column, as parts of their sum.</param>
    /// <param name="Rows">Its rows, each with a cell for every column.</param>
    public sealed record Table(IReadOnlyList<double> Widths, IReadOnlyList<Row> Rows) : Block
    {
        /// <summary>Whether a line stands below each row.</summary>
        public bool HasLines { get; init; }
    }

    /// <summary>Blocks beside each other, in rows of so many.</summary>
    /// <param name="Count">How many stand beside each other.</param>
    /// <param name="Cells">The blocks of each.</param>
    public sealed record Beside(int Count, IReadOnlyList<IReadOnlyList<Block>> Cells) : Block
    {
        /// <summary>Whether it is a list for those who listen.</summary>
        public bool IsList { get; init; }

        /// <summary>Whether there is a line above each, to be signed on.</summary>
        public bool IsRuled { get; init; }
    }

    /// <summary>A photo.</summary>
    /// <param name="Alt">What it shows, in words; empty where it needs none.</param>
    /// <param name="Jpeg">The file, upright; null where it cannot be shown, and its words stand in its place.</param>
    /// <param name="Tallest">Its greatest height, points.</param>
    public sealed record Picture(string Alt, byte[]? Jpeg, double Tallest) : Block
    {
        /// <summary>What is drawn over it, from edge to edge; null for nothing.</summary>
        public VectorDrawing? Over { get; init; }
    }

    /// <summary>A drawing of lines and areas.</summary>
    /// <param name="Drawing">The drawing.</param>
    /// <param name="Alt">What it shows, in words; null where the text beside it says the same.</param>
    /// <param name="Width">Its width, points; the width there is where that is less.</param>
    /// <param name="Height">Its height, points, where it is not to keep its shape; null where it is.</param>
    public sealed record Drawn(VectorDrawing Drawing, string? Alt, double Width, double? Height = null) : Block;

    /// <summary>Blocks that belong together.</summary>
    /// <param name="Tag">What they are, for those who listen.</param>
    /// <param name="Blocks">The blocks.</param>
    public sealed record Group(GroupTag Tag, IReadOnlyList<Block> Blocks) : Block
    {
        /// <summary>Whether they stand on one page, as far as they have room on one.</summary>
        public bool IsKeptTogether { get; init; }

        /// <summary>Colour of a bar at their left; null for none.</summary>
        public Ink? Bar { get; init; }
    }
}

/// <summary>What blocks are together.</summary>
public enum GroupTag
{
    /// <summary>Nothing that is told.</summary>
    None,

    /// <summary>A section, with a heading.</summary>
    Section,

    /// <summary>An article within one.</summary>
    Article,
}

/// <summary>A row of a table.</summary>
/// <param name="IsHead">Whether it names the columns.</param>
/// <param name="Cells">Its cells.</param>
public sealed record Row(bool IsHead, IReadOnlyList<Cell> Cells);

/// <summary>A cell of a table.</summary>
/// <param name="Blocks">What stands in it.</param>
/// <param name="IsHeader">Whether it names its row or its column.</param>
public sealed record Cell(IReadOnlyList<Block> Blocks, bool IsHeader);
