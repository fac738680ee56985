using InspectLog.Paper.Blocks;
using InspectLog.Paper.Layout;
using PdfSharp.Drawing;

namespace InspectLog.Paper.Drawing;

/// <summary>Draws lines and areas.</summary>
internal static class Outlines
{
    /// <summary>Draws an outline of a drawing into an area.</summary>
    public static void Draw(XGraphics graphics, Shape.Outline outline, VectorDrawing drawing, Area area)
    {
        var (across, down) = (area.Width / drawing.Width, area.Height / drawing.Height);
        var path = PathOf(outline.Steps, spot => new(area.X + spot.X * across, area.Y + spot.Y * down));
        var pen = outline.Stroke is { } stroke
            ? new XPen(PdfSheets.ColourOf(stroke), outline.Breadth * Math.Min(across, down)) { LineJoin = XLineJoin.Round }
            : null;
        var brush = outline.Fill is { } fill ? new XSolidBrush(PdfSheets.ColourOf(fill)) : null;
        if (pen is not null && brush is not null)
        {
            graphics.DrawPath(pen, brush, path);
        }
        else if (brush is not null)
        {
            graphics.DrawPath(brush, path);
        }
        else if (pen is not null)
        {
            graphics.DrawPath(pen, path);
        }
    }

    private static XGraphicsPath PathOf(IReadOnlyList<Step> steps, Func<Spot, XPoint> place)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Winding };
        Spot pen = default, down = default;
        foreach (var step in steps)
        {
            switch (step)
            {
                case Step.Move(var to):
                    path.StartFigure();
                    pen = down = to;
                    break;
                case Step.Line(var to):
                    path.AddLine(place(pen), place(to));
                    pen = to;
                    break;
                case Step.Curve(var first, var second, var to):
                    path.AddBezier(place(pen), place(first), place(second), place(to));
                    pen = to;
                    break;
                case Step.Close:
                    path.CloseFigure();
                    pen = down;
                    break;
            }
        }

        return path;
    }
}
