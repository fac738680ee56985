using InspectLog.Paper.Blocks;

namespace InspectLog.Paper.Layout;

/// <summary>A picture.</summary>
internal sealed class PicturePart(Block.Picture picture, Spot size) : Part
{
    public override double Height => size.Y;

    public override void Put(Flow flow, double x)
    {
        var area = new Area(x, flow.Y, size.X, size.Y);
        if (picture.Alt.Length > 0)
        {
            flow.Sheets.BeginFigure(picture.Alt, area);
        }
        else
        {
            flow.Sheets.BeginUntold();
        }

        flow.Sheets.Picture(picture.Jpeg!, area);
        if (picture.Over is { } over)
        {
            flow.Sheets.Draw(over, area);
        }

        flow.Sheets.End();
        flow.Y += size.Y;
    }
}

/// <summary>A drawing.</summary>
internal sealed class DrawnPart(Block.Drawn drawn, double width) : Part
{
    private readonly double _width = Math.Min(drawn.Width, width);

    public override double Height => drawn.Height ?? _width * drawn.Drawing.Height / drawn.Drawing.Width;

    public override void Put(Flow flow, double x)
    {
        var area = new Area(x, flow.Y, _width, Height);
        if (drawn.Alt is { } alt)
        {
            flow.Sheets.BeginFigure(alt, area);
        }
        else
        {
            flow.Sheets.BeginUntold();
        }

        flow.Sheets.Draw(drawn.Drawing, area);
        flow.Sheets.End();
        flow.Y += Height;
    }
}
