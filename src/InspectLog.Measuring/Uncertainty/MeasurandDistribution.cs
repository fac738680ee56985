namespace InspectLog.Measuring;

/// <summary>What is known of a measurand, as a symmetrical probability distribution about its best estimate
/// (JCGM 101:2008; JCGM 106:2012, clause 6). Expanded uncertainty, probability of conformity, risks and acceptance zones
/// all come from it.</summary>
/// <remarks>It is the sum of the contributions as they are shaped: repeats as Student's t, what is known only to lie
/// between bounds as boxes, the rest as normals. The two widest boxes are kept as they are; further ones go in as normals
/// of the same variance, which three or more boxes together hardly differ from: the half-width at 95.45 % by about half of
/// 1 %, beside a t of one degree of freedom by up to 2 % and at 99 % by up to 3 %, both on the safe side. Two t are kept as
/// they are; of more, all but the one with the fewest degrees of freedom are taken as one with the sum of their scales and
/// the fewest of theirs, which is on the safe side: no sum is wider.</remarks>
public readonly partial record struct MeasurandDistribution
{
    /// <summary>Scale s of Student's t, base unit; 0 for none.</summary>
    public double StudentScale { get; private init; }

    /// <summary>Its degrees of freedom, 1 or more; infinity where there is no t.</summary>
    public double DegreesOfFreedom { get; private init; }

    /// <summary>Scale of a second t, with no fewer degrees of freedom, base unit; 0 for none.</summary>
    public double OtherScale { get; private init; }

    /// <summary>Degrees of freedom of the second t.</summary>
    public double OtherDegreesOfFreedom { get; private init; }

    /// <summary>Standard deviation of the normal part, base unit; 0 for none.</summary>
    public double Normal { get; private init; }

    /// <summary>Half-widths of the two boxes, the wider first, base unit; 0 for none.</summary>
    public (double Wide, double Other) Boxes { get; private init; }

    private bool HasBoxes => Boxes.Wide > 0;

    /// <summary>A normal distribution, or Student's t where the standard uncertainty comes from few readings.</summary>
    /// <param name="standardUncertainty">Its scale, base unit, 0 or more.</param>
    /// <param name="degreesOfFreedom">1 or more, or infinity for a normal distribution.</param>
    public static MeasurandDistribution Student(double standardUncertainty, double degreesOfFreedom) =>
        double.IsPositiveInfinity(degreesOfFreedom)
            ? new() { Normal = standardUncertainty, DegreesOfFreedom = double.PositiveInfinity }
            : new() { StudentScale = standardUncertainty, DegreesOfFreedom = degreesOfFreedom };

    /// <summary>Probability, 0 to 1, of a value more than <paramref name="x"/> above the best estimate; exactly what lies
    /// there where the shapes are bounded, so that it may be 0.</summary>
    /// <param name="x">Base unit; may be negative or infinite.</param>
    public double Above(double x)
    {
        Span<double> room = stackalloc double[Room];
        return Above(x, Spreads(room));
    }

    /// <summary>Probability, 0 to 1, of a value between two places about the best estimate.</summary>
    /// <param name="from">Base unit; negative infinity for none.</param>
    /// <param name="to">Not below <paramref name="from"/>; infinity for none.</param>
    public double Between(double from, double to)
    {
        Span<double> room = stackalloc double[Room];
        var spreads = Spreads(room);
        var (near, far) = from > 0 ? (from, to) : (-to, -from);
        return Math.Max(0, Above(near, spreads) - Above(far, spreads));
    }

    /// <summary>Half the width of the middle part that holds a given share.</summary>
    /// <param name="coverage">From 0 to below 1: 0.9545 for 95.45 %.</param>
    public double HalfWidthOf(double coverage)
    {
        if (coverage <= 0)
        {
            return 0;
        }

        if (!HasBoxes && OtherScale == 0 && (StudentScale == 0 || Normal == 0))
        {
            return (StudentScale + Normal) * Coverage.Factor(coverage, DegreesOfFreedom);
        }

        if (StudentScale == 0 && Normal == 0)
        {
            return Trapezoid.OfBoxes(Boxes.Wide, Boxes.Other).HalfWidthOf(coverage);
        }

        Span<double> room = stackalloc double[Room];
        return HalfWidthSearch.Of(this, Spreads(room), (1 - coverage) / 2, About(coverage), NoMoreThan(coverage));
    }

    /// <summary>The density at a place; exactly 0 beyond the bounds of what is bounded.</summary>
    /// <param name="x">Base unit, about the best estimate.</param>
    public double Density(double x)
    {
        var at = Math.Abs(x);
        return StudentScale == 0 && Normal == 0 ? HasBoxes ? Trapezoid.OfBoxes(Boxes.Wide, Boxes.Other).Density(at) : 0
            : !HasBoxes && Normal == 0 && OtherScale == 0 ? StudentDistribution.Density(at / StudentScale, DegreesOfFreedom) / StudentScale
            : Tail(at, Spreads(stackalloc double[Room])).Density;
    }

    /// <summary>The scales and half-widths of all its parts together, base unit: its size, roughly.</summary>
    internal double Extent => StudentScale + OtherScale + Normal + Boxes.Wide + Boxes.Other;

    /// <summary>The distribution of so many times the measurand.</summary>
    internal MeasurandDistribution Times(double factor) => this with
    {
        StudentScale = factor * StudentScale,
        OtherScale = factor * OtherScale,
        Normal = factor * Normal,
        Boxes = (factor * Boxes.Wide, factor * Boxes.Other),
    };

    // As of normals: a few parts in a hundred off, and a place to start from.
    private double About(double coverage) => Math.Sqrt(
        Square(StudentScale > 0 ? StudentScale * StudentDistribution.Factor(coverage, DegreesOfFreedom) : 0)
        + Square(OtherScale > 0 ? OtherScale * StudentDistribution.Factor(coverage, OtherDegreesOfFreedom) : 0)
        + Square(Normal > 0 ? Normal * Coverage.Factor(coverage, double.PositiveInfinity) : 0)
        + Square(coverage * Boxes.Wide) + Square(coverage * Boxes.Other));

    private static double Square(double number) => number * number;

    // The half-widths of the parts add up to no less than that of the whole.
    private double NoMoreThan(double coverage)
    {
        var third = 1 - ((1 - coverage) / 3);
        return (StudentScale > 0 ? StudentScale * StudentDistribution.Factor(third, DegreesOfFreedom) : 0)
            + (OtherScale > 0 ? OtherScale * StudentDistribution.Factor(third, OtherDegreesOfFreedom) : 0)
            + (Normal > 0 ? Normal * StudentDistribution.Factor(third, double.PositiveInfinity) : 0)
            + Boxes.Wide + Boxes.Other;
    }
}
