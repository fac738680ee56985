using System.Globalization;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;

namespace InspectLog.Photos.Formats;

/// <summary>Reads what a camera wrote of itself. A value that makes no sense is left out.</summary>
internal static class CameraReading
{
    private const int LongestText = 60;
    private const double LongestExposure = 3600;
    private const double LargestNumber = 10_000;
    private static readonly TimeSpan FarthestOffset = TimeSpan.FromHours(14);

    /// <summary>The facts; null where there are none.</summary>
    public static CameraFacts? Of(ExifProfile profile, DateTime? taken)
    {
        var facts = new CameraFacts
        {
            Taken = taken,
            Offset = taken is null ? null : OffsetOf(profile.GetValue(ExifTag.OffsetTimeOriginal)?.Value),
            Maker = Text(profile.GetValue(ExifTag.Make)?.Value),
            Model = Text(profile.GetValue(ExifTag.Model)?.Value),
            Lens = Text(profile.GetValue(ExifTag.LensModel)?.Value),
            Exposure = Number(profile.GetValue(ExifTag.ExposureTime)?.Value, LongestExposure),
            Aperture = Number(profile.GetValue(ExifTag.FNumber)?.Value, LargestNumber),
            Sensitivity = profile.GetValue(ExifTag.ISOSpeedRatings)?.Value is [> 0 and var iso, ..] ? iso : null,
            FocalLength = Number(profile.GetValue(ExifTag.FocalLength)?.Value, LargestNumber),
        };
        return facts == new CameraFacts() ? null : facts;
    }

    private static double? Number(Rational? value, double most) =>
        value?.ToDouble() is { } number && double.IsFinite(number) && number > 0 && number <= most ? number : null;

    /// <summary>A text of one line without signs that do not show; null where nothing is left.</summary>
    private static string? Text(string? value)
    {
        var shown = string.Concat((value ?? "").Where(sign => !char.IsControl(sign) && char.GetUnicodeCategory(sign) is not UnicodeCategory.Format and not UnicodeCategory.Surrogate)).Trim();
        return shown.Length == 0 ? null : shown.Length > LongestText ? shown[..LongestText] : shown;
    }

    /// <summary>"+01:00" as written.</summary>
    private static TimeSpan? OffsetOf(string? text)
    {
        var sign = text is ['-', ..] ? -1 : 1;
        return text is ['+' or '-', ..]
            && TimeSpan.TryParseExact(text[1..].TrimEnd('\0', ' '), @"hh\:mm", CultureInfo.InvariantCulture, out var offset)
            && offset <= FarthestOffset
            ? sign * offset
            : null;
    }
}
