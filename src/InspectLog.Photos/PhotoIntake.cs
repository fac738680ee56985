using InspectLog.Photos.Formats;
using InspectLog.Photos.Imaging;

namespace InspectLog.Photos;

/// <summary>Examines files sent as photos and makes the copies that are shown. What a file is called or said to be does
/// not matter; its content decides.</summary>
/// <remarks>Both methods are thread safe. <see cref="MakeCopy"/> holds the whole picture in memory (four bytes a
/// pixel), so callers make one copy at a time.</remarks>
public static class PhotoIntake
{
    /// <summary>Largest file taken, bytes.</summary>
    public const int LargestFile = 25_000_000;

    /// <summary>Most pixels taken, width times height.</summary>
    public const long MostPixels = 40_000_000;

    /// <summary>Longest edge taken, pixels: a picture one pixel wide and millions high costs far more time than its
    /// area says.</summary>
    public const int LongestEdge = 20_000;

    /// <summary>Longest edge of the display copy, pixels.</summary>
    public const int DisplayEdge = 1600;

    /// <summary>Longest edge of the thumbnail, pixels.</summary>
    public const int ThumbnailEdge = 320;

    /// <summary>Checks that a file is a whole photo of a format and size taken. Reads its structure and header only:
    /// no pixel is decoded, whatever size the file claims.</summary>
    public static PhotoResult Examine(ReadOnlyMemory<byte> file)
    {
        if (file.IsEmpty)
            return Refusals.Empty;

        var kind = FileKinds.Recognise(file.Span);
        if (kind.AsPhoto() is not { } format)
            return Refusals.OtherFormat(kind);
        if (file.Length > LargestFile)
            return Refusals.FileTooLarge(file.Length);

        return PhotoStructure.Read(format, file) switch
        {
            PhotoStructure.Whole whole => ExamineWhole(whole, file),
            PhotoStructure.Faulty(var fault) => Refusals.Fault(fault),
            var other => throw new InvalidOperationException($"Unknown structure {other}."),
        };
    }

    /// <summary>Makes a JPEG copy, upright, with its longest edge at most <paramref name="longestEdge"/>, without any
    /// metadata of the original: no EXIF, XMP, IPTC, location, comment or colour profile. Transparent parts become
    /// white.</summary>
    /// <param name="file">A file that <see cref="Examine"/> accepted.</param>
    /// <param name="longestEdge">Longest edge in pixels, 1 to <see cref="LongestEdge"/>; smaller pictures are not
    /// enlarged.</param>
    /// <exception cref="ArgumentOutOfRangeException">The edge is out of range.</exception>
    /// <exception cref="InvalidDataException">The file cannot be decoded after all.</exception>
    public static byte[] MakeCopy(ReadOnlyMemory<byte> file, int longestEdge)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(longestEdge, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(longestEdge, LongestEdge);

        return Examine(file) switch
        {
            PhotoResult.Ok ok => UprightCopy.Make(file, ok.Facts.Orientation, longestEdge),
            PhotoResult.Refused refused => throw new InvalidDataException(refused.Message),
            var other => throw new InvalidOperationException($"Unknown result {other}."),
        };
    }

    private static PhotoResult ExamineWhole(PhotoStructure.Whole whole, ReadOnlyMemory<byte> file)
    {
        if (Math.Max(whole.Width, whole.Height) > LongestEdge || (long)whole.Width * whole.Height > MostPixels)
            return Refusals.TooManyPixels(whole.Width, whole.Height);
        if (!SafeDecoder.Identifies(file, whole.Width, whole.Height))
            return Refusals.Fault(StructureFault.Damaged);

        var exif = ExifFacts.Read(whole.Exif);
        var (width, height) = exif.Orientation.SwapsEdges()
            ? (whole.Height, whole.Width)
            : (whole.Width, whole.Height);
        return new PhotoResult.Ok(new PhotoFacts(whole.Format, width, height)
        {
            Taken = exif.Taken,
            Orientation = exif.Orientation,
        });
    }
}
