using InspectLog.Paper.Blocks;
using InspectLog.Paper.Layout;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace InspectLog.Paper.Drawing;

/// <summary>Pages of a PDF file with its structure tree (ISO 32000-1, 14.7).</summary>
internal sealed class PdfSheets : ISheets, IDisposable
{
    private readonly PdfDocument _document;
    private readonly StructureBuilder _structure;
    private readonly Letters _letters;
    private readonly Dictionary<(double Size, bool IsBold), XFont> _fonts = [];
    private readonly Dictionary<Ink, XSolidBrush> _brushes = [];
    private readonly List<XImage> _images = [];
    private readonly List<PdfOutline> _bookmarks = [];
    private PdfPage? _page;
    private XGraphics? _graphics;

    /// <summary>How many things deep it is in what is not told; what is begun there is not told either.</summary>
    private int _untold;

    public PdfSheets(PdfDocument document, Letters letters)
    {
        (_document, _letters) = (document, letters);
        _structure = UAManager.ForDocument(document).StructureBuilder;
    }

    private XGraphics Graphics => _graphics ?? throw new InvalidOperationException("No page was begun.");

    public void BeginPage()
    {
        EndPage();
        _page = _document.AddPage();
        (_page.Width, _page.Height) = (XUnit.FromPoint(Flow.PageWidth), XUnit.FromPoint(Flow.PageHeight));
        _graphics = XGraphics.FromPdfPage(_page);
    }

    public void Begin(string tag)
    {
        if (_untold > 0)
        {
            _untold++;
        }
        else if (tag is "Sect" or "Art")
        {
            _structure.BeginGroupingElement(tag);
        }
        else
        {
            _structure.BeginBlockLevelElement(tag);
        }
    }

    public void BeginHeader(bool ofColumn)
    {
        Begin("TH");
        if (_untold == 0)
        {
            var scope = new PdfDictionary(_document);
            scope.Elements.SetName("/O", "/Table");
            scope.Elements.SetName("/Scope", ofColumn ? "/Column" : "/Row");
            _structure.CurrentStructureElement.Elements["/A"] = scope;
        }
    }

    public void BeginFigure(string alt, Area area) => _structure.BeginElement(
        PdfIllustrationElementTag.Figure, _letters.Shown(alt), new XRect(area.X, area.Y, area.Width, area.Height));

    public void BeginUntold()
    {
        if (_untold++ == 0)
        {
            _structure.BeginArtifact();
        }
    }

    public void End()
    {
        if (_untold == 0 || --_untold == 0)
        {
            _structure.End();
        }
    }

    public void Bookmark(int level, string words, double y)
    {
        while (_bookmarks.Count >= level)
        {
            _bookmarks.RemoveAt(_bookmarks.Count - 1);
        }

        var bookmark = new PdfOutline(words, _page!, opened: level < 2)
        {
            PageDestinationType = PdfPageDestinationType.Xyz,
            Top = Flow.PageHeight - y,
        };
        (_bookmarks is [.., var above] ? above.Outlines : _document.Outlines).Add(bookmark);
        _bookmarks.Add(bookmark);
    }

    public void Words(string words, RunLook look, double x, double baseline) =>
        Graphics.DrawString(words, FontOf(look.Size, look.IsBold), BrushOf(look.Ink), x, baseline);

    public void Rule(Spot from, Spot to, Ink ink, double breadth) =>
        Graphics.DrawLine(new XPen(ColourOf(ink), breadth), from.X, from.Y, to.X, to.Y);

    public void Draw(VectorDrawing drawing, Area area)
    {
        foreach (var shape in drawing.Shapes)
        {
            if (shape is Shape.Outline outline)
            {
                Outlines.Draw(Graphics, outline, drawing, area);
            }
            else if (shape is Shape.Label label)
            {
                Draw(label, area, area.Width / drawing.Width, area.Height / drawing.Height);
            }
        }
    }

    public void Picture(byte[] jpeg, Area area)
    {
        var image = XImage.FromStream(new MemoryStream(jpeg, 0, jpeg.Length, writable: false, publiclyVisible: true));
        _images.Add(image);
        Graphics.DrawImage(image, area.X, area.Y, area.Width, area.Height);
    }

    /// <summary>Ends the last page.</summary>
    public void EndPage()
    {
        if (_graphics is not null)
        {
            _structure.EndMarkedContentsWithId();
            _graphics.Dispose();
            _graphics = null;
        }
    }

    public void Dispose()
    {
        _graphics?.Dispose();
        _images.ForEach(image => image.Dispose());
    }

    internal static XColor ColourOf(Ink ink) => XColor.FromArgb(ink.Red, ink.Green, ink.Blue);

    private void Draw(Shape.Label label, Area area, double across, double down)
    {
        var words = _letters.Shown(label.Words);
        var size = label.Size * down;
        var width = _letters.WidthOf(words, isBold: false) * size;
        var x = area.X + label.X * across - (label.Anchor switch { TextAnchor.Middle => width / 2, TextAnchor.End => width, _ => 0 });
        Words(words, new(size, false, label.Ink), x, area.Y + label.Baseline * down);
    }

    private XFont FontOf(double size, bool isBold)
    {
        if (!_fonts.TryGetValue((size, isBold), out var font))
        {
            _fonts[(size, isBold)] = font = PaperFonts.Of(size, isBold);
        }

        return font;
    }

    private XSolidBrush BrushOf(Ink ink)
    {
        if (!_brushes.TryGetValue(ink, out var brush))
        {
            _brushes[ink] = brush = new XSolidBrush(ColourOf(ink));
        }

        return brush;
    }
}
