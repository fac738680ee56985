using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Tests.Judging;

/// <summary>Draws pictures of parts that do not exist, by a seed: discs, rings, bars, wires and lettering of strokes on a
/// speckled ground. Ours, and as sharp as a picture of so many pixels can be.</summary>
internal static class DrawnPart
{
    private const int Samples = 3;

    /// <summary>Draws one.</summary>
    /// <param name="seed">Which.</param>
    /// <param name="width">Width, pixels.</param>
    /// <param name="height">Height, pixels.</param>
    public static LumaPlane Draw(int seed, int width, int height)
    {
        var random = new Random(seed);
        var grain = new Speckle(random);
        var high = new float[width * Samples * height * Samples];
        var scale = (float)(height * Samples);
        Ground(high, width * Samples, random, grain);
        var shapes = Enumerable.Range(0, random.Next(14, 40)).Select(_ => Shape.Any(random, (float)width / height)).ToList();
        foreach (var shape in shapes)
            shape.DrawOn(high, width * Samples, scale, grain);
        return Shrink(high, width, height);
    }

    private static void Ground(float[] high, int width, Random random, Speckle grain)
    {
        var (level, slopeX, slopeY, rough) = (60 + random.Next(120), random.NextSingle() - 0.5f, random.NextSingle() - 0.5f, random.NextSingle() * 30);
        var height = high.Length / width;
        for (var at = 0; at < high.Length; at++)
        {
            var (x, y) = ((float)(at % width) / width, (float)(at / width) / height);
            high[at] = level + (60 * ((slopeX * x) + (slopeY * y))) + (rough * grain.At(x * 40, y * 40));
        }
    }

    private static LumaPlane Shrink(float[] high, int width, int height)
    {
        var values = new float[width * height];
        for (var row = 0; row < height * Samples; row++)
            for (var column = 0; column < width * Samples; column++)
                values[(row / Samples * width) + (column / Samples)] += high[(row * width * Samples) + column] / (Samples * Samples);
        for (var at = 0; at < values.Length; at++)
            values[at] = Math.Clamp(values[at], 4, 250);
        return new(width, height, values);
    }

    /// <summary>Smooth random unevenness between -1 and 1.</summary>
    internal sealed class Speckle(Random random)
    {
        private readonly float[] _values = [.. Enumerable.Range(0, 64 * 64).Select(_ => (random.NextSingle() * 2) - 1)];

        public float At(float x, float y)
        {
            var (left, top) = ((int)MathF.Floor(x), (int)MathF.Floor(y));
            var (inX, inY) = (x - left, y - top);
            return (((Value(left, top) * (1 - inX)) + (Value(left + 1, top) * inX)) * (1 - inY))
                + (((Value(left, top + 1) * (1 - inX)) + (Value(left + 1, top + 1) * inX)) * inY);
        }

        private float Value(int x, int y) => _values[((y & 63) * 64) + (x & 63)];
    }

    /// <summary>A bar with round ends, a disc or a ring; in parts of the picture's height.</summary>
    private sealed record Shape(float FromX, float FromY, float ToX, float ToY, float Radius, float Hole, float Level, float Rough, float Shade)
    {
        public static Shape Any(Random random, float aspect)
        {
            var (x, y) = (random.NextSingle() * aspect, random.NextSingle());
            var (level, rough, shade) = (20 + random.Next(215), random.NextSingle() * 25, (random.NextSingle() - 0.5f) * 80);
            switch (random.Next(4))
            {
                case 0:
                    return new(x, y, x, y, 0.03f + (random.NextSingle() * 0.2f), 0, level, rough, shade);
                case 1:
                    var radius = 0.05f + (random.NextSingle() * 0.2f);
                    return new(x, y, x, y, radius, radius * (0.5f + (random.NextSingle() * 0.45f)), level, rough, shade);
                case 2:
                    var (angle, length) = (random.NextSingle() * MathF.Tau, 0.01f + (random.NextSingle() * 0.06f));
                    return new(x, y, x + (length * MathF.Cos(angle)), y + (length * MathF.Sin(angle)), 0.003f + (random.NextSingle() * 0.006f), 0, level, 0, 0);
                default:
                    var (turn, long_) = (random.NextSingle() * MathF.Tau, 0.1f + (random.NextSingle() * 0.7f));
                    return new(x, y, x + (long_ * MathF.Cos(turn)), y + (long_ * MathF.Sin(turn)), 0.006f + (random.NextSingle() * 0.05f), 0, level, rough, shade);
            }
        }

        public void DrawOn(float[] high, int width, float scale, Speckle grain)
        {
            var height = high.Length / width;
            var (left, right) = (At(MathF.Min(FromX, ToX) - Radius, width), At(MathF.Max(FromX, ToX) + Radius, width));
            var (top, bottom) = (At(MathF.Min(FromY, ToY) - Radius, height), At(MathF.Max(FromY, ToY) + Radius, height));
            for (var row = top; row < bottom; row++)
            {
                for (var column = left; column < right; column++)
                {
                    var (x, y) = (column / scale, row / scale);
                    var distance = Distance(x, y);
                    if (distance < Radius && distance >= Hole)
                        high[(row * width) + column] = Level + (Shade * distance / Radius) + (Rough * grain.At(x * 90, y * 90));
                }
            }

            int At(float place, int most) => Math.Clamp((int)(place * scale), 0, most);
        }

        private float Distance(float x, float y)
        {
            var (alongX, alongY) = (ToX - FromX, ToY - FromY);
            var length = (alongX * alongX) + (alongY * alongY);
            var part = length == 0 ? 0 : Math.Clamp((((x - FromX) * alongX) + ((y - FromY) * alongY)) / length, 0, 1);
            return MathF.Sqrt(Square(x - FromX - (part * alongX)) + Square(y - FromY - (part * alongY)));
        }

        private static float Square(float value) => value * value;
    }
}
