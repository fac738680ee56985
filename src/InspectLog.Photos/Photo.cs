using InspectLog.Photos.Formats;

namespace InspectLog.Photos;

/// <summary>What is known of a photo that was taken in. The original bytes are never changed.</summary>
/// <param name="Format">File format.</param>
/// <param name="Width">Width in pixels, as it is shown upright.</param>
/// <param name="Height">Height in pixels, as it is shown upright.</param>
public sealed record PhotoFacts(PhotoFormat Format, int Width, int Height)
{
    /// <summary>When the camera says the photo was taken; null where the file does not say.</summary>
    public DateTime? Taken => Camera?.Taken;

    /// <summary>What the camera wrote into the file; null where it wrote nothing.</summary>
    public CameraFacts? Camera { get; init; }

    /// <summary>How the stored picture has to be turned to be upright.</summary>
    internal Orientation Orientation { get; init; } = Orientation.Upright;
}

/// <summary>The formats taken.</summary>
public enum PhotoFormat
{
    /// <summary>JPEG (ISO/IEC 10918-1).</summary>
    Jpeg,

    /// <summary>PNG (ISO/IEC 15948).</summary>
    Png,
}

/// <summary>A photo, or why the file is none.</summary>
public abstract record PhotoResult
{
    private PhotoResult()
    {
    }

    /// <summary>The file is a whole photo of a format and size taken.</summary>
    public sealed record Ok(PhotoFacts Facts) : PhotoResult;

    /// <summary>The file was refused.</summary>
    /// <param name="Problem">What is wrong.</param>
    /// <param name="Message">What is wrong and what to do, for the person who sent it.</param>
    public sealed record Refused(PhotoProblem Problem, string Message) : PhotoResult;
}

/// <summary>Why a file is not a photo the program takes.</summary>
public enum PhotoProblem
{
    /// <summary>No bytes.</summary>
    Empty,

    /// <summary>Neither JPEG nor PNG, or a rare kind of them that browsers do not show either.</summary>
    OtherFormat,

    /// <summary>More bytes than <see cref="PhotoIntake.LargestFile"/>.</summary>
    FileTooLarge,

    /// <summary>More pixels than <see cref="PhotoIntake.MostPixels"/>, or an edge longer than
    /// <see cref="PhotoIntake.LongestEdge"/>.</summary>
    TooManyPixels,

    /// <summary>The file ends early or its content is broken.</summary>
    Broken,
}
