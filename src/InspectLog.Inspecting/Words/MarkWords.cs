using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>What is marked in a photo, for people who do not see it, and for search. Pure.</summary>
public static class MarkWords
{
    // Where a share of the width or height counts as left, middle or right.
    private const double First = 1.0 / 3, Last = 2.0 / 3;

    /// <summary>All marks: "arrow to the upper left: hairline crack; ring round the middle"; "none" where there is none left.</summary>
    public static string Of(PhotoMarked marked) => marked.Marks.Count == 0 ? "none" : string.Join("; ", marked.Marks.Select(Of));

    /// <summary>One mark: "arrow to the upper left: hairline crack".</summary>
    public static string Of(PhotoMark mark) => mark.Shape switch
    {
        MarkShape.Arrow => With($"arrow to the {Part(mark.Points[^1])}", mark),
        MarkShape.Ring => With($"ring round the {Part(Middle(mark))}", mark),
        MarkShape.Line => With($"line along the {Part(Middle(mark))}", mark),
        MarkShape.Text => $"words at the {Part(mark.Points[0])}: {mark.Text}",
        MarkShape.Measure when mark.Measured is { } measured => $"{With($"measured at the {Part(Middle(mark))}", mark)}: {Length(measured)}",
        _ => With($"mark at the {Part(Middle(mark))}", mark),
    };

    /// <summary>A length and how far it may be off: "6.00 mm ± 0.15 mm".</summary>
    public static string Length(PhotoMeasurement measured) => Printed.Uncertain(measured.Value, measured.ExpandedUncertainty, Units.Millimetre);

    /// <summary>How a length was found, and what that takes for granted, in a sentence.</summary>
    public static string How(PhotoMeasurement measured) => measured.Lengths.Count == 1
        ? $"Measured against a known {Known(measured)}, as if both lay flat in one plane and the camera looked at it squarely. A slanted view, depth and the lens’s distortion are not in the ± (k = 2)."
        : $"Measured in the plane of a rectangle of {Known(measured)}, which corrects a slanted view. What lies out of that plane and the lens’s distortion are not in the ± (k = 2).";

    /// <summary>The part of a picture a place lies in: "upper left", "middle", "right".</summary>
    public static string Part(MarkPoint at)
    {
        var down = at.Y < First ? "upper" : at.Y > Last ? "lower" : "";
        var across = at.X < First ? "left" : at.X > Last ? "right" : "";
        return (down, across) switch
        {
            ("", "") => "middle",
            ("", _) => $"{across} side",
            (_, "") => $"{down} part",
            _ => $"{down} {across}",
        };
    }

    private static string Known(PhotoMeasurement measured)
    {
        var lengths = string.Join(" by ", measured.Lengths.Select(length => Printed.Value(length, Units.Millimetre)));
        return measured.Tolerance > 0 ? $"{lengths} ± {Printed.Value(measured.Tolerance, Units.Millimetre)}" : lengths;
    }

    private static string With(string what, PhotoMark mark) => mark.Text is { Length: > 0 } text ? $"{what}: {text}" : what;

    private static MarkPoint Middle(PhotoMark mark) => new(
        (mark.Points.Min(point => point.X) + mark.Points.Max(point => point.X)) / 2,
        (mark.Points.Min(point => point.Y) + mark.Points.Max(point => point.Y)) / 2);
}
