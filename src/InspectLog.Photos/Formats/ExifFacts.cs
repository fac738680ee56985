using System.Globalization;
using InspectLog.Photos.Imaging;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;

namespace InspectLog.Photos.Formats;

/// <summary>What is taken from EXIF: which way up, when and by what. Unreadable EXIF is no reason to refuse a photo; it
/// then says nothing.</summary>
internal readonly record struct ExifFacts(Orientation Orientation, CameraFacts? Camera)
{
    private static readonly ExifFacts None = new(Orientation.Upright, null);

    /// <param name="exif">The TIFF structure, without the "Exif" mark before it.</param>
    public static ExifFacts Read(ReadOnlyMemory<byte> exif)
    {
        if (exif.IsEmpty)
            return None;
        try
        {
            var profile = new ExifProfile(exif.ToArray());
            return new ExifFacts(OrientationOf(profile), CameraReading.Of(profile, TakenOf(profile)));
        }
        catch (Exception problem) when (SafeDecoder.IsFaultOfTheFile(problem))
        {
            return None;
        }
    }

    private static Orientation OrientationOf(ExifProfile profile)
    {
        // Typed as a short by the standard; some writers use another integer type, and then Value is not a ushort.
        object? value = ((IExifValue?)profile.GetValue(ExifTag.Orientation))?.GetValue();
        var number = value is IConvertible ? Convert.ToDouble(value, CultureInfo.InvariantCulture) : 0;
        return number is >= 1 and <= 8 ? (Orientation)(int)number : Orientation.Upright;
    }

    private static DateTime? TakenOf(ExifProfile profile) =>
        Parse(profile.GetValue(ExifTag.DateTimeOriginal)?.Value)
        ?? Parse(profile.GetValue(ExifTag.DateTimeDigitized)?.Value);

    // A camera whose clock was never set writes zeros or blanks, which are no date.
    private static DateTime? Parse(string? text) =>
        DateTime.TryParseExact(
            text?.TrimEnd('\0', ' '),
            "yyyy:MM:dd HH:mm:ss",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var time)
            ? time
            : null;
}
