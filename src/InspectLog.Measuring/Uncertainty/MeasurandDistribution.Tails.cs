namespace InspectLog.Measuring;

/// <content>What lies beyond a place.</content>
public readonly partial record struct MeasurandDistribution
{
    /// <summary>What lies above a place that is not below the best estimate, and the density there.</summary>
    /// <param name="x">The place, 0 or more.</param>
    /// <param name="spreads">What <see cref="Spreads"/> gave for this distribution.</param>
    internal (double Above, double Density) Tail(double x, SpreadNodes spreads)
    {
        if (double.IsPositiveInfinity(x))
        {
            return (0, 0);
        }

        if (StudentScale == 0)
        {
            return Normal == 0
                ? HasBoxes ? (Trapezoid.OfBoxes(Boxes.Wide, Boxes.Other).Above(x), 0) : (x > 0 ? 0 : 0.5, 0)
                : new BlurredBoxes(Normal, Boxes.Wide, Boxes.Other).At(x);
        }

        if (!HasBoxes && Normal == 0 && OtherScale == 0)
        {
            return (StudentDistribution.BothTails(x / StudentScale, DegreesOfFreedom) / 2, 0);
        }

        return spreads.Count > 0 ? spreads.Tail(x, Boxes)
            : OtherScale == 0 ? Mixed(x, Normal)
            : MixedTwice(x);
    }

    // Two t are put together once for all places that are asked about; anything else needs no room.
    private int Room => OtherScale > 0 ? 2 * StudentPair.MostNodes : 0;

    private SpreadNodes Spreads(Span<double> room)
    {
        if (room.Length == 0)
        {
            return default;
        }

        var sigmas = room[..StudentPair.MostNodes];
        var weights = room[StudentPair.MostNodes..];
        var count = StudentPair.Fill(this, sigmas, weights);
        return new(sigmas[..count], weights[..count]);
    }

    private double Above(double x, SpreadNodes spreads) => x < 0 ? 1 - Tail(-x, spreads).Above : Tail(x, spreads).Above;

    // The first t as normals of the variances that occur, beside another normal.
    private (double Above, double Density) Mixed(double x, double normal)
    {
        var (above, density) = (0.0, 0.0);
        var mixture = new StudentMixture(DegreesOfFreedom);
        while (mixture.Next(out var varianceFactor, out var weight))
        {
            var sigma = Math.Sqrt((StudentScale * StudentScale * varianceFactor) + (normal * normal));
            var part = new BlurredBoxes(sigma, Boxes.Wide, Boxes.Other).At(x);
            above += weight * part.Above;
            density += weight * part.Density;
        }

        return (above, density);
    }

    // Each variance of the one t with each of the other: some thousand normals, where many repeats are subtracted from
    // many.
    private (double Above, double Density) MixedTwice(double x)
    {
        var (above, density) = (0.0, 0.0);
        var mixture = new StudentMixture(OtherDegreesOfFreedom);
        while (mixture.Next(out var varianceFactor, out var weight))
        {
            var part = Mixed(x, Math.Sqrt((OtherScale * OtherScale * varianceFactor) + (Normal * Normal)));
            above += weight * part.Above;
            density += weight * part.Density;
        }

        return (above, density);
    }
}
