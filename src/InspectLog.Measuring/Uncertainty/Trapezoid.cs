namespace InspectLog.Measuring;

/// <summary>A symmetrical trapezoid about 0: what two independent boxes add up to. A box by itself is one with no
/// slopes.</summary>
/// <param name="HalfBase">Half the width of its base, above 0.</param>
/// <param name="HalfTop">Half the width of its top, from 0 (a triangle) to <paramref name="HalfBase"/> (a box).</param>
public readonly record struct Trapezoid(double HalfBase, double HalfTop)
{
    /// <summary>The sum of two boxes, given their half-widths, 0 or more and not both 0.</summary>
    public static Trapezoid OfBoxes(double halfWidth, double otherHalfWidth) =>
        new(halfWidth + otherHalfWidth, Math.Abs(halfWidth - otherHalfWidth));

    /// <summary>Its standard deviation.</summary>
    public double StandardDeviation => Math.Sqrt(((HalfBase * HalfBase) + (HalfTop * HalfTop)) / 6);

    /// <summary>Probability, 0 to 1, of a value above <paramref name="x"/>.</summary>
    public double Above(double x) => x < 0 ? 1 - Tail(-x) : Tail(x);

    /// <summary>Probability, 0 to 1, of a value between two places.</summary>
    public double Between(double from, double to) =>
        Math.Max(0, from > 0 ? Above(from) - Above(to) : Above(-to) - Above(-from));

    /// <summary>Its density at a place; at the very edge of a box that within.</summary>
    public double Density(double x) => Math.Abs(x) switch
    {
        var at when at <= HalfTop => 1 / (HalfBase + HalfTop),
        var at when at < HalfBase => (HalfBase - at) / ((HalfBase + HalfTop) * (HalfBase - HalfTop)),
        _ => 0,
    };

    /// <summary>Half the width of the middle part that holds a given share (EA-4/02 S10 for the sloping part).</summary>
    /// <param name="coverage">The share, from 0 to 1.</param>
    public double HalfWidthOf(double coverage)
    {
        var flat = coverage * (HalfBase + HalfTop) / 2;
        return flat <= HalfTop
            ? flat
            : HalfBase - Math.Sqrt((1 - coverage) * (HalfBase + HalfTop) * (HalfBase - HalfTop));
    }

    private double Tail(double x) =>
        x >= HalfBase ? 0
            : x >= HalfTop ? (HalfBase - x) * (HalfBase - x) / (2 * (HalfBase + HalfTop) * (HalfBase - HalfTop))
            : 0.5 - (x / (HalfBase + HalfTop));
}
