using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Alignment;

/// <summary>A small picture in shades of grey.</summary>
/// <param name="Width">Width, pixels.</param>
/// <param name="Height">Height, pixels.</param>
/// <param name="Values">Brightness 0 to 255, row by row.</param>
public sealed record GreyPicture(int Width, int Height, byte[] Values)
{
    internal static GreyPicture Of(LumaPlane plane) =>
        new(plane.Width, plane.Height, [.. plane.Values.Select(value => (byte)Math.Clamp(MathF.Round(value), 0, 255))]);

    internal LumaPlane Plane => new(Width, Height, [.. Values.Select(value => (float)value)]);
}
