namespace InspectLog.Paper.Blocks;

/// <summary>A part of a line of text.</summary>
public abstract record Inline
{
    /// <summary>Text in one look. Line breaks in it break the line.</summary>
    /// <param name="Words">The text.</param>
    /// <param name="IsBold">Whether it is bold.</param>
    /// <param name="Ink">Its colour; null for that of the paragraph.</param>
    /// <param name="Scale">Its size, as a part of the paragraph's.</param>
    public sealed record Text(string Words, bool IsBold = false, Ink? Ink = null, double Scale = 1) : Inline;

    /// <summary>A small drawing as high as a capital letter, which those who listen need not know of.</summary>
    /// <param name="Drawing">The drawing.</param>
    public sealed record Mark(VectorDrawing Drawing) : Inline;
}
