using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Alignment;

/// <summary>A picture with brightness and contrast evened out place by place, so that other light matters little: how many
/// deviations of its surroundings a pixel is above their mean.</summary>
internal static class EvenedPicture
{
    /// <summary>Surroundings: pixels from the middle, as a deviation.</summary>
    private const int Surroundings = 3;

    /// <summary>Contrast that is grain and no more, on a scale of 255.</summary>
    private const float Grain = 4;

    private const float Most = 2.5f;

    public static LumaPlane Of(LumaPlane plane)
    {
        var means = Smoothing.Of(plane, Surroundings);
        var left = new float[plane.Values.Length];
        for (var at = 0; at < left.Length; at++)
            left[at] = plane.Values[at] - means.Values[at];
        var squares = Smoothing.Of(new(plane.Width, plane.Height, [.. left.Select(value => value * value)]), Surroundings);
        for (var at = 0; at < left.Length; at++)
            left[at] = Math.Clamp(left[at] / MathF.Sqrt(squares.Values[at] + (Grain * Grain)), -Most, Most);
        return new(plane.Width, plane.Height, left);
    }
}
