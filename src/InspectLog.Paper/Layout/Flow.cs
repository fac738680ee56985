using InspectLog.Paper.Blocks;

namespace InspectLog.Paper.Layout;

/// <summary>Where on which page the next thing stands.</summary>
/// <param name="sheets">What is drawn on.</param>
/// <param name="furniture">Draws the head and foot of a page, by its number.</param>
internal sealed class Flow(ISheets sheets, Action<ISheets, int> furniture)
{
    /// <summary>A4, ISO 216, points.</summary>
    public const double PageWidth = 595.276, PageHeight = 841.89;

    /// <summary>The margins, points: 15 mm at the sides, 20 mm above and below.</summary>
    public const double Side = 42.5, Top = 56.7, Bottom = PageHeight - 56.7;

    /// <summary>The room between the margins, points.</summary>
    public const double Width = PageWidth - 2 * Side, Height = Bottom - Top;

    private readonly List<Bar> _bars = [];
    private bool _isFixed;

    /// <summary>What is drawn on.</summary>
    public ISheets Sheets => sheets;

    /// <summary>Number of the page.</summary>
    public int Page { get; private set; }

    /// <summary>Where the next thing stands, points from the top.</summary>
    public double Y { get; set; }

    private bool IsAtTop => Y <= Top + 0.01;

    /// <summary>Begins the next page.</summary>
    public void NextPage()
    {
        foreach (var bar in _bars)
        {
            Draw(bar);
        }

        Page++;
        sheets.BeginPage();
        furniture(sheets, Page);
        Y = Top;
        _bars.ForEach(bar => bar.From = Top);
    }

    /// <summary>Goes to the next page where so much has no room on this one.</summary>
    /// <returns>Whether it did.</returns>
    public bool Room(double height)
    {
        if (_isFixed || IsAtTop || Y + height <= Bottom + 0.01)
        {
            return false;
        }

        NextPage();
        return true;
    }

    /// <summary>Leaves space, but none at the top of a page.</summary>
    public void Skip(double height) => Y += IsAtTop && !_isFixed ? 0 : height;

    /// <summary>Puts things beside each other, each from this height, into room that is kept for them.</summary>
    public void Beside(double height, IEnumerable<Action> put)
    {
        var (from, before) = (Y, _isFixed);
        _isFixed = true;
        foreach (var one in put)
        {
            Y = from;
            one();
        }

        _isFixed = before;
        Y = from + height;
    }

    /// <summary>Puts something with a bar at its left, on each page it reaches.</summary>
    public void WithBar(double x, Ink ink, Action put)
    {
        var bar = new Bar(x, ink) { From = Y };
        _bars.Add(bar);
        put();
        _bars.Remove(bar);
        Draw(bar);
    }

    private void Draw(Bar bar)
    {
        if (Y > bar.From)
        {
            sheets.BeginUntold();
            sheets.Rule(new(bar.X, bar.From), new(bar.X, Y), bar.Ink, 2);
            sheets.End();
        }
    }

    private sealed class Bar(double x, Ink ink)
    {
        public double X => x;

        public Ink Ink => ink;

        public double From { get; set; }
    }
}
