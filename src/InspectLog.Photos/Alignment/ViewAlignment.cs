using InspectLog.Photos.Judging;
using InspectLog.Photos.Likeness;

namespace InspectLog.Photos.Alignment;

/// <summary>Finds how an earlier picture has to be laid over a later one of the same view, taken from nearly the same stand in
/// whatever light: shifted by up to a sixth of the width, turned by up to 10° and scaled by up to 15 %. Pure; a few tenths of a
/// second for pictures of <see cref="Edge"/> pixels.</summary>
public static class ViewAlignment
{
    /// <summary>Longest edge of the pictures it is made for, pixels.</summary>
    public const int Edge = 512;

    /// <summary>Pictures of other views have less in common, whatever way they are laid.</summary>
    internal const double LeastScore = 0.35;

    private const int Smallest = 64;
    private const int Tried = 8;

    /// <summary>The way to lay one over the other; null where they do not show the same view.</summary>
    /// <param name="earlier">The earlier picture, its longest edge <see cref="Edge"/> or little less; others are declined.</param>
    /// <param name="later">The later one.</param>
    public static ViewTransform? Of(GreyPicture earlier, GreyPicture later) =>
        Best(earlier, later) is { Score: >= LeastScore } best ? best : null;

    internal static ViewTransform? Best(GreyPicture earlier, GreyPicture later)
    {
        if (!IsTaken(earlier) || !IsTaken(later))
            return null;

        var before = Sizes(earlier.Plane);
        var after = Sizes(later.Plane);
        var smallest = before.Count - 1;
        if (CoarseSearch.Best(Smoothing.Of(after[smallest], 1), Smoothing.Of(before[smallest], 1))
            .Take(Tried)
            .Select(way => way.Improved(after[smallest], before[smallest], 10, 1))
            .OfType<Similarity>()
            .MaxBy(way => Rated(way, after[smallest], before[smallest], 1)) is not { } found)
            return null;

        var score = 0.0;
        for (var size = smallest - 1; size >= 0; size--)
        {
            if (found.Doubled.Improved(after[size], before[size], size == 0 ? 3 : 6, size == 0 ? 2 : 1) is not { } better)
                return null;
            found = better;
            if (size == smallest - 1)
                score = Rated(found, after[size], before[size], 1);
        }

        var back = found.Inverse;
        double width = after[0].Width;
        return new(back.Turn * 180 / Math.PI, back.Scale * before[0].Width / width, back.ShiftX / width, back.ShiftY / width, score);
    }

    /// <summary>Whether it is as large as is asked for, and not too narrow to be made smaller.</summary>
    private static bool IsTaken(GreyPicture picture) =>
        Math.Max(picture.Width, picture.Height) is <= Edge and > Edge - 64 && Math.Min(picture.Width, picture.Height) >= Edge / 4
        && picture.Values.Length == picture.Width * picture.Height;

    /// <summary>The correlation; nothing where they hardly overlap or one would be turned or scaled too much.</summary>
    private static double Rated(Similarity way, LumaPlane later, LumaPlane earlier, int stride)
    {
        var (correlation, covered) = way.Fit(later, earlier, stride);
        return covered < 0.5 || way.Scale is < 0.78 or > 1.28 || Math.Abs(way.Turn) > 0.26 ? 0 : correlation;
    }

    /// <summary>The picture evened out, and smaller ones, each half as large.</summary>
    private static List<LumaPlane> Sizes(LumaPlane plane)
    {
        var sizes = new List<LumaPlane> { plane };
        while (Math.Max(sizes[^1].Width, sizes[^1].Height) >= 2 * Smallest)
            sizes.Add(Levels.Half(sizes[^1]));
        return [.. sizes.Select(EvenedPicture.Of)];
    }
}
