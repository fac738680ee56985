using System.Diagnostics;
using System.Globalization;
using InspectLog.Photos.Developing;
using InspectLog.Photos.Likeness;
using InspectLog.Photos.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Tests.Likeness;

/// <summary>How well copies of a picture are found, and pictures that only look alike told apart. The seeds and views are none
/// of those that thresholds were looked at with: seeds 1000 to 1015, the photos of the demo garage, and 110 other pictures rendered
/// of its scenes.</summary>
public sealed class SamePictureTests(ITestOutputHelper output)
{
    private const int FirstSeed = 70_000;

    /// <summary>How many look-alikes; more by hand: <c>INSPECTLOG_LOOKALIKES=2000</c>.</summary>
    private static readonly int LookAlikes =
        int.TryParse(Environment.GetEnvironmentVariable("INSPECTLOG_LOOKALIKES"), CultureInfo.InvariantCulture, out var count) ? count : 100;

    /// <summary>How many drawn pictures are copied; more by hand: <c>INSPECTLOG_COPIED=100</c>.</summary>
    private static readonly int Copied =
        int.TryParse(Environment.GetEnvironmentVariable("INSPECTLOG_COPIED"), CultureInfo.InvariantCulture, out var count) ? count : 10;

    [Fact]
    [Trait("Takes", "long")]
    public void Copies_are_found()
    {
        var tries = Originals().SelectMany(original =>
        {
            using var picture = original.Picture;
            var print = Prints.Of(PictureCopies.Original(picture));
            return PictureCopies.All(picture, new Random(original.Seed))
                .Select(copy => (copy.Kind, original.Name, Found: SamePicture.Is(print, Prints.Of(copy.File)))).ToList();
        }).ToList();

        foreach (var kind in tries.GroupBy(one => one.Kind))
            output.WriteLine($"{kind.Key}: {kind.Count(one => one.Found)} of {kind.Count()}; missed {string.Join(", ", kind.Where(one => !one.Found).Select(one => one.Name))}");
        foreach (var kind in tries.Where(one => one.Kind != PictureCopies.AllOfIt).GroupBy(one => one.Kind))
            Assert.True(kind.Count(one => one.Found) >= 0.98 * kind.Count(), kind.Key);
    }

    [Fact]
    [Trait("Takes", "long")]
    public void Pictures_that_differ_in_wear_or_number_alone_are_never_the_same()
    {
        var firsts = SceneViews.All.Where(view => view.IsFirst).ToList();
        var (falsePairs, pairs) = (new List<string>(), 0);
        foreach (var view in firsts)
        {
            using var scene = Image.Load<Rgb24>(SceneViews.FileOf(view));
            var each = LookAlikes / firsts.Count;
            var prints = Enumerable.Range(0, each).Select(number => (Name: Variant(number, each), Print: PrintOf(scene, view, Variant(number, each)))).ToList();
            var same = Enumerable.Range(0, each).AsParallel().WithDegreeOfParallelism(2).SelectMany(one => Enumerable.Range(0, one)
                .Where(other => SamePicture.Is(prints[one].Print, prints[other].Print))
                .Select(other => $"{view.Scene}: {prints[one].Name} and {prints[other].Name}")).ToList();
            falsePairs.AddRange(same);
            pairs += each * (each - 1) / 2;
        }

        output.WriteLine($"{falsePairs.Count} false among {pairs} pairs of {LookAlikes} pictures of {firsts.Count} parts");
        Assert.Empty(falsePairs);
    }

    [Fact]
    public void Views_of_one_scene_from_elsewhere_in_other_light_are_not_the_same_picture()
    {
        var prints = SceneViews.All.Select(view => (view.File, Print: Prints.Of(SceneViews.FileOf(view)))).ToList();

        Assert.Empty(from one in prints from other in prints where one != other && SamePicture.Is(one.Print, other.Print) select $"{one.File} {other.File}");
    }

    [Fact]
    public void Order_does_not_matter_and_a_picture_is_the_same_as_itself()
    {
        using var picture = WornPicture.Drawn(FirstSeed - 1, 640, 480);
        var print = Prints.Of(PictureCopies.Original(picture));

        Assert.True(SamePicture.Is(print, print));
        foreach (var other in PictureCopies.All(picture, new Random(3)).Select(copy => Prints.Of(copy.File)))
            Assert.Equal(SamePicture.Difference(print, other), SamePicture.Difference(other, print));
    }

    [Fact]
    public void Blank_picture_has_no_fingerprint()
    {
        using var blank = new Image<Rgb24>(640, 480, new Rgb24(240, 240, 240));

        Assert.Null(Assert.IsType<PhotoAnswer.Copies>(PhotoDeveloper.Develop(PhotoWork.Copies, PictureCopies.Original(blank))).Figures.Fingerprint);
    }

    [Fact]
    public void Fingerprint_that_was_written_over_is_like_nothing()
    {
        var print = Prints.Of(SceneViews.FileOf(SceneViews.All[0]));

        Assert.False(SamePicture.Is(print, print with { Look = [1, 2, 3] }));
        Assert.False(SamePicture.Is(print with { Look = null! }, print));
    }

    [Fact]
    public void Developing_makes_the_fingerprint_of_the_upright_picture()
    {
        var upright = Develop(Pictures.PhoneJpeg(1, 400, 300));
        var turned = Develop(Pictures.PhoneJpeg(6, 400, 300));

        Assert.True(SamePicture.Is(upright, Develop(Pictures.Png(400, 300))));
        Assert.False(SamePicture.Is(upright, turned));
    }

    [Fact]
    public void Ten_thousand_photos_are_looked_through_by_their_coarse_signs()
    {
        var random = new Random(9);
        var all = Enumerable.Range(0, 10_000).Select(_ => (ulong)random.NextInt64(long.MinValue, long.MaxValue)).ToArray();
        var watch = Stopwatch.StartNew();

        var close = all.Count(other => SamePicture.MayBe(all[77], other));

        output.WriteLine($"{close} of 10,000 random ones worth a second look, found in {watch.Elapsed.TotalMilliseconds:0.00} ms");
        Assert.InRange(close, 1, 100);
    }

    private static PhotoFingerprint Develop(byte[] file) =>
        Assert.IsType<PhotoAnswer.Copies>(PhotoDeveloper.Develop(PhotoWork.Copies, file)).Figures.Fingerprint!;

    private static IEnumerable<(string Name, int Seed, Image<Rgb24> Picture)> Originals() =>
    [
        .. SceneViews.All.Where(view => view.File[^1] is '1' or '4').Select((view, at) => (view.File, at, Image.Load<Rgb24>(SceneViews.FileOf(view)))),
        .. Enumerable.Range(FirstSeed, Copied).Select(seed => ($"drawn {seed}", seed, WornPicture.Drawn(seed, 1280, 960))),
    ];

    /// <summary>A quarter of them differ in the number, the rest in the wear.</summary>
    private static int Variant(int number, int each) =>
        number < Math.Min(each / 4, WornPicture.Numbers) ? number : FirstSeed + number;

    private static PhotoFingerprint PrintOf(Image<Rgb24> scene, SceneView view, int variant)
    {
        using var worn = WornPicture.Of(scene, FirstSeed + view.Scene.Length, variant);
        return Prints.Of(PictureCopies.Original(worn));
    }
}
