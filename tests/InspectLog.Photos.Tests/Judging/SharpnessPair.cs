using InspectLog.Photos.Judging;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Tests.Judging;

/// <summary>Two pictures of the same, of which one is sharper: JPEG files with grain.</summary>
/// <param name="Kind">How the other was blurred.</param>
/// <param name="Sharp">The sharper one: all of it, or the part or the ground of it.</param>
/// <param name="Blurred">The other one: nothing in it is as sharp.</param>
internal sealed record SharpnessPair(string Kind, byte[] Sharp, byte[] Blurred)
{
    /// <summary>Makes a pair. Every second one has a part and a ground at different distances.</summary>
    /// <param name="picture">What it is a picture of.</param>
    /// <param name="seed">Which pair.</param>
    public static SharpnessPair Of(LumaPlane picture, int seed)
    {
        var random = new Random(seed * 7919);
        var (blur, kind) = AnyBlur(random);
        var grain = 0.5f + (random.NextSingle() * 2.5f);
        var quality = 80 + random.Next(16);
        return (seed % 4) switch
        {
            1 => Parted(true),
            3 => Parted(false),
            _ => new(kind, Jpeg(picture), Jpeg(blur(picture))),
        };

        SharpnessPair Parted(bool partIsSharp)
        {
            var ellipse = (0.3f + (random.NextSingle() * 0.4f), 0.3f + (random.NextSingle() * 0.4f), 0.25f + (random.NextSingle() * 0.2f), 0.25f + (random.NextSingle() * 0.2f));
            var far = Blur.Defocus(picture, 4 + (random.NextSingle() * 6));
            return partIsSharp
                ? new($"part before blurred ground, {kind}", Jpeg(Blur.Within(picture, far, ellipse)), Jpeg(Blur.Within(blur(picture), far, ellipse)))
                : new($"blurred part before ground, {kind}", Jpeg(Blur.Within(far, picture, ellipse)), Jpeg(Blur.Within(far, blur(picture), ellipse)));
        }

        byte[] Jpeg(LumaPlane plane) => Encoded(plane, random, grain, quality);
    }

    private static (Func<LumaPlane, LumaPlane> Blur, string Kind) AnyBlur(Random random)
    {
        if (random.Next(2) == 0)
        {
            var radius = 1.5f + (random.NextSingle() * 5);
            return (picture => Blur.Defocus(picture, radius), FormattableString.Invariant($"defocus {radius:0.0}"));
        }

        var (length, angle, bend) = (5 + (random.NextSingle() * 20), random.NextSingle() * MathF.PI, (random.NextSingle() - 0.5f) * 0.4f);
        return (picture => Blur.Motion(picture, length, angle, bend), FormattableString.Invariant($"motion {length:0} at {angle * 180 / MathF.PI:0}°"));
    }

    /// <summary>A picture as a JPEG file with a little grain.</summary>
    public static byte[] Encoded(LumaPlane plane, float grain) => Encoded(plane, new Random(1), grain, 90);

    private static byte[] Encoded(LumaPlane plane, Random random, float grain, int quality)
    {
        using var image = new Image<Rgb24>(plane.Width, plane.Height);
        for (var row = 0; row < plane.Height; row++)
        {
            for (var column = 0; column < plane.Width; column++)
            {
                var level = (byte)Math.Clamp(plane.Values[(row * plane.Width) + column] + (grain * Normal(random)), 0, 255);
                image[column, row] = new Rgb24(level, level, level);
            }
        }

        using var file = new MemoryStream();
        image.Save(file, new JpegEncoder { Quality = quality });
        return file.ToArray();
    }

    private static float Normal(Random random) =>
        MathF.Sqrt(-2 * MathF.Log(1 - random.NextSingle())) * MathF.Cos(MathF.Tau * random.NextSingle());
}
