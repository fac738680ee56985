using InspectLog.Photos.Formats;
using InspectLog.Photos.Imaging;

namespace InspectLog.Photos;

/// <summary>Examines files sent as photos. What a file is called or said to be does not matter; its content decides. No
/// pixel is decoded here: a <see cref="Developing.IPhotoDeveloper"/> does that.</summary>
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
    public const int DisplayEdge = 2048;

    /// <summary>Longest edge of the thumbnail, pixels.</summary>
    public const int ThumbnailEdge = 320;

    /// <summary>Longest edge of the copy for paper, pixels: a page of A4 across at 300 dots an inch, less its margins.</summary>
    public const int PrintEdge = 3300;

    /// <summary>Longest edge of the small copy for paper, pixels: half a page of A4 across at 300 dots an inch.</summary>
    public const int SmallPrintEdge = 1000;

    /// <summary>JPEG quality of the display copy and the thumbnail.</summary>
    public const int DisplayQuality = 85;

    /// <summary>JPEG quality of the small copy for paper: files with a hundred of them are still sent by mail.</summary>
    public const int SmallPrintQuality = 78;

    /// <summary>JPEG quality of the copy for paper.</summary>
    public const int PrintQuality = 90;

    /// <summary>Checks that a file is a whole photo of a format and size taken. Reads its structure and header, and
    /// counts the pixel data of a PNG while unpacking it; no pixel is decoded, whatever size the file claims.</summary>
    public static PhotoResult Examine(ReadOnlyMemory<byte> file) => Look(file, out _);

    /// <summary>Looks at a file as <see cref="Examine"/> does, and gives the structure of one that is taken.</summary>
    internal static PhotoResult Look(ReadOnlyMemory<byte> file, out PhotoStructure.Whole? structure)
    {
        structure = null;
        if (file.IsEmpty)
            return Refusals.Empty;

        var kind = FileKinds.Recognise(file.Span);
        if (kind.AsPhoto() is not { } format)
            return Refusals.OtherFormat(kind);
        if (file.Length > LargestFile)
            return Refusals.FileTooLarge(file.Length);

        switch (PhotoStructure.Read(format, file))
        {
            case PhotoStructure.Whole whole:
                structure = whole;
                return ExamineWhole(whole, file);
            case PhotoStructure.Faulty(var fault):
                return Refusals.Fault(fault);
            case var other:
                throw new InvalidOperationException($"Unknown structure {other}.");
        }
    }

    private static PhotoResult ExamineWhole(PhotoStructure.Whole whole, ReadOnlyMemory<byte> file)
    {
        if (Math.Max(whole.Width, whole.Height) > LongestEdge || (long)whole.Width * whole.Height > MostPixels)
            return Refusals.TooManyPixels(whole.Width, whole.Height);
        if (whole.Png?.Fault() is { } fault)
            return Refusals.Fault(fault);
        if (!SafeDecoder.Identifies(file, whole.Width, whole.Height))
            return Refusals.Fault(StructureFault.Damaged);

        var exif = ExifFacts.Read(whole.Exif);
        var (width, height) = exif.Orientation.SwapsEdges()
            ? (whole.Height, whole.Width)
            : (whole.Width, whole.Height);
        return new PhotoResult.Ok(new PhotoFacts(whole.Format, width, height)
        {
            Camera = exif.Camera,
            Orientation = exif.Orientation,
        });
    }
}
