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
}
