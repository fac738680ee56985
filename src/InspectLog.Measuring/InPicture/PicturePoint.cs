namespace InspectLog.Measuring;

/// <summary>A place in a picture, or on a plane that was pictured.</summary>
/// <param name="X">To the right; pixels in a picture, base unit on a plane.</param>
/// <param name="Y">Down; likewise.</param>
public readonly record struct PicturePoint(double X, double Y)
{
    /// <summary>How far it is to another, in the same unit.</summary>
    public double DistanceTo(PicturePoint other) => double.Hypot(other.X - X, other.Y - Y);
}
