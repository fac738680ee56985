using InspectLog.Paper.Blocks;

namespace InspectLog.Paper.Layout;

/// <summary>What is drawn on. Measures are points from the top left corner of a page.</summary>
internal interface ISheets
{
    /// <summary>Begins a page.</summary>
    void BeginPage();

    /// <summary>Begins something that is told to those who listen, by its standard structure type (ISO 32000-1, 14.8.4).</summary>
    /// <param name="tag">The type.</param>
    void Begin(string tag);

    /// <summary>Begins a cell that names a row or a column.</summary>
    void BeginHeader(bool ofColumn);

    /// <summary>Begins a figure.</summary>
    void BeginFigure(string alt, Area area);

    /// <summary>Begins what those who listen need not know of.</summary>
    void BeginUntold();

    /// <summary>Ends what was begun last.</summary>
    void End();

    /// <summary>A bookmark at this height of the page.</summary>
    void Bookmark(int level, string words, double y);

    /// <summary>A part of a line.</summary>
    void Words(string words, RunLook look, double x, double baseline);

    /// <summary>A straight line.</summary>
    void Rule(Spot from, Spot to, Ink ink, double breadth);

    /// <summary>A drawing.</summary>
    void Draw(VectorDrawing drawing, Area area);

    /// <summary>A picture.</summary>
    void Picture(byte[] jpeg, Area area);
}

/// <summary>A rectangle, points.</summary>
/// <param name="X">Its left side.</param>
/// <param name="Y">Its upper side.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
internal readonly record struct Area(double X, double Y, double Width, double Height);

/// <summary>Takes everything and shows nothing: how many pages there are has to be known before the first is written.</summary>
internal sealed class NoSheets : ISheets
{
    public void BeginPage()
    {
    }

    public void Begin(string tag)
    {
    }

    public void BeginHeader(bool ofColumn)
    {
    }

    public void BeginFigure(string alt, Area area)
    {
    }

    public void BeginUntold()
    {
    }

    public void End()
    {
    }

    public void Bookmark(int level, string words, double y)
    {
    }

    public void Words(string words, RunLook look, double x, double baseline)
    {
    }

    public void Rule(Spot from, Spot to, Ink ink, double breadth)
    {
    }

    public void Draw(VectorDrawing drawing, Area area)
    {
    }

    public void Picture(byte[] jpeg, Area area)
    {
    }
}
