using InspectLog.Photos.Imaging;
using InspectLog.Photos.Judging;
using InspectLog.Photos.Likeness;

namespace InspectLog.Photos.Tests.Likeness;

internal static class Prints
{
    /// <summary>The fingerprint of a photo as developing it makes it, without the copies.</summary>
    public static PhotoFingerprint Of(byte[] file)
    {
        using var photo = OpenedPhoto.Open(file) ?? throw new InvalidDataException("It is no photo.");
        using var judged = photo.CopyWithin(1280);
        return PictureLook.Of(LumaPlane.Of(judged.Pixels)) ?? throw new InvalidDataException("It is blank.");
    }
}
