using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace InspectLog.Photos.Tests.Likeness;

/// <summary>What becomes of a picture that is handed on: JPEG files.</summary>
internal static class PictureCopies
{
    /// <summary>More than is asked for: cropped, brightened, resized and saved badly.</summary>
    public const string AllOfIt = "all of it";

    /// <summary>As a camera saves it.</summary>
    public static byte[] Original(Image<Rgb24> picture) => Saved(picture, 90);

    /// <summary>Every kind of copy, with its name.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="random">Where it is cropped.</param>
    public static IEnumerable<(string Kind, byte[] File)> All(Image<Rgb24> picture, Random random)
    {
        yield return ("re-saved, quality 50", Saved(picture, 50));
        yield return ("resized to 25 %", Saved(picture, 85, copy => copy.Resize(picture.Width / 4, picture.Height / 4)));
        yield return ("cropped by 5 %", Saved(picture, 85, copy => copy.Crop(Cropped(picture.Size(), random))));
        yield return ("brightened by 10 %", Saved(picture, 85, copy => copy.Brightness(1.1f)));
        yield return (AllOfIt, Saved(picture, 50, copy => copy.Crop(Cropped(picture.Size(), random)).Brightness(1.1f).Resize(picture.Width / 4, 0)));
    }

    /// <summary>A twentieth of the width and of the height is gone, from one side or both.</summary>
    private static Rectangle Cropped(Size size, Random random)
    {
        var (width, height) = ((int)(size.Width * 0.95), (int)(size.Height * 0.95));
        return new(random.Next(size.Width - width + 1), random.Next(size.Height - height + 1), width, height);
    }

    private static byte[] Saved(Image<Rgb24> picture, int quality, Action<IImageProcessingContext>? change = null)
    {
        using var copy = picture.Clone(change ?? (_ => { }));
        using var file = new MemoryStream();
        copy.Save(file, new JpegEncoder { Quality = quality });
        return file.ToArray();
    }
}
