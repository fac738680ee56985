namespace InspectLog.Photos;

/// <summary>Examines files sent as photos and makes the copies that are shown.</summary>
public static class PhotoIntake
{
    /// <summary>Largest file taken, bytes.</summary>
    public const int LargestFile = 25_000_000;

    /// <summary>Most pixels taken, width times height.</summary>
    public const long MostPixels = 40_000_000;

    /// <summary>Longest edge of the display copy, pixels.</summary>
    public const int DisplayEdge = 1600;

    /// <summary>Longest edge of the thumbnail, pixels.</summary>
    public const int ThumbnailEdge = 320;

    /// <summary>Checks that a file is a whole photo of a format and size taken.</summary>
    public static PhotoResult Examine(ReadOnlyMemory<byte> file) => throw new NotSupportedException("Photos room");

    /// <summary>Makes a JPEG copy, upright, with its longest edge at most <paramref name="longestEdge"/>, without any
    /// metadata of the original.</summary>
    /// <param name="file">A file that <see cref="Examine"/> accepted.</param>
    /// <param name="longestEdge">Longest edge in pixels; smaller pictures are not enlarged.</param>
    /// <exception cref="InvalidDataException">The file cannot be decoded after all.</exception>
    public static byte[] MakeCopy(ReadOnlyMemory<byte> file, int longestEdge) =>
        throw new NotSupportedException("Photos room");
}
