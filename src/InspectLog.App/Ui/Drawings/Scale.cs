namespace InspectLog.App.Ui.Drawings;

/// <summary>A horizontal scale: values in the display unit to positions in pixels.</summary>
/// <param name="From">Value at the left end.</param>
/// <param name="To">Value at the right end, above <paramref name="From"/>.</param>
/// <param name="Left">Position of the left end, pixels.</param>
/// <param name="Right">Position of the right end, pixels.</param>
public readonly record struct Scale(double From, double To, double Left, double Right)
{
    /// <summary>Position of a value; values beyond the ends are put at the ends.</summary>
    public double At(double value) => Math.Clamp(Unclamped(value), Left, Right);

    /// <summary>Whether a value lies on the scale.</summary>
    public bool Holds(double value) => value >= From && value <= To;

    private double Unclamped(double value) => Left + ((value - From) / (To - From) * (Right - Left));
}
