using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Likeness;

/// <summary>Makes the fingerprint of a picture. Pure.</summary>
internal static class PictureLook
{
    /// <summary>Below this spread of its brightness a picture is as good as blank, and looks like every other blank one.</summary>
    private const double LeastSpread = 4;

    /// <summary>The fingerprint; null where the picture is as good as blank.</summary>
    /// <param name="luma">Its brightness, upright.</param>
    public static PhotoFingerprint? Of(LumaPlane luma)
    {
        var look = Shrunk(luma, PhotoFingerprint.Edge);
        if (Spread(look) < LeastSpread)
            return null;
        return new(CoarseSigns.Of(look), [.. look.Values.Select(value => (byte)Math.Clamp(value + 0.5f, 0, 255))]);
    }

    /// <summary>The picture as a square of so many rows and columns; each value is the mean of what it covers.</summary>
    private static LumaPlane Shrunk(LumaPlane luma, int edge)
    {
        var columns = Shares.Of(luma.Width, edge);
        var rows = Shares.Of(luma.Height, edge);
        var values = new float[edge * edge];
        var line = new float[edge];
        for (var row = 0; row < luma.Height; row++)
        {
            Array.Clear(line);
            var from = luma.Row(row);
            for (var column = 0; column < from.Length; column++)
                Share(columns, column, from[column], line, 0, 1);
            for (var column = 0; column < edge; column++)
                Share(rows, row, line[column], values, column, edge);
        }

        return new(edge, edge, values);
    }

    private static void Share(Shares shares, int at, float value, float[] to, int offset, int step)
    {
        var first = shares.First[at];
        for (var part = 0; part < shares.Weights[at].Length; part++)
            to[((first + part) * step) + offset] += shares.Weights[at][part] * value;
    }

    private static double Spread(LumaPlane plane)
    {
        var mean = plane.Values.Average();
        return Math.Sqrt(plane.Values.Average(value => (value - mean) * (value - mean)));
    }

    /// <summary>Which of so many equal parts of a line each pixel belongs to, and by how much of the part it fills.</summary>
    private sealed record Shares(int[] First, float[][] Weights)
    {
        public static Shares Of(int length, int parts)
        {
            var first = new int[length];
            var weights = new float[length][];
            var scale = (double)parts / length;
            for (var at = 0; at < length; at++)
            {
                var (from, to) = (at * scale, Math.Min((at + 1) * scale, parts));
                first[at] = Math.Min((int)from, parts - 1);
                var last = Math.Clamp((int)Math.Ceiling(to) - 1, first[at], parts - 1);
                weights[at] = new float[last - first[at] + 1];
                for (var part = 0; part < weights[at].Length; part++)
                {
                    var (left, right) = (Math.Max(from, first[at] + part), Math.Min(to, first[at] + part + 1));
                    weights[at][part] = (float)Math.Max(0, right - left);
                }
            }

            return new(first, weights);
        }
    }
}
