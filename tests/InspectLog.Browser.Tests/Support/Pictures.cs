using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Browser.Tests.Support;

/// <summary>Photos as a camera would give them.</summary>
internal static class Pictures
{
    public static string TakePhoto(string folder)
    {
        var path = Path.Combine(folder, "photo.jpg");
        using var photo = new Image<Rgb24>(640, 480, new Rgb24(150, 120, 90));
        photo.SaveAsJpeg(path);
        return path;
    }

    /// <summary>A photo of noise, which is some hundred kilobytes and like no other.</summary>
    public static string TakePhoto(string folder, Random chance, int width = 400, int height = 300)
    {
        var path = Path.Combine(folder, "noise.jpg");
        using var photo = new Image<Rgb24>(width, height);
        photo.ProcessPixelRows(rows =>
        {
            for (var row = 0; row < rows.Height; row++)
            {
                foreach (ref var pixel in rows.GetRowSpan(row))
                {
                    pixel = new((byte)chance.Next(256), (byte)chance.Next(256), (byte)chance.Next(256));
                }
            }
        });
        photo.SaveAsJpeg(path);
        return path;
    }
}
