namespace InspectLog.Photos.Judging;

/// <summary>How steep the brightness of a picture is, and where its edges are.</summary>
internal sealed class Steepness
{
    private const float Diagonal = 0.41421357f; // the tangent of 22.5°

    /// <summary>A quarter of a Rayleigh distribution of scale 1 lies below: the root of -2 ln 0.75.</summary>
    private const float QuarterOfRayleigh = 0.7585f;

    private readonly LumaPlane _plane;
    private readonly float[] _values;

    private Steepness(LumaPlane plane, float[] values) => (_plane, _values) = (plane, values);

    public static Steepness Of(LumaPlane plane)
    {
        var values = new float[plane.Values.Length];
        for (var row = 1; row < plane.Height - 1; row++)
        {
            var end = (row * plane.Width) + plane.Width - 1;
            for (var at = (row * plane.Width) + 1; at < end; at++)
                values[at] = Of(plane, at);
        }

        return new(plane, values);
    }

    /// <summary>The gradient at a pixel that is none of the border's, brightness a pixel.</summary>
    public static float Of(LumaPlane plane, int at)
    {
        var (x, y) = Gradient(plane, at);
        return MathF.Sqrt((x * x) + (y * y));
    }

    public float At(int at) => _values[at];

    /// <summary>How steep grain alone makes it: scale of the Rayleigh distribution that the least steep quarter of the picture
    /// has, where nothing else is.</summary>
    public float OfGrain()
    {
        const int bins = 400;
        const float binsPerLevel = 40;
        Span<int> counts = stackalloc int[bins];
        counts.Clear();
        for (var at = 0; at < _values.Length; at += 3)
            counts[Math.Min((int)(_values[at] * binsPerLevel), bins - 1)]++;

        var (below, quarter) = (0, _values.Length / 3 / 4);
        for (var bin = 0; bin < bins; bin++)
        {
            below += counts[bin];
            if (below >= quarter)
                return (bin + 1) / binsPerLevel / QuarterOfRayleigh;
        }

        return bins / binsPerLevel / QuarterOfRayleigh;
    }

    /// <summary>The direction of the gradient, in steps of 45°, where it is steeper than on either side of it; null
    /// elsewhere.</summary>
    public int? RidgeDirection(int at)
    {
        var (x, y) = Gradient(_plane, at);
        var (direction, beside) = MathF.Abs(y) < Diagonal * MathF.Abs(x) ? (0, 1)
            : MathF.Abs(x) < Diagonal * MathF.Abs(y) ? (2, _plane.Width)
            : x * y > 0 ? (1, _plane.Width + 1)
            : (3, _plane.Width - 1);
        return _values[at] > _values[at - beside] && _values[at] >= _values[at + beside] ? direction : null;
    }

    private static (float X, float Y) Gradient(LumaPlane plane, int at)
    {
        var values = plane.Values;
        return ((values[at + 1] - values[at - 1]) / 2, (values[at + plane.Width] - values[at - plane.Width]) / 2);
    }
}
