using System.Text.Json.Serialization;
using InspectLog.Photos.Likeness;

namespace InspectLog.Photos.Developing;

/// <summary>What is told of a photo besides its copies. All of it comes out of the original and can be made again.</summary>
/// <param name="Width">Width in pixels, upright.</param>
/// <param name="Height">Height in pixels, upright.</param>
public sealed record PhotoFigures(int Width, int Height)
{
    /// <summary>How sharp its sharpest part is; null where it has too few edges to tell.</summary>
    public PhotoSharpness? Sharpness { get; init; }

    /// <summary>What is wrong with the light; null where nothing is. Asked of JPEG files only: a PNG is a drawing or a picture
    /// of a screen more often than a photo, and white there is no fault.</summary>
    public LightFault? Light { get; init; }

    /// <summary>What it looks like, to find copies of it; null where it is as good as blank.</summary>
    public PhotoFingerprint? Fingerprint { get; init; }

    /// <summary>What the camera wrote into the file; null where it wrote nothing.</summary>
    public CameraFacts? Camera { get; init; }
}

/// <summary>How sharp the sharpest part of a photo is.</summary>
/// <param name="Value">1 where nothing is sharp, 2 where edges are as sharp as a picture can have them.</param>
/// <param name="Cause">Why it is blurred; null where it is not.</param>
public sealed record PhotoSharpness(double Value, BlurCause? Cause);

/// <summary>Why a photo is blurred.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<BlurCause>))]
public enum BlurCause
{
    /// <summary>Out of focus: edges of every direction are blurred alike.</summary>
    Focus,

    /// <summary>The camera, or what is in the photo, moved.</summary>
    Motion,
}

/// <summary>What is wrong with the light of a photo.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<LightFault>))]
public enum LightFault
{
    /// <summary>Its middle is nearly black.</summary>
    Dark,

    /// <summary>Much of its middle is plain white.</summary>
    Bright,
}
