namespace InspectLog.App.Ui.Drawings;

/// <summary>What a trend's drawing shows, in the display unit.</summary>
/// <param name="Points">The readings.</param>
/// <param name="Lower">Lower limit; null for none.</param>
/// <param name="Upper">Upper limit; null for none.</param>
/// <param name="Line">The line and the half-width of its prediction band at an x; null where there is none.</param>
/// <param name="Meets">Where the edge of the band meets a limit, and which; null where it is not to be shown.</param>
public sealed record TrendPicture(
    IReadOnlyList<TrendMark> Points,
    double? Lower,
    double? Upper,
    Func<double, (double Middle, double HalfWidth)>? Line,
    (double X, double Limit)? Meets);

/// <summary>A reading in the drawing.</summary>
/// <param name="X">Where.</param>
/// <param name="Value">What was read.</param>
/// <param name="Spread">Its expanded uncertainty.</param>
/// <param name="Hollow">Whether it is of a part that is no longer there.</param>
public readonly record struct TrendMark(double X, double Value, double Spread, bool Hollow);

/// <summary>A trend, ready to be written as SVG. Positions are in pixels; text is never scaled, so it is drawn anew for
/// each width.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Frame">The field the readings are drawn in.</param>
/// <param name="Allowed">The allowed span, from top to bottom; null without limits.</param>
/// <param name="Limits">Heights of the limits.</param>
/// <param name="Band">Outline of the prediction band, cut to the field; empty without one.</param>
/// <param name="Line">The line, cut to the field; empty without one.</param>
/// <param name="Bars">Readings with their uncertainty.</param>
/// <param name="Meets">Where the edge of the band meets a limit; null where it does not in the field.</param>
/// <param name="Below">Labels under the field.</param>
/// <param name="Beside">Labels to the left of the field.</param>
public sealed record TrendDrawing(
    double Width,
    double Height,
    TrendFrame Frame,
    (double Top, double Bottom)? Allowed,
    IReadOnlyList<double> Limits,
    IReadOnlyList<StripPoint> Band,
    IReadOnlyList<StripPoint> Line,
    IReadOnlyList<TrendBar> Bars,
    StripPoint? Meets,
    IReadOnlyList<StripLabel> Below,
    IReadOnlyList<StripLabel> Beside);

/// <summary>The field of a trend, pixels from the top left.</summary>
public readonly record struct TrendFrame(double Left, double Top, double Right, double Bottom);

/// <summary>A reading: its point and the ends of its uncertainty.</summary>
public readonly record struct TrendBar(double X, double Y, double Top, double Bottom, bool Hollow);
