using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Likeness;

/// <summary>A picture and smaller ones of it, each half as large.</summary>
internal static class Levels
{
    /// <summary>Half as large: each value is the mean of four. An odd last row or column is left out.</summary>
    public static LumaPlane Half(LumaPlane plane)
    {
        var (width, height) = (plane.Width / 2, plane.Height / 2);
        var values = new float[width * height];
        for (var row = 0; row < height; row++)
        {
            var upper = plane.Row(2 * row);
            var lower = plane.Row((2 * row) + 1);
            for (var column = 0; column < width; column++)
                values[(row * width) + column] = (upper[2 * column] + upper[(2 * column) + 1] + lower[2 * column] + lower[(2 * column) + 1]) / 4;
        }

        return new(width, height, values);
    }
}
