using InspectLog.Photos.Judging;
using InspectLog.Photos.Tests.Judging;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Tests.Likeness;

/// <summary>Pictures of the same part from the same stand in the same light, in which only a worn spot or a number differs.
/// </summary>
internal static class WornPicture
{
    /// <summary>Variants of which the number differs, before those of which the wear differs.</summary>
    public const int Numbers = 100;

    private const int Samples = 3;

    /// <summary>The segments of the figures 0 to 9: top, upper left, upper right, middle, lower left, lower right, bottom.</summary>
    private static readonly string[] Figures = ["1110111", "0010010", "1011101", "1011011", "0111010", "1101011", "1101111", "1010010", "1111111", "1111011"];

    /// <summary>A drawn part as a picture with a little grain.</summary>
    public static Image<Rgb24> Drawn(int seed, int width, int height) => Coloured(DrawnPart.Draw(seed, width, height), seed);

    /// <summary>A variant of a picture: a tag with another number on it, or other wear. About 3 to 6 % of its width.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="spot">Where the wear or the tag is, by a seed: the same for all variants.</param>
    /// <param name="variant">Which variant: below 100 the number, from then on the wear.</param>
    public static Image<Rgb24> Of(Image<Rgb24> picture, int spot, int variant)
    {
        var random = new Random(spot);
        var (x, y) = (0.2f + (random.NextSingle() * 0.6f), 0.2f + (random.NextSingle() * 0.6f));
        var copy = picture.Clone();
        if (variant < Numbers)
            Tag(copy, x * picture.Width, y * picture.Height, (0.03f + (random.NextSingle() * 0.015f)) * picture.Width, variant);
        else
            Blotch(copy, x * picture.Width, y * picture.Height, variant);
        return copy;
    }

    private static Image<Rgb24> Coloured(LumaPlane plane, int seed)
    {
        var random = new Random(seed);
        var image = new Image<Rgb24>(plane.Width, plane.Height);
        for (var row = 0; row < plane.Height; row++)
            for (var column = 0; column < plane.Width; column++)
            {
                var level = plane.Values[(row * plane.Width) + column] + ((random.NextSingle() - 0.5f) * 6);
                image[column, row] = new(Byte(level * 1.02f), Byte(level), Byte(level * 0.94f));
            }

        return image;
    }

    /// <summary>A light tag with a number of two figures in segments, so that many numbers differ in one segment only.</summary>
    private static void Tag(Image<Rgb24> picture, float middleX, float middleY, float height, int number)
    {
        var figure = height * 0.55f;
        Paint(picture, middleX, middleY, height * 1.1f, (x, y) => MathF.Abs(x) < height && MathF.Abs(y) < height * 0.75f ? 1 : 0, new(205, 192, 150));
        Paint(picture, middleX, middleY, height * 1.1f, (x, y) =>
            Ink(Figures[number / 10], x + (figure * 0.75f), y, figure, height) + Ink(Figures[number % 10], x - (figure * 0.75f), y, figure, height), new(30, 28, 26));
    }

    private static float Ink(string segments, float x, float y, float width, float height)
    {
        var (half, tall, thick) = (width / 2, height / 2, height * 0.07f);
        return (On(0, -half, -tall, half, -tall) || On(1, -half, -tall, -half, 0) || On(2, half, -tall, half, 0) || On(3, -half, 0, half, 0)
            || On(4, -half, 0, -half, tall) || On(5, half, 0, half, tall) || On(6, -half, tall, half, tall)) ? 1 : 0;

        bool On(int segment, float left, float top, float right, float bottom) => segments[segment] == '1'
            && x > left - thick && x < right + thick && y > top - thick && y < bottom + thick;
    }

    /// <summary>A burnt or corroded spot of uneven outline: dark on what is light, light on what is dark.</summary>
    private static void Blotch(Image<Rgb24> picture, float middleX, float middleY, int seed)
    {
        var random = new Random(seed);
        var speckle = new DrawnPart.Speckle(random);
        var radius = (0.014f + (random.NextSingle() * 0.018f)) * picture.Width;
        var (depth, shiftX, shiftY) = (0.5f + (random.NextSingle() * 0.4f), (random.NextSingle() - 0.5f) * radius, (random.NextSingle() - 0.5f) * radius);
        var under = picture[(int)middleX, (int)middleY];
        var isLight = (0.3f * under.R) + (0.6f * under.G) + (0.1f * under.B) > 95;
        Paint(picture, middleX + shiftX, middleY + shiftY, radius * 1.6f, (x, y) =>
        {
            var edge = MathF.Sqrt((x * x) + (y * y)) / radius;
            var uneven = speckle.At((x / radius * 2.2f) + 20, (y / radius * 2.2f) + 20);
            return depth * Math.Clamp((1.05f - edge + (0.45f * uneven)) * 4, 0, 1);
        }, isLight ? new(34, 30, 27) : new(176, 190, 172));
    }

    /// <summary>Paints a shape, given by how much of it is at a place beside its middle.</summary>
    private static void Paint(Image<Rgb24> picture, float middleX, float middleY, float reach, Func<float, float, float> shape, Rgb24 colour)
    {
        for (var row = Math.Max(0, (int)(middleY - reach)); row <= Math.Min(picture.Height - 1, (int)(middleY + reach) + 1); row++)
            for (var column = Math.Max(0, (int)(middleX - reach)); column <= Math.Min(picture.Width - 1, (int)(middleX + reach) + 1); column++)
            {
                var part = 0f;
                for (var sample = 0; sample < Samples * Samples; sample++)
                    part += shape(column + (((sample % Samples) + 0.5f) / Samples) - middleX, row + (((sample / Samples) + 0.5f) / Samples) - middleY);
                part /= Samples * Samples;
                var was = picture[column, row];
                picture[column, row] = new(Byte(was.R + (part * (colour.R - was.R))), Byte(was.G + (part * (colour.G - was.G))), Byte(was.B + (part * (colour.B - was.B))));
            }
    }

    private static byte Byte(float level) => (byte)Math.Clamp(level + 0.5f, 0, 255);
}
