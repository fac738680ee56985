using System.Globalization;
using InspectLog.Photos.Formats;

namespace InspectLog.Photos;

/// <summary>What the person who sent a file is told when it is not taken.</summary>
internal static class Refusals
{
    public static readonly PhotoResult.Refused Empty =
        new(PhotoProblem.Empty, "The file is empty. Choose the photo again, or take it again.");

    public static PhotoResult.Refused OtherFormat(FileKind kind) => new(PhotoProblem.OtherFormat, kind switch
    {
        FileKind.Heic =>
            "This is a HEIC photo, which only some programs can read. Send it as a JPEG. To have the phone take JPEG " +
            "from now on, look in the settings of its camera for the picture format and choose JPEG, or the most " +
            "compatible one; or share the photo from the phone's gallery as a JPEG.",
        FileKind.Avif => Convert("an AVIF picture"),
        FileKind.JpegXl => Convert("a JPEG XL picture"),
        FileKind.Jpeg2000 => Convert("a JPEG 2000 picture"),
        FileKind.WebP => Convert("a WebP picture"),
        FileKind.Gif => Convert("a GIF picture"),
        FileKind.Bmp => Convert("a BMP picture"),
        FileKind.Svg => Convert("an SVG drawing"),
        FileKind.Tiff =>
            "This is a TIFF picture or a camera's raw file. Only JPEG and PNG photos are taken. Set the camera to " +
            "JPEG, or open the file in a picture program and export it as a JPEG.",
        FileKind.Pdf =>
            "This is a PDF document, not a photo. Take a photo of the page, or export the page as a JPEG.",
        FileKind.Video => "This is a video. Take a still photo instead, or export one picture of it as a JPEG.",
        _ => "This file is not a photo. Choose a JPEG or PNG photo.",
    });

    public static PhotoResult.Refused FileTooLarge(long bytes) => new(
        PhotoProblem.FileTooLarge,
        string.Create(
            CultureInfo.InvariantCulture,
            $"The photo has {Math.Ceiling(bytes / 1e5) / 10:0.0} MB; at most {PhotoIntake.LargestFile / 1_000_000} " +
            $"MB are taken. Set the camera to a smaller picture size, or send the photo in a smaller size."));

    public static PhotoResult.Refused TooManyPixels(int width, int height) => new(
        PhotoProblem.TooManyPixels,
        string.Create(
            CultureInfo.InvariantCulture,
            $"The picture is {width} by {height} pixels. At most {PhotoIntake.MostPixels / 1_000_000} megapixels are " +
            $"taken, and at most {PhotoIntake.LongestEdge} pixels along an edge. Set the camera to 12 megapixels, or " +
            $"send the photo in a smaller size."));

    public static PhotoResult.Refused Fault(StructureFault fault) => fault switch
    {
        StructureFault.EndsEarly => new(
            PhotoProblem.Broken, "The photo is not whole: the file ends early. Send it again, or take it again."),
        StructureFault.PixelsMissing => new(
            PhotoProblem.Broken,
            "The photo is not whole: part of the picture is missing in the file. Send it again, or take it again."),
        StructureFault.RareCoding => new(
            PhotoProblem.OtherFormat,
            "This picture is stored in a rare way that cannot be shown here. Open it in a picture program and save it " +
            "as an ordinary JPEG."),
        _ => new(
            PhotoProblem.Broken, "The photo is damaged and cannot be shown. Send it again, or take it again."),
    };

    private static string Convert(string what) =>
        $"This is {what}. Only JPEG and PNG photos are taken. Open it in a picture program and save it as a JPEG.";
}
