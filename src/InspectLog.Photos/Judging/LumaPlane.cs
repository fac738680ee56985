using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Judging;

/// <summary>The brightness of a picture, pixel by pixel, 0 to 255: luma of ITU-R BT.601, as JPEG uses it.</summary>
/// <param name="Width">Width, pixels.</param>
/// <param name="Height">Height, pixels.</param>
/// <param name="Values">Row by row.</param>
internal sealed record LumaPlane(int Width, int Height, float[] Values)
{
    public static LumaPlane Of(Image<Rgb24> picture)
    {
        var values = new float[picture.Width * picture.Height];
        picture.ProcessPixelRows(rows =>
        {
            for (var row = 0; row < rows.Height; row++)
            {
                var pixels = rows.GetRowSpan(row);
                var line = values.AsSpan(row * pixels.Length, pixels.Length);
                for (var column = 0; column < line.Length; column++)
                    line[column] = (0.299f * pixels[column].R) + (0.587f * pixels[column].G) + (0.114f * pixels[column].B);
            }
        });
        return new(picture.Width, picture.Height, values);
    }

    public ReadOnlySpan<float> Row(int row) => Values.AsSpan(row * Width, Width);
}
