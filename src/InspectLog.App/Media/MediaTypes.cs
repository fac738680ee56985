using InspectLog.Photos;

namespace InspectLog.App.Media;

/// <summary>Media types of what is kept.</summary>
public static class MediaTypes
{
    public const string Wav = "audio/wav";
    public const string Jpeg = "image/jpeg";
    public const string Png = "image/png";

    public static string Of(PhotoFormat format) => format == PhotoFormat.Png ? Png : Jpeg;
}
