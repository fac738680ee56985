using System.Numerics;

namespace InspectLog.Photos.Judging;

/// <summary>Smooths with binomial weights (1, 4, 6, 4, 1), a near Gaussian of variance 1, along rows and columns.</summary>
internal static class Smoothing
{
    private const int Reach = 2;

    /// <summary>The plane smoothed.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="step">Distance between the pixels taken: its square is the variance.</param>
    public static LumaPlane Of(LumaPlane plane, int step)
    {
        var (width, height) = (plane.Width, plane.Height);
        var across = new float[plane.Values.Length];
        var both = new float[plane.Values.Length];
        for (var row = 0; row < height; row++)
            Across(plane.Row(row), across.AsSpan(row * width, width), step);
        for (var row = 0; row < height; row++)
            Down(across, both.AsSpan(row * width, width), row, height, step);
        return new(width, height, both);
    }

    private static void Across(ReadOnlySpan<float> from, Span<float> to, int step)
    {
        var reach = Reach * step;
        var inner = Math.Max(from.Length - reach, reach);
        for (var at = 0; at < Math.Min(reach, from.Length); at++)
            to[at] = AtEdge(from, at, step);
        if (inner > reach)
        {
            var length = inner - reach;
            Weigh(
                from.Slice(0, length), from.Slice(step, length), from.Slice(reach, length),
                from.Slice(reach + step, length), from.Slice(2 * reach, length), to.Slice(reach, length));
        }

        for (var at = inner; at < from.Length; at++)
            to[at] = AtEdge(from, at, step);
    }

    private static void Down(float[] from, Span<float> to, int row, int height, int step)
    {
        var width = to.Length;
        Weigh(Row(-2), Row(-1), Row(0), Row(1), Row(2), to);

        ReadOnlySpan<float> Row(int steps) => from.AsSpan(Math.Clamp(row + (steps * step), 0, height - 1) * width, width);
    }

    private static float AtEdge(ReadOnlySpan<float> from, int at, int step)
    {
        var last = from.Length - 1;
        return ((6 * from[at])
            + (4 * (from[Math.Clamp(at - step, 0, last)] + from[Math.Clamp(at + step, 0, last)]))
            + from[Math.Clamp(at - (2 * step), 0, last)] + from[Math.Clamp(at + (2 * step), 0, last)]) / 16;
    }

    private static void Weigh(
        ReadOnlySpan<float> a, ReadOnlySpan<float> b, ReadOnlySpan<float> c, ReadOnlySpan<float> d, ReadOnlySpan<float> e, Span<float> to)
    {
        var at = 0;
        for (; at <= to.Length - Vector<float>.Count; at += Vector<float>.Count)
        {
            var outer = new Vector<float>(a[at..]) + new Vector<float>(e[at..]);
            var near = new Vector<float>(b[at..]) + new Vector<float>(d[at..]);
            (((new Vector<float>(c[at..]) * 6) + (near * 4) + outer) * (1f / 16)).CopyTo(to[at..]);
        }

        for (; at < to.Length; at++)
            to[at] = ((6 * c[at]) + (4 * (b[at] + d[at])) + a[at] + e[at]) / 16;
    }
}
