namespace InspectLog.App.Ui.Drawings;

/// <summary>Draws reading strips: the allowed span as a bar on a scale, the nominal as a notch, the reading as a drop
/// line with its uncertainty around it, and hatched what lies outside the limits.</summary>
public static class ReadingStrip
{
    /// <summary>Width drawn for the smallest screens and for enlarged text, pixels.</summary>
    public const double Small = 240;

    /// <summary>Width drawn for a phone, pixels.</summary>
    public const double Narrow = 310;

    /// <summary>Width drawn for a laptop and for paper, pixels.</summary>
    public const double Wide = 500;

    private const double Edge = 6;

    /// <summary>Draws a strip.</summary>
    /// <param name="facts">What it shows.</param>
    /// <param name="width">Width in pixels.</param>
    /// <param name="format">Writes a value of the display unit with its unit.</param>
    public static StripDrawing Draw(StripFacts facts, double width, Func<double, string> format)
    {
        var axis = StripScale.For(facts, Edge, width - Edge);
        var spread = StripSpread.Shapes(facts, axis);
        return new StripDrawing(
            width,
            axis,
            SpanOf(facts, axis),
            facts.Nominal is { } nominal && axis.Holds(nominal) ? axis.At(nominal) : null,
            facts.Previous is { } previous && axis.Holds(previous) ? axis.At(previous) : null,
            facts.Reading is { } reading ? DropOf(reading.Value, axis) : null,
            spread,
            [.. spread.Where(shape => shape.Outside).SelectMany(StripHatch.Lines)],
            StripLabels.Place(facts, axis, width, format));
    }

    private static StripSpan? SpanOf(StripFacts facts, Scale axis)
    {
        if (facts is { Lower: null, Upper: null })
        {
            return null;
        }

        IEnumerable<double?> limits = [facts.Lower, facts.Upper];
        return new StripSpan(
            facts.Lower is { } lower ? axis.At(lower) : axis.Left,
            facts.Upper is { } upper ? axis.At(upper) : axis.Right,
            [.. limits.OfType<double>().Select(axis.At)],
            facts.Lower is null,
            facts.Upper is null);
    }

    private static StripDrop DropOf(double value, Scale axis) =>
        new(axis.At(value), value < axis.From ? -1 : value > axis.To ? 1 : 0);
}
