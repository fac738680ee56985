using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Likeness;

/// <summary>Values of a plane between its pixels. Pixel 0 is at place 0.</summary>
internal static class Sampling
{
    /// <summary>Whether a place lies between pixels.</summary>
    public static bool Has(LumaPlane plane, double x, double y) => x >= 0 && y >= 0 && x < plane.Width - 1 && y < plane.Height - 1;

    /// <summary>The value at a place that lies between pixels, and its slopes, by straight lines.</summary>
    public static (double Value, double AlongX, double AlongY) Linear(LumaPlane plane, double x, double y)
    {
        var (left, top) = ((int)x, (int)y);
        var (inX, inY) = (x - left, y - top);
        var at = (top * plane.Width) + left;
        var (a, b, c, d) = (plane.Values[at], plane.Values[at + 1], plane.Values[at + plane.Width], plane.Values[at + plane.Width + 1]);
        var (upper, lower) = (a + ((b - a) * inX), c + ((d - c) * inX));
        return (upper + ((lower - upper) * inY), ((b - a) * (1 - inY)) + ((d - c) * inY), lower - upper);
    }

    /// <summary>The value at a place by cubics through the pixels around it (Catmull and Rom), which blur less than straight
    /// lines; NaN too near the border.</summary>
    public static double Cubic(LumaPlane plane, double x, double y)
    {
        if (!(x >= 1 && y >= 1 && x < plane.Width - 2 && y < plane.Height - 2))
            return double.NaN;

        var (left, top) = ((int)x - 1, (int)y - 1);
        Span<double> across = stackalloc double[4];
        for (var row = 0; row < 4; row++)
        {
            var line = plane.Row(top + row)[left..];
            across[row] = Between(line[0], line[1], line[2], line[3], x - left - 1);
        }

        return Between(across[0], across[1], across[2], across[3], y - top - 1);
    }

    private static double Between(double a, double b, double c, double d, double part) =>
        b + (part / 2 * (c - a + (part * ((2 * a) - (5 * b) + (4 * c) - d + (part * ((3 * (b - c)) + d - a))))));
}
