using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.Metadata.Profiles.Icc;
using SixLabors.ImageSharp.Metadata.Profiles.Iptc;
using SixLabors.ImageSharp.Metadata.Profiles.Xmp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Tests.Support;

/// <summary>Real picture files, made in the test.</summary>
internal static class Pictures
{
    public const string CameraMaker = "Pinhole Works of Nowhere";

    public static byte[] Jpeg(int width = 48, int height = 32) =>
        Save(Gradient(width, height), new JpegEncoder { Quality = 90 });

    public static byte[] Png(int width = 48, int height = 32) =>
        Save(Gradient(width, height), new PngEncoder());

    /// <summary>A JPEG with all a phone writes into it: orientation, time, place, XMP, IPTC, colour profile.</summary>
    public static byte[] PhoneJpeg(ushort orientation = 1, int width = 48, int height = 32) =>
        Save(WithMetadata(Gradient(width, height), orientation), new JpegEncoder { Quality = 90 });

    public static byte[] PhonePng(ushort orientation = 1, int width = 48, int height = 32) =>
        Save(WithMetadata(Gradient(width, height), orientation), new PngEncoder());

    public static byte[] JpegWithExif(Action<ExifProfile> fill)
    {
        var image = Gradient(48, 32);
        image.Metadata.ExifProfile = new ExifProfile();
        fill(image.Metadata.ExifProfile);
        return Save(image, new JpegEncoder { Quality = 90 });
    }

    public static Image<Rgba32> Gradient(int width, int height)
    {
        var image = new Image<Rgba32>(width, height);
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
                image[x, y] = new Rgba32((byte)(255 * x / width), (byte)(255 * y / height), 96);
        return image;
    }

    public static byte[] Save(Image image, IImageEncoder encoder)
    {
        using (image)
        {
            using var file = new MemoryStream();
            image.Save(file, encoder);
            return file.ToArray();
        }
    }

    private static Image<Rgba32> WithMetadata(Image<Rgba32> image, ushort orientation)
    {
        var exif = new ExifProfile();
        exif.SetValue(ExifTag.Orientation, orientation);
        exif.SetValue(ExifTag.Make, CameraMaker);
        exif.SetValue(ExifTag.DateTimeOriginal, "2025:05:03 14:07:09");
        exif.SetValue(ExifTag.GPSLatitudeRef, "N");
        exif.SetValue(ExifTag.GPSLatitude, [new Rational(12), new Rational(34), new Rational(56)]);
        image.Metadata.ExifProfile = exif;
        image.Metadata.XmpProfile = new XmpProfile(
            "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">by Tess Okafor</x:xmpmeta>"u8.ToArray());
        image.Metadata.IptcProfile = new IptcProfile();
        image.Metadata.IptcProfile.SetValue(IptcTag.Byline, "Tess Okafor");
        image.Metadata.IccProfile = new IccProfile(new byte[256]);
        return image;
    }
}
