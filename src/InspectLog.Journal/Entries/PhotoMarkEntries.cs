namespace InspectLog.Journal.Entries;

/// <summary>Somebody marked a photo: from now on these marks are drawn over it. The photo itself stays as it is. Marks that are
/// changed are an entry of this kind that amends the first.</summary>
/// <param name="Photo">Sequence of the photo's first entry.</param>
/// <param name="Marks">All marks, in the order they were made.</param>
[EntryKind("photo-marked")]
public sealed record PhotoMarked(long Photo, IReadOnlyList<PhotoMark> Marks) : AmendableBody;

/// <summary>One mark. Its places are shares of the upright photo, so that they hold on every copy of it.</summary>
/// <param name="Shape">What is drawn.</param>
/// <param name="Points">An arrow's tail and tip; two corners about a ring; the points along a line; the middle of a text; the two
/// ends of what was measured.</param>
public sealed record PhotoMark(MarkShape Shape, IReadOnlyList<MarkPoint> Points)
{
    /// <summary>What it marks, in words; null where nobody said.</summary>
    public string? Text { get; init; }

    /// <summary>What was measured; null for other shapes.</summary>
    public PhotoMeasurement? Measured { get; init; }
}

/// <summary>A place in a photo.</summary>
/// <param name="X">From its left edge, as a share of its width, 0 to 1.</param>
/// <param name="Y">From its upper edge, as a share of its height, 0 to 1.</param>
public sealed record MarkPoint(double X, double Y);

/// <summary>What a mark looks like.</summary>
public enum MarkShape
{
    /// <summary>A line with a tip.</summary>
    Arrow,

    /// <summary>An ellipse.</summary>
    Ring,

    /// <summary>A line as it was drawn by hand.</summary>
    Line,

    /// <summary>Words.</summary>
    Text,

    /// <summary>A measuring line with its length.</summary>
    Measure,
}

/// <summary>A length measured in a photo, with all it was worked out from.</summary>
/// <param name="Reference">Places of what is of known size: the two ends of a length, or the four corners of a rectangle, one after
/// the other round it.</param>
/// <param name="Lengths">The known lengths in mm: one, or the sides from the first corner to the second and from the second to the
/// third.</param>
/// <param name="Tolerance">How far each of them may be off to either side, mm.</param>
/// <param name="Width">Width of the copy the places were picked in, pixels.</param>
/// <param name="Height">Its height, pixels.</param>
/// <param name="Pick">Standard uncertainty of a pick in x and in y, pixels of that copy.</param>
/// <param name="Value">The length, mm.</param>
/// <param name="ExpandedUncertainty">Its expanded uncertainty, k = 2, mm.</param>
public sealed record PhotoMeasurement(
    IReadOnlyList<MarkPoint> Reference,
    IReadOnlyList<double> Lengths,
    double Tolerance,
    int Width,
    int Height,
    double Pick,
    double Value,
    double ExpandedUncertainty);
