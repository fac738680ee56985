using InspectLog.Photos.Developing;
using InspectLog.Photos.Tests.Support;

namespace InspectLog.Photos.Tests.Judging;

/// <summary>How good the judgement of sharpness is, on drawn pictures that it was not chosen on: the seeds below are none of
/// those that thresholds were looked at with (1000 to 1047).</summary>
public sealed class SharpnessTests(ITestOutputHelper output)
{
    /// <summary>How many pairs; more by hand: <c>INSPECTLOG_PAIRS=400</c>.</summary>
    private static readonly int Pairs =
        int.TryParse(Environment.GetEnvironmentVariable("INSPECTLOG_PAIRS"), System.Globalization.CultureInfo.InvariantCulture, out var pairs) ? pairs : 100;

    private const int FirstSeed = 50_000;

    [Fact]
    [Trait("Takes", "long")]
    public void Sharper_of_two_is_ranked_right_and_a_sharp_one_is_seldom_called_blurred()
    {
        var judged = Enumerable.Range(FirstSeed, Pairs).AsParallel().WithDegreeOfParallelism(2).Select(seed =>
        {
            var pair = SharpnessPair.Of(DrawnPart.Draw(seed, 960, 720), seed);
            return (seed, pair.Kind, Sharp: Judge(pair.Sharp), Blurred: Judge(pair.Blurred));
        }).ToList();

        foreach (var (seed, kind, sharp, blurred) in judged.Where(one => one.Sharp.Value <= one.Blurred.Value || one.Sharp.Cause is not null))
            output.WriteLine($"{seed}, {kind}: sharp {sharp}, blurred {blurred}");
        var right = judged.Count(one => one.Sharp.Value > one.Blurred.Value);
        var wrongly = judged.Count(one => one.Sharp.Cause is not null);
        output.WriteLine($"{right} of {Pairs} ranked right, {wrongly} sharp ones called blurred, {judged.Count(one => one.Blurred.Cause is not null)} blurred ones");
        Assert.True(right >= 0.97 * Pairs, $"{right} of {Pairs} ranked right");
        Assert.True(wrongly <= 0.02 * Pairs, $"{wrongly} of {Pairs} sharp ones called blurred");
    }

    [Fact]
    public void Plainly_blurred_photo_is_called_so_with_the_reason()
    {
        var picture = DrawnPart.Draw(FirstSeed - 1, 960, 720);

        Assert.Null(Judge(SharpnessPair.Encoded(picture, 1)).Cause);
        Assert.Equal(BlurCause.Focus, Judge(SharpnessPair.Encoded(Blur.Defocus(picture, 6), 1)).Cause);
        Assert.Equal(BlurCause.Motion, Judge(SharpnessPair.Encoded(Blur.Motion(picture, 24, 0.4f, 0.05f), 1)).Cause);
    }

    [Fact]
    public void Picture_without_edges_is_not_judged() => Assert.Null(Figures(Pictures.Jpeg(400, 300)).Sharpness);

    [Theory]
    [InlineData(20, LightFault.Dark)]
    [InlineData(128, null)]
    [InlineData(255, LightFault.Bright)]
    public void Light_is_judged_by_the_middle(byte level, LightFault? fault)
    {
        using var image = new SixLabors.ImageSharp.Image<SixLabors.ImageSharp.PixelFormats.Rgb24>(300, 200, new(level, level, level));

        Assert.Equal(fault, Figures(Pictures.Save(image, new SixLabors.ImageSharp.Formats.Jpeg.JpegEncoder())).Light);
    }

    [Fact]
    public void White_drawing_is_not_too_bright()
    {
        using var image = new SixLabors.ImageSharp.Image<SixLabors.ImageSharp.PixelFormats.Rgb24>(300, 200, new(255, 255, 255));

        Assert.Null(Figures(Pictures.Save(image, new SixLabors.ImageSharp.Formats.Png.PngEncoder())).Light);
    }

    private static PhotoSharpness Judge(byte[] file) => Figures(file).Sharpness ?? new(0, null);

    private static PhotoFigures Figures(byte[] file) =>
        Assert.IsType<PhotoAnswer.Copies>(PhotoDeveloper.Develop(PhotoWork.Copies, file)).Figures;
}
