namespace InspectLog.App.Ui.Drawings;

/// <summary>A reading strip, ready to be written as SVG. Positions are in pixels; text is never scaled, so a strip is
/// drawn anew for each width.</summary>
/// <param name="Width">Width of the drawing.</param>
/// <param name="Axis">The scale it was drawn on.</param>
/// <param name="Span">The allowed span; null where there are no limits.</param>
/// <param name="Notch">Position of the nominal; null where there is none.</param>
/// <param name="Previous">Position of the earlier value; null where there is none.</param>
/// <param name="Drop">The reading; null before one is taken.</param>
/// <param name="Spread">Outlines of the bell or box, cut at the limits.</param>
/// <param name="Hatch">Lines that hatch the parts outside the limits.</param>
/// <param name="Labels">Numbers under the axis.</param>
public sealed record StripDrawing(
    double Width,
    Scale Axis,
    StripSpan? Span,
    double? Notch,
    double? Previous,
    StripDrop? Drop,
    IReadOnlyList<StripShape> Spread,
    IReadOnlyList<StripLine> Hatch,
    IReadOnlyList<StripLabel> Labels)
{
    /// <summary>Height of every strip.</summary>
    public const double Height = 104;

    /// <summary>Where the axis lies, from the top.</summary>
    public const double Baseline = 72;

    /// <summary>Height of a bell or box above the axis.</summary>
    public const double SpreadHeight = 58;
}

/// <summary>The allowed span on the axis.</summary>
/// <param name="From">Its left end.</param>
/// <param name="To">Its right end.</param>
/// <param name="Ticks">Where limits are marked: one or two positions.</param>
/// <param name="IsOpenToTheLeft">Whether it has no lower limit.</param>
/// <param name="IsOpenToTheRight">Whether it has no upper limit.</param>
public sealed record StripSpan(
    double From, double To, IReadOnlyList<double> Ticks, bool IsOpenToTheLeft, bool IsOpenToTheRight);

/// <summary>The drop line of a reading.</summary>
/// <param name="At">Its position.</param>
/// <param name="Beyond">-1 when the reading lies beyond the left end of the scale, 1 beyond the right end, else 0.</param>
public readonly record struct StripDrop(double At, int Beyond);

/// <summary>A closed part of the bell or box.</summary>
/// <param name="Outside">Whether it lies outside the limits.</param>
/// <param name="Points">Its outline, starting and ending on the axis.</param>
public sealed record StripShape(bool Outside, IReadOnlyList<StripPoint> Points);

/// <summary>A point, pixels from the top left.</summary>
public readonly record struct StripPoint(double X, double Y);

/// <summary>A straight line.</summary>
public readonly record struct StripLine(StripPoint From, StripPoint To);

/// <summary>A number under the axis.</summary>
/// <param name="At">Position of its anchor.</param>
/// <param name="Anchor">Which part of the text is there: start, middle or end.</param>
/// <param name="Text">The number with its unit.</param>
public sealed record StripLabel(double At, string Anchor, string Text);
