namespace InspectLog.Measuring;

/// <content>How contributions are added up.</content>
public readonly partial record struct MeasurandDistribution
{
    // A part this much smaller than the rest changes nothing but its variance.
    private const double Sliver = 1e-6;

    /// <summary>The sum of independent contributions.</summary>
    public static MeasurandDistribution Of(ReadOnlySpan<Contribution> contributions)
    {
        var sum = new MeasurandDistribution { DegreesOfFreedom = double.PositiveInfinity };
        foreach (var contribution in contributions)
        {
            var u = contribution.StandardUncertainty;
            sum = contribution.Shape switch
            {
                ContributionShape.Even => sum.WithBox(u * Math.Sqrt(3)),
                // A triangle is the sum of two boxes half as wide.
                ContributionShape.Triangular => sum.WithBox(u * Math.Sqrt(1.5)).WithBox(u * Math.Sqrt(1.5)),
                _ => sum.WithStudent(u, contribution.DegreesOfFreedom),
            };
        }

        return sum.WithoutSlivers();
    }

    // So that a display step of nearly nothing does not keep a normal distribution from being just that.
    private MeasurandDistribution WithoutSlivers()
    {
        var (wide, other) = Boxes;
        var thin = wide <= Sliver * Math.Max(Normal, StudentScale)
            ? this with { Boxes = (0, 0), Normal = double.Hypot(Normal, Budget.Rectangular(double.Hypot(wide, other))) }
            : this;
        return !thin.HasBoxes && thin.OtherScale == 0 && thin.Normal <= Sliver * thin.StudentScale
            ? thin with { StudentScale = double.Hypot(thin.StudentScale, thin.Normal), Normal = 0 }
            : thin;
    }

    private MeasurandDistribution WithStudent(double scale, double degreesOfFreedom)
    {
        if (scale == 0)
        {
            return this;
        }

        if (double.IsPositiveInfinity(degreesOfFreedom))
        {
            return this with { Normal = double.Hypot(Normal, scale) };
        }

        var one = (Scale: scale, DegreesOfFreedom: degreesOfFreedom);
        var first = (Scale: StudentScale, DegreesOfFreedom);
        if (one.DegreesOfFreedom < first.DegreesOfFreedom)
        {
            (first, one) = (one, first);
        }

        return this with
        {
            StudentScale = first.Scale,
            DegreesOfFreedom = first.DegreesOfFreedom,
            OtherScale = OtherScale + one.Scale,
            OtherDegreesOfFreedom = one.Scale == 0 ? OtherDegreesOfFreedom
                : OtherScale == 0 ? one.DegreesOfFreedom
                : Math.Min(OtherDegreesOfFreedom, one.DegreesOfFreedom),
        };
    }

    private MeasurandDistribution WithBox(double halfWidth)
    {
        var (wide, other) = Boxes;
        var least = Math.Min(halfWidth, other);
        var most = Math.Max(halfWidth, wide);
        var middle = Math.Max(Math.Min(halfWidth, wide), other);
        return this with { Boxes = (most, middle), Normal = double.Hypot(Normal, Budget.Rectangular(least)) };
    }
}
