using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Likeness;

/// <summary>How one look has to be stretched, shifted and brightened to lie over another: what cropping and brightening do
/// to a copy. Places are measured from the middle, in parts of the edge.</summary>
/// <param name="ScaleX">Stretch along rows.</param>
/// <param name="ScaleY">Stretch along columns.</param>
/// <param name="ShiftX">Shift along rows.</param>
/// <param name="ShiftY">Shift along columns.</param>
/// <param name="Gain">Factor on brightness.</param>
/// <param name="Offset">What is added to it.</param>
internal sealed record CropFit(double ScaleX, double ScaleY, double ShiftX, double ShiftY, double Gain, double Offset)
{
    /// <summary>What the same place of two copies may well differ by.</summary>
    private const double Usual = 10;

    /// <summary>Means of pixels that were cut off at white are brighter.</summary>
    private const double White = 238;

    /// <summary>Where a picture does not tell (an even slope may be shifted or made brighter alike), nothing is changed: one over
    /// the square of what each may well change by. Next to nothing in pictures that tell.</summary>
    private static readonly double[] Damping = [1 / (0.05 * 0.05), 1 / (0.05 * 0.05), 1 / (0.03 * 0.03), 1 / (0.03 * 0.03), 1 / (0.1 * 0.1), 1 / (15.0 * 15)];

    /// <summary>Nothing is changed.</summary>
    public static CropFit Unchanged { get; } = new(1, 1, 0, 0, 1, 0);

    /// <summary>Beyond this nothing was cropped a little or brightened a little: it is another picture.</summary>
    public bool IsLittle =>
        Math.Abs(ScaleX - 1) < 0.1 && Math.Abs(ScaleY - 1) < 0.1 && Math.Abs(ShiftX) < 0.06 && Math.Abs(ShiftY) < 0.06
        && Gain is > 0.75 and < 1.34 && Math.Abs(Offset) < 50;

    /// <summary>The other look as it lies over the first, its brightness as it was; NaN where it does not reach.</summary>
    /// <param name="other">The look that is laid over.</param>
    public LumaPlane Lay(LumaPlane other)
    {
        var (width, height) = (other.Width, other.Height);
        var values = new float[width * height];
        for (var row = 0; row < height; row++)
        {
            var y = Place(row, height, ScaleY, ShiftY);
            for (var column = 0; column < width; column++)
                values[(row * width) + column] = (float)Sampling.Cubic(other, Place(column, width, ScaleX, ShiftX), y);
        }

        return new(width, height, values);
    }

    /// <summary>Improves it by least squares, step by step, so that the other look fits the first (Gauss and Newton, with
    /// less weight on what differs much, as damage does).</summary>
    /// <param name="first">The look that stays.</param>
    /// <param name="other">The look that is laid over.</param>
    /// <param name="steps">How many steps.</param>
    /// <returns>The better fit; null where there is none.</returns>
    public CropFit? Improved(LumaPlane first, LumaPlane other, int steps)
    {
        var fit = this;
        for (var step = 0; step < steps; step++)
        {
            if (fit.Step(first, other) is not { } next || !next.IsLittle)
                return null;
            fit = next;
        }

        return fit;
    }

    /// <summary>What is left between a place of the first look and the same place of the other: 0 where one of them is as white
    /// as can be and the other brighter yet, since brightening cuts off there.</summary>
    /// <param name="first">Brightness in the first look.</param>
    /// <param name="other">Brightness in the other, before gain and offset.</param>
    public double Left(double first, double other)
    {
        var left = first - (Gain * other) - Offset;
        return (first > White && left < 0) || (other > White && left > 0) ? 0 : left;
    }

    /// <summary>How badly it fits: the mean of what is left, in which much counts no more than damage does.</summary>
    public double Cost(LumaPlane first, LumaPlane other)
    {
        var (sum, count, edge) = (0.0, 0, first.Width);
        for (var row = 0; row < edge; row++)
        {
            var y = Place(row, edge, ScaleY, ShiftY);
            for (var column = 0; column < edge; column++)
            {
                var x = Place(column, edge, ScaleX, ShiftX);
                if (!Sampling.Has(other, x, y))
                    continue;
                var left = Left(first.Values[(row * edge) + column], Sampling.Linear(other, x, y).Value);
                sum += left * left / ((left * left) + (Usual * Usual));
                count++;
            }
        }

        return count == 0 ? double.PositiveInfinity : sum / count;
    }

    private CropFit? Step(LumaPlane first, LumaPlane other)
    {
        const int unknowns = 6;
        var normal = new double[unknowns, unknowns + 1];
        for (var i = 0; i < unknowns; i++)
            normal[i, i] = Damping[i];
        Span<double> slope = stackalloc double[unknowns];
        var edge = first.Width;
        for (var row = 1; row < edge - 1; row++)
        {
            var y = Place(row, edge, ScaleY, ShiftY);
            for (var column = 1; column < edge - 1; column++)
            {
                var x = Place(column, edge, ScaleX, ShiftX);
                if (!Sampling.Has(other, x, y))
                    continue;
                var (value, alongX, alongY) = Sampling.Linear(other, x, y);
                var left = Left(first.Values[(row * edge) + column], value);
                var weight = 1 / (1 + (left * left / (Usual * Usual)));
                (slope[0], slope[1]) = (Gain * alongX * (column + 0.5 - (edge / 2.0)), Gain * alongY * (row + 0.5 - (edge / 2.0)));
                (slope[2], slope[3]) = (Gain * alongX * edge, Gain * alongY * edge);
                (slope[4], slope[5]) = (value, 1);
                for (var i = 0; i < unknowns; i++)
                {
                    var weighed = weight * slope[i];
                    for (var j = i; j < unknowns; j++)
                        normal[i, j] += weighed * slope[j];
                    normal[i, unknowns] += weighed * left;
                }
            }
        }

        return LinearEquations.Solve(normal) is { } by
            ? new(ScaleX + by[0], ScaleY + by[1], ShiftX + by[2], ShiftY + by[3], Gain + by[4], Offset + by[5])
            : null;
    }

    private static double Place(int at, int edge, double scale, double shift) =>
        (((at + 0.5 - (edge / 2.0)) * scale) + (shift * edge)) + (edge / 2.0) - 0.5;
}
