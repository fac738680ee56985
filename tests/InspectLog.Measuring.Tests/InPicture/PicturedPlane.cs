namespace InspectLog.Measuring.Tests;

/// <summary>A plane before a pinhole camera: where its points, in mm, come to lie in the picture, in pixels.</summary>
/// <param name="Distance">From the camera to the plane along its axis, mm.</param>
/// <param name="Tilt">How far the plane is tilted out of square, radians.</param>
/// <param name="Turn">How far the plane is turned in itself, radians.</param>
internal sealed record PicturedPlane(double Distance, double Tilt = 0, double Turn = 0)
{
    // A phone's view on a display copy 2048 pixels wide: about 59 degrees across.
    private const double Focal = 1800;

    public PicturePoint Seen(PicturePoint onPlane)
    {
        var (sin, cos) = Math.SinCos(Turn);
        var (x, y) = ((cos * onPlane.X) - (sin * onPlane.Y), (sin * onPlane.X) + (cos * onPlane.Y));
        var depth = Distance + (Math.Sin(Tilt) * y);
        return new(1024 + (Focal * x / depth), 768 + (Focal * Math.Cos(Tilt) * y / depth));
    }
}

/// <summary>Draws with a fixed seed.</summary>
internal sealed class Draws(int seed)
{
    private readonly Random _random = new(seed);

    public double Between(double from, double to) => from + ((to - from) * _random.NextDouble());

    // Box and Muller's way.
    public double Normal(double deviation) =>
        deviation * Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());

    /// <summary>A place as a person picks it: off by a normal error, and on a whole pixel.</summary>
    public PicturePoint Picked(PicturePoint seen, double pick) =>
        new(Math.Round(seen.X + Normal(pick)), Math.Round(seen.Y + Normal(pick)));

    public PicturePoint Place(double reach) => new(Between(-reach, reach), Between(-reach, reach));

    public PicturePoint From(PicturePoint start, double length)
    {
        var (sin, cos) = Math.SinCos(Between(0, 2 * Math.PI));
        return new(start.X + (length * cos), start.Y + (length * sin));
    }
}
