namespace InspectLog.Measuring;

/// <summary>A length measured in a picture against something of known size, with its uncertainty (JCGM 100:2008, 5.1.2): from
/// where the points were picked, from the picture's pixels, and from the size of the reference. Pure.</summary>
/// <remarks>Distortion of the lens, and what does not lie in the plane of the reference, are not in it.</remarks>
public static class PictureLength
{
    /// <summary>Standard uncertainty of a pick, pixels, to each side of x and y, where nobody says: an edge of a display copy is
    /// blurred over two to three pixels, and a cross that is magnified may stand anywhere in it, ±√3 pixels with every place as
    /// likely (JCGM 100:2008, 4.3.7). Common practice, no source.</summary>
    public const double UsualPick = 1;

    /// <summary>The least and the most that a pick may be uncertain by, pixels.</summary>
    public const double LeastPick = 0.2, MostPick = 20;

    /// <summary>A reference shorter than so many uncertainties of a pick says too little, and ratios of such lengths are no longer
    /// in proportion to the errors of their ends.</summary>
    public const double LeastReference = 20;

    /// <summary>The same of what is measured.</summary>
    public const double LeastLength = 8;

    private const string EndsPicked = "picking the ends of what is measured";
    private const string Pixels = "pixels of the picture";
    private const string Size = "size of the reference";

    // A place is one of whole pixels: ±½ pixel, every place as likely.
    private static readonly double Pixel = Budget.Rectangular(0.5);

    /// <summary>The length between two places.</summary>
    /// <param name="reference">What is of known size.</param>
    /// <param name="from">One end, pixels.</param>
    /// <param name="to">The other end, pixels.</param>
    /// <param name="pick">Standard uncertainty of a pick in x and in y, pixels.</param>
    /// <returns>The estimate in the base unit; its coverage factor is 2.</returns>
    /// <exception cref="ArgumentException">Nothing can be measured so; the message says why, for the person who picked.</exception>
    public static Estimate Of(PictureReference reference, PicturePoint from, PicturePoint to, double pick = UsualPick)
    {
        RefuseBad(reference, from, to, pick);
        PicturePoint[] points = [.. reference.Points, from, to];
        var estimate = Derived.Of(errors => Model(reference, points, errors), Inputs(reference, points.Length, pick));
        return Estimate.From(estimate.Value, Together(estimate.Contributions), Evaluation.Classical);
    }

    /// <summary>Errors are the inputs, and each is best estimated as 0: that keeps the steps of the sensitivities small against
    /// the figure, wherever in the picture it lies.</summary>
    private static List<Input> Inputs(PictureReference reference, int points, double pick)
    {
        var inputs = new List<Input>();
        for (var coordinate = 0; coordinate < 2 * points; coordinate++)
        {
            var isOfReference = coordinate < 2 * reference.Points.Count;
            inputs.Add(new(isOfReference ? reference.Parts : EndsPicked, 0, pick) { Shape = ContributionShape.Normal });
            inputs.Add(new(Pixels, 0, Pixel) { Shape = ContributionShape.Even });
        }

        inputs.AddRange(reference.Lengths.Select(_ => new Input(Size, 0, Budget.Rectangular(reference.Tolerance)) { Shape = ContributionShape.Even }));
        return inputs;
    }

    private static double Model(PictureReference reference, PicturePoint[] points, double[] errors)
    {
        PicturePoint[] moved = [.. points.Select((point, i) => new PicturePoint(
            point.X + errors[4 * i] + errors[(4 * i) + 1], point.Y + errors[(4 * i) + 2] + errors[(4 * i) + 3]))];
        var ofReference = reference.Points.Count;
        double[] lengths = [.. reference.Lengths.Select((length, i) => length + errors[(4 * points.Length) + i])];
        return reference.LengthOf(moved[..ofReference], lengths, moved[ofReference], moved[ofReference + 1]) ?? double.NaN;
    }

    /// <summary>The contributions of a sort as one line; independent of each other, they add up by their squares.</summary>
    private static Contribution[] Together(IEnumerable<Contribution> parts) =>
    [
        .. parts.GroupBy(part => part.Name, StringComparer.Ordinal)
            .Select(sort => new Contribution(sort.Key, Budget.Combined([.. sort]), double.PositiveInfinity)
            {
                Shape = sort.Count(part => part.StandardUncertainty > 0) > 1 ? ContributionShape.Normal : sort.First().Shape,
            })
            .OrderByDescending(sort => sort.StandardUncertainty),
    ];

    private static void RefuseBad(PictureReference reference, PicturePoint from, PicturePoint to, double pick)
    {
        ArgumentNullException.ThrowIfNull(reference);
        if (!(pick is >= LeastPick and <= MostPick))
        {
            throw new ArgumentException("A point can be picked to between 0.2 and 20 pixels.");
        }

        if (!reference.Lengths.All(length => length > 0 && double.IsFinite(length)) || !(reference.Tolerance >= 0))
        {
            throw new ArgumentException("A known length must be above 0, and what it may be off 0 or more.");
        }

        if (reference.Lengths.Any(length => reference.Tolerance > length / 2))
        {
            throw new ArgumentException("The known length may be off by more than half of itself, so nothing can be measured by it.");
        }

        if (reference is KnownRectangle rectangle && (rectangle.Corners.Count != 4 || !rectangle.IsConvex()))
        {
            throw new ArgumentException("Pick the four corners of the rectangle one after the other round it, so that no two sides cross.");
        }

        if (Sides(reference).Any(side => side < LeastReference * pick))
        {
            throw new ArgumentException("The known length is too short in the picture. Take the photo from nearer, or pick a longer one.");
        }

        if (from.DistanceTo(to) < LeastLength * pick)
        {
            throw new ArgumentException("What is measured is too short in the picture: its ends could be one point. Take the photo from nearer.");
        }

        if (reference.LengthOf(reference.Points, reference.Lengths, from, to) is null)
        {
            throw new ArgumentException("What is measured lies where the plane of the rectangle is not seen. Pick points nearer to the rectangle.");
        }
    }

    private static IEnumerable<double> Sides(PictureReference reference) => reference switch
    {
        KnownRectangle { Corners: var corners } => corners.Select((corner, i) => corner.DistanceTo(corners[(i + 1) % 4])),
        _ => [reference.Points[0].DistanceTo(reference.Points[1])],
    };
}
