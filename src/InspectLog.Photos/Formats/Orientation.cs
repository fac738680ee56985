namespace InspectLog.Photos.Formats;

/// <summary>Where the first row and the first column of the stored picture belong when it is shown (EXIF tag 0x0112,
/// values 1 to 8 as in the standard).</summary>
internal enum Orientation
{
    Upright = 1,
    Mirrored = 2,
    UpsideDown = 3,
    MirroredUpsideDown = 4,
    MirroredOnItsLeft = 5,
    OnItsLeft = 6,
    MirroredOnItsRight = 7,
    OnItsRight = 8,
}

internal static class Orientations
{
    /// <summary>Whether width and height change places when the picture is turned upright.</summary>
    public static bool SwapsEdges(this Orientation orientation) => orientation >= Orientation.MirroredOnItsLeft;
}
