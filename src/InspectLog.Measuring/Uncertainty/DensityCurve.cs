namespace InspectLog.Measuring;

/// <summary>How a distribution looks, for a drawing: its density at evenly spaced places from the best estimate outward, as
/// shares of the density there. The other side is its mirror image.</summary>
/// <param name="HalfWidth">How far it reaches to either side, base unit, above 0.</param>
/// <param name="Heights">Heights from the middle (1) to the end, two or more.</param>
public sealed record DensityCurve(double HalfWidth, IReadOnlyList<double> Heights)
{
    /// <summary>Places from the middle to the end, both counted.</summary>
    public const int Places = 30;

    // Half a pixel of a drawing as high as a reading strip: what lies beyond would not show.
    private const double Visible = 0.006;

    private const int Halvings = 40;

    /// <summary>The curve of a distribution; null where there is no spread to draw, or none that numbers can tell.</summary>
    public static DensityCurve? Of(in MeasurandDistribution distribution)
    {
        var size = distribution.Extent;
        if (!(size > 0 && double.IsFinite(size) && double.IsFinite(1 / size)))
        {
            return null;
        }

        // In units of its own size, so that nothing overflows whatever was measured.
        var shape = distribution.Times(1 / size);
        var top = shape.Density(0);
        var reach = Reach(shape, top);
        var heights = new double[Places];
        for (var i = 0; i < Places; i++)
        {
            heights[i] = Math.Min(1, shape.Density(reach * i / (Places - 1)) / top);
        }

        return double.IsFinite(size * reach) && heights.All(double.IsFinite) ? new(size * reach, heights) : null;
    }

    /// <summary>The same curve on another scale: in another unit, or for what is in proportion.</summary>
    /// <param name="factor">Above 0.</param>
    public DensityCurve Times(double factor) => this with { HalfWidth = HalfWidth * factor };

    /// <summary>Height at a distance from the best estimate, 0 to 1; 0 beyond the end.</summary>
    /// <param name="distance">To either side, base unit.</param>
    public double HeightAt(double distance)
    {
        var place = Math.Abs(distance) / HalfWidth * (Heights.Count - 1);
        if (!(place <= Heights.Count - 1))
        {
            return 0;
        }

        var before = Math.Min((int)place, Heights.Count - 2);
        return Heights[before] + ((place - before) * (Heights[before + 1] - Heights[before]));
    }

    private static double Reach(in MeasurandDistribution shape, double top)
    {
        var (near, far) = (0.0, 1.0);
        while (shape.Density(far) > Visible * top)
        {
            (near, far) = (far, 2 * far);
        }

        for (var i = 0; i < Halvings; i++)
        {
            var between = (near + far) / 2;
            (near, far) = shape.Density(between) > Visible * top ? (between, far) : (near, between);
        }

        return near;
    }
}
