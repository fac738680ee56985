namespace InspectLog.Measuring;

/// <summary>Something of known size in a picture.</summary>
/// <param name="Tolerance">How far each of its lengths may be off to either side, base unit, 0 or more; every size within is
/// taken as equally likely (JCGM 100:2008, 4.3.7).</param>
public abstract record PictureReference(double Tolerance)
{
    /// <summary>The places that were picked of it, in the order picked, pixels.</summary>
    public abstract IReadOnlyList<PicturePoint> Points { get; }

    /// <summary>Its known lengths, base unit.</summary>
    public abstract IReadOnlyList<double> Lengths { get; }

    /// <summary>Its name in the budget, as what is picked of it.</summary>
    internal abstract string Parts { get; }

    /// <summary>A length in the picture as one on the thing; null where the places do not fix it.</summary>
    /// <param name="points">The places of the reference.</param>
    /// <param name="lengths">Its lengths.</param>
    /// <param name="from">One end of what is measured.</param>
    /// <param name="to">The other end.</param>
    internal abstract double? LengthOf(IReadOnlyList<PicturePoint> points, IReadOnlyList<double> lengths, PicturePoint from, PicturePoint to);
}

/// <summary>A known length between two places: a rule's marks, a coin's edges. The other lengths follow by ratio, which is right
/// where both lie flat in one plane and the camera looks at it squarely.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Length">What lies between, base unit, above 0.</param>
/// <param name="Tolerance">How far the length may be off, base unit.</param>
public sealed record KnownLength(PicturePoint From, PicturePoint To, double Length, double Tolerance) : PictureReference(Tolerance)
{
    /// <inheritdoc/>
    public override IReadOnlyList<PicturePoint> Points => [From, To];

    /// <inheritdoc/>
    public override IReadOnlyList<double> Lengths => [Length];

    internal override string Parts => "picking the ends of the known length";

    internal override double? LengthOf(IReadOnlyList<PicturePoint> points, IReadOnlyList<double> lengths, PicturePoint from, PicturePoint to) =>
        lengths[0] * from.DistanceTo(to) / points[0].DistanceTo(points[1]);
}

/// <summary>A rectangle of known sides that lies in the plane of what is measured. It corrects a slanted view.</summary>
/// <param name="Corners">Its four corners, one after the other round it.</param>
/// <param name="First">The side from the first corner to the second, base unit, above 0.</param>
/// <param name="Second">The side from the second corner to the third, base unit, above 0.</param>
/// <param name="Tolerance">How far either side may be off, base unit.</param>
public sealed record KnownRectangle(IReadOnlyList<PicturePoint> Corners, double First, double Second, double Tolerance) : PictureReference(Tolerance)
{
    /// <inheritdoc/>
    public override IReadOnlyList<PicturePoint> Points => Corners;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Lengths => [First, Second];

    internal override string Parts => "picking the corners of the rectangle";

    internal override double? LengthOf(IReadOnlyList<PicturePoint> points, IReadOnlyList<double> lengths, PicturePoint from, PicturePoint to)
    {
        PicturePoint[] plane = [new(0, 0), new(lengths[0], 0), new(lengths[0], lengths[1]), new(0, lengths[1])];
        return PlaneHomography.Of(points, plane) is { } seen && seen.OnPlane(from) is { } start && seen.OnPlane(to) is { } end
            ? start.DistanceTo(end)
            : null;
    }

    /// <summary>Whether the corners go round a figure without dents, as those of a rectangle do from wherever it is seen.</summary>
    internal bool IsConvex()
    {
        var turns = Enumerable.Range(0, 4).Select(Turn).ToList();
        return turns.TrueForAll(turn => turn > 0) || turns.TrueForAll(turn => turn < 0);
    }

    private double Turn(int corner)
    {
        var (a, b, c) = (Corners[corner], Corners[(corner + 1) % 4], Corners[(corner + 2) % 4]);
        return ((b.X - a.X) * (c.Y - b.Y)) - ((b.Y - a.Y) * (c.X - b.X));
    }
}
