namespace InspectLog.Measuring;

/// <summary>How a camera without distortion sees a plane, turned round: from places in the picture to places on the plane. Four
/// pairs of points fix it (the direct linear solution of Hartley and Zisserman, Multiple View Geometry, 2nd ed., 4.1, with its
/// last element set to 1).</summary>
/// <remarks>The picture is shifted and scaled about its four points first (their 4.4.4), which keeps the equations well
/// conditioned; and the middle of four corners of a convex figure never lies on the horizon, so that the last element may be 1.
/// </remarks>
public sealed class PlaneHomography
{
    private const int Unknowns = 8;

    // Sine of an angle that rounding alone could make of none.
    private const double Flat = 1e-9;

    private readonly double[] _elements;
    private readonly PicturePoint _middle;
    private readonly double _size;

    private PlaneHomography(double[] elements, PicturePoint middle, double size) =>
        (_elements, _middle, _size) = (elements, middle, size);

    /// <summary>The one that takes four places of a picture to four of a plane; null where three of either lie in a line:
    /// then none does.</summary>
    /// <param name="picture">Four places in the picture, pixels.</param>
    /// <param name="plane">Where they lie on the plane, in the same order, base unit.</param>
    /// <exception cref="ArgumentException">There are not four of each.</exception>
    public static PlaneHomography? Of(IReadOnlyList<PicturePoint> picture, IReadOnlyList<PicturePoint> plane)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(plane);
        if (picture.Count != 4 || plane.Count != 4)
        {
            throw new ArgumentException("Four points of the picture and four of the plane are needed.");
        }

        if (HaveThreeInLine(picture) || HaveThreeInLine(plane))
        {
            return null;
        }

        var middle = new PicturePoint(picture.Average(one => one.X), picture.Average(one => one.Y));
        var size = picture.Average(middle.DistanceTo);
        var equations = new double[Unknowns, Unknowns + 1];
        for (var i = 0; i < 4; i++)
        {
            var (x, y) = ((picture[i].X - middle.X) / size, (picture[i].Y - middle.Y) / size);
            Fill(equations, 2 * i, [x, y, 1, 0, 0, 0, -x * plane[i].X, -y * plane[i].X, plane[i].X]);
            Fill(equations, (2 * i) + 1, [0, 0, 0, x, y, 1, -x * plane[i].Y, -y * plane[i].Y, plane[i].Y]);
        }

        return LinearEquations.Solve(equations) is { } elements ? new(elements, middle, size) : null;
    }

    /// <summary>Where on the plane a place in the picture lies; null where it is on the horizon or beyond it, and the plane is
    /// not seen there at all.</summary>
    public PicturePoint? OnPlane(PicturePoint inPicture)
    {
        var (x, y) = ((inPicture.X - _middle.X) / _size, (inPicture.Y - _middle.Y) / _size);
        var depth = (_elements[6] * x) + (_elements[7] * y) + 1;
        return depth > 0
            ? new PicturePoint(
                ((_elements[0] * x) + (_elements[1] * y) + _elements[2]) / depth,
                ((_elements[3] * x) + (_elements[4] * y) + _elements[5]) / depth)
            : null;
    }

    private static bool HaveThreeInLine(IReadOnlyList<PicturePoint> points)
    {
        for (var left = 0; left < 4; left++)
        {
            var (a, b, c) = (points[(left + 1) % 4], points[(left + 2) % 4], points[(left + 3) % 4]);
            var area = ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
            if (!(Math.Abs(area) > Flat * a.DistanceTo(b) * a.DistanceTo(c)))
            {
                return true;
            }
        }

        return false;
    }

    private static void Fill(double[,] equations, int row, ReadOnlySpan<double> values)
    {
        for (var column = 0; column < values.Length; column++)
        {
            equations[row, column] = values[column];
        }
    }
}
