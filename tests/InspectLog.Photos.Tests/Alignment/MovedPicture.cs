using InspectLog.Photos.Alignment;
using InspectLog.Photos.Judging;
using InspectLog.Photos.Likeness;

namespace InspectLog.Photos.Tests.Alignment;

/// <summary>A picture out of the middle of a larger one, as from a stand that moved a little, exposed otherwise.</summary>
/// <param name="Turn">Degrees.</param>
/// <param name="Scale">Factor.</param>
/// <param name="ShiftX">Parts of the width.</param>
/// <param name="ShiftY">Parts of the width.</param>
internal sealed record MovedPicture(double Turn, double Scale, double ShiftX, double ShiftY)
{
    public const int Width = 512;
    public const int Height = 384;

    /// <summary>So much of the larger picture's width is seen.</summary>
    private const double Seen = 0.62;

    /// <summary>Nothing moved.</summary>
    public static MovedPicture Still { get; } = new(0, 1, 0, 0);

    /// <summary>A move by a seed: shifted up to 15 %, turned up to 10°, scaled up to 15 %.</summary>
    public static MovedPicture Any(Random random)
    {
        var (way, length) = (random.NextDouble() * Math.Tau, 0.15 * random.NextDouble());
        return new((20 * random.NextDouble()) - 10, 0.85 + (0.3 * random.NextDouble()), length * Math.Cos(way), length * Math.Sin(way) * Height / Width);
    }

    /// <summary>What is seen.</summary>
    /// <param name="larger">The larger picture.</param>
    /// <param name="gain">Factor on brightness.</param>
    /// <param name="gamma">Exponent on brightness.</param>
    /// <param name="random">The grain.</param>
    public GreyPicture Of(LumaPlane larger, double gain, double gamma, Random random)
    {
        var values = new byte[Width * Height];
        var step = larger.Width * Seen / Width;
        var (sine, cosine) = Math.SinCos(-Turn * Math.PI / 180);
        for (var row = 0; row < Height; row++)
            for (var column = 0; column < Width; column++)
            {
                var (x, y) = (column - ((Width - 1) / 2.0) - (ShiftX * Width), row - ((Height - 1) / 2.0) - (ShiftY * Width));
                var (atX, atY) = (((x * cosine) - (y * sine)) / Scale * step, ((x * sine) + (y * cosine)) / Scale * step);
                var level = 255 * Math.Pow(Mean(larger, atX, atY, step / Scale) / 255, gamma) * gain;
                values[(row * Width) + column] = (byte)Math.Clamp(level + (6 * random.NextDouble()) - 3, 0, 255);
            }

        return new(Width, Height, values);
    }

    /// <summary>How far a transform puts the corners and the middle from where they belong, pixels, at most.</summary>
    public double Miss(ViewTransform found) => new[] { (-1, -1), (1, -1), (0, 0), (-1, 1), (1, 1) }.Max(corner =>
    {
        var (x, y) = (corner.Item1 * Width / 2.0, corner.Item2 * Height / 2.0);
        var wanted = Map(Turn, Scale, ShiftX, ShiftY, x, y);
        var put = Map(found.Turn, found.Scale, found.ShiftX, found.ShiftY, x, y);
        return Math.Sqrt(Square(wanted.X - put.X) + Square(wanted.Y - put.Y));
    });

    /// <summary>Where a place of the earlier picture, in pixels from its middle, comes to lie.</summary>
    public static (double X, double Y) Map(double turn, double scale, double shiftX, double shiftY, double x, double y)
    {
        var (sine, cosine) = Math.SinCos(turn * Math.PI / 180);
        return ((((x * cosine) - (y * sine)) * scale) + (shiftX * Width), (((x * sine) + (y * cosine)) * scale) + (shiftY * Width));
    }

    private static double Mean(LumaPlane larger, double x, double y, double step)
    {
        var sum = 0.0;
        for (var sample = 0; sample < 4; sample++)
        {
            var placeX = x + ((larger.Width - 1) / 2.0) + (((sample % 2) - 0.5) * step / 2);
            var placeY = y + ((larger.Height - 1) / 2.0) + (((sample / 2) - 0.5) * step / 2);
            sum += Sampling.Linear(larger, Math.Clamp(placeX, 0, larger.Width - 1.001), Math.Clamp(placeY, 0, larger.Height - 1.001)).Value;
        }

        return sum / 4;
    }

    private static double Square(double value) => value * value;
}
