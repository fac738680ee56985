namespace InspectLog.App.Ui.Drawings;

/// <summary>A horizontal scale: values in the display unit to positions in pixels.</summary>
/// <param name="From">Value at the left end.</param>
/// <param name="To">Value at the right end, above <paramref name="From"/>.</param>
/// <param name="Left">Position of the left end, pixels.</param>
/// <param name="Right">Position of the right end, pixels.</param>
public readonly record struct Scale(double From, double To, double Left, double Right)
{
    /// <summary>No end of a scale lies further out, so that nothing computed from the ends overflows. A journal can
    /// hold any number, and a page has to show it.</summary>
    private const double Farthest = 1e300;

    /// <summary>A value brought to where an end of a scale can lie; 0 for what is no number.</summary>
    public static double Bounded(double value) =>
        double.IsNaN(value) ? 0 : Math.Clamp(value, -Farthest, Farthest);

    /// <summary>Position of a value; values beyond the ends are put at the ends, and what is no number at the
    /// left.</summary>
    public double At(double value) => Unclamped(value) is var at && double.IsNaN(at) ? Left : Math.Clamp(at, Left, Right);

    /// <summary>Whether a value lies on the scale.</summary>
    public bool Holds(double value) => value >= From && value <= To;

    private double Unclamped(double value) => Left + ((value - From) / (To - From) * (Right - Left));
}
