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
        XPoint Place(Spot spot) => new(area.X + spot.X * across, area.Y + spot.Y * down);
        var pen = outline.Stroke is { } stroke
            ? new XPen(PdfSheets.ColourOf(stroke), outline.Breadth * Math.Min(across, down)) { LineJoin = XLineJoin.Round }
            : null;
        var brush = outline.Fill is { } fill ? new XSolidBrush(PdfSheets.ColourOf(fill)) : null;
        if (pen is not null && brush is not null)
        {
            graphics.DrawPath(pen, brush, PathOf(outline.Steps, Place));
        }
        else if (brush is not null)
        {
            graphics.DrawPath(brush, PathOf(outline.Steps, Place));
        }
        else if (pen is not null)
        {
            // The library draws a line from where one open line ends to where the next begins.
            foreach (var line in Lines(outline.Steps))
            {
                graphics.DrawPath(pen, PathOf(line, Place));
            }
        }
    }

    private static IEnumerable<IReadOnlyList<Step>> Lines(IReadOnlyList<Step> steps)
    {
        var line = new List<Step>();
        foreach (var step in steps)
        {
            if (step is Step.Move && line.Count > 0)
            {
                yield return line;
                line = [];
            }

            line.Add(step);
        }

        if (line.Count > 0)
        {
            yield return line;
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
