using System.Numerics;
using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Likeness;

/// <summary>Tells by their fingerprints whether two photos are copies of one picture: saved again, made smaller or brighter,
/// cropped by a twentieth. Two pictures of the same part, view and light in which something differs are not. Pure.</summary>
public static class SamePicture
{
    /// <summary>So many of the 64 coarse signs of copies may differ. Unlike pictures differ in 32, give or take 4.</summary>
    private const int MostSigns = 20;

    /// <summary>Fits of the smallest looks that cost more are of unlike pictures.</summary>
    private const double WorstStart = 0.4;

    /// <summary>Small looks of copies never differ by as much.</summary>
    private const double PlainlyOther = 2.5;

    /// <summary>Steps of the fit at each size, the largest first.</summary>
    private static readonly int[] Steps = [3, 4, 6, 5];

    /// <summary>What the fit starts from: nothing was cropped, or either look was, towards any corner.</summary>
    private static readonly CropFit[] Starts =
    [
        CropFit.Unchanged,
        .. from scale in new[] { 0.95, 1 / 0.95 } from x in new[] { -0.02, 0.02 } from y in new[] { -0.02, 0.02 } select new CropFit(scale, scale, x, y, 1, 0),
    ];

    /// <summary>Whether a second look is worth it: quick, and false for nearly all pairs that have nothing in common.</summary>
    /// <param name="one"><see cref="PhotoFingerprint.Coarse"/> of one photo.</param>
    /// <param name="other">That of another.</param>
    public static bool MayBe(ulong one, ulong other) => BitOperations.PopCount(one ^ other) <= MostSigns;

    /// <summary>Whether they are copies of one picture. The order does not matter.</summary>
    /// <param name="one">Fingerprint of one photo.</param>
    /// <param name="other">That of another.</param>
    public static bool Is(PhotoFingerprint one, PhotoFingerprint other) =>
        MayBe(one.Coarse, other.Coarse) && one.IsWhole && other.IsWhole && Difference(one, other) < 1;

    /// <summary>The largest difference between them, in parts of what copies may differ by; infinite where one cannot be laid
    /// over the other, or they plainly differ when small already.</summary>
    internal static double Difference(PhotoFingerprint one, PhotoFingerprint other)
    {
        var inOrder = one.Look.AsSpan().SequenceCompareTo(other.Look) <= 0;
        var first = Sizes(inOrder ? one : other);
        var second = Sizes(inOrder ? other : one);
        return Fit(first, second) is { } fit ? LookDifference.Largest(first[0], second[0], fit) : double.PositiveInfinity;
    }

    private static CropFit? Fit(LumaPlane[] first, LumaPlane[] second)
    {
        var smallest = first.Length - 1;
        var (fit, cost) = Starts
            .Select(start => start.Improved(first[smallest], second[smallest], Steps[smallest]))
            .OfType<CropFit>()
            .Select(found => (found, found.Cost(first[smallest], second[smallest])))
            .DefaultIfEmpty((CropFit.Unchanged, double.PositiveInfinity))
            .MinBy(found => found.Item2);
        if (cost > WorstStart)
            return null;

        var better = (CropFit?)fit;
        for (var size = smallest - 1; size >= 0 && better is not null; size--)
        {
            better = better.Improved(first[size], second[size], Steps[size]);
            if (better is not null && size > 0 && LookDifference.Largest(first[size], second[size], better) > PlainlyOther)
                return null;
        }

        return better;
    }

    /// <summary>The look, and smaller ones, each half as large.</summary>
    private static LumaPlane[] Sizes(PhotoFingerprint print)
    {
        var sizes = new LumaPlane[Steps.Length];
        sizes[0] = new(PhotoFingerprint.Edge, PhotoFingerprint.Edge, [.. print.Look.Select(value => (float)value)]);
        for (var size = 1; size < sizes.Length; size++)
            sizes[size] = Levels.Half(sizes[size - 1]);
        return sizes;
    }
}
