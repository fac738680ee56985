using InspectLog.Photos.Formats;
using SixLabors.ImageSharp;

namespace InspectLog.Photos.Imaging;

/// <summary>A photo that was looked at and decoded, once.</summary>
internal sealed class OpenedPhoto : IDisposable
{
    private readonly Image _pixels;

    private OpenedPhoto(PhotoFacts facts, Image pixels) => (Facts, _pixels) = (facts, pixels);

    /// <summary>What examining it gave.</summary>
    public PhotoFacts Facts { get; }

    /// <summary>Decodes a file; null where it is no photo that is taken.</summary>
    /// <exception cref="InvalidDataException">It cannot be decoded.</exception>
    public static OpenedPhoto? Open(ReadOnlyMemory<byte> file) => PhotoIntake.Look(file, out var structure) is PhotoResult.Ok ok
        ? new(ok.Facts, structure?.Png is { } png ? SafeDecoder.DecodePng(png.Plain()) : SafeDecoder.DecodeJpeg(file))
        : null;

    /// <summary>The copy that fits an edge, pixels. To be called once: it uses the decoded pixels up.</summary>
    public UprightCopy CopyWithin(int longestEdge) => UprightCopy.Of(_pixels, Facts.Orientation, longestEdge);

    public void Dispose() => _pixels.Dispose();
}
