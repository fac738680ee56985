using InspectLog.Photos.Formats;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace InspectLog.Photos.Imaging;

/// <summary>A copy of a photo: upright, opaque, no larger than asked, nothing but pixels.</summary>
internal sealed class UprightCopy : IDisposable
{
    private readonly Image<Rgb24> _pixels;

    private UprightCopy(Image<Rgb24> pixels) => _pixels = pixels;

    /// <summary>Its pixels, to be read.</summary>
    public Image<Rgb24> Pixels => _pixels;

    /// <summary>Makes it of a decoded photo, which is used up.</summary>
    public static UprightCopy Of(Image decoded, Orientation orientation, int longestEdge)
    {
        decoded.Mutate(copy =>
        {
            // Smaller first: everything after it then has fewer pixels to move.
            Shrink(copy, decoded.Size(), longestEdge);
            var (turn, flip) = ToUpright(orientation);
            copy.RotateFlip(turn, flip);
            if (decoded is not Image<Rgb24>)
                copy.BackgroundColor(Color.White);
        });

        if (decoded is Image<Rgb24> opaque)
            return new(opaque);
        using (decoded)
            return new(decoded.CloneAs<Rgb24>());
    }

    /// <summary>A smaller copy of it.</summary>
    public UprightCopy Within(int longestEdge) => new(_pixels.Clone(copy => Shrink(copy, _pixels.Size(), longestEdge)));

    /// <summary>It as a JPEG file.</summary>
    /// <param name="quality">1 to 100.</param>
    public byte[] ToJpeg(int quality)
    {
        using var jpeg = new MemoryStream();
        _pixels.Save(jpeg, new JpegEncoder { Quality = quality });
        return jpeg.ToArray();
    }

    public void Dispose() => _pixels.Dispose();

    private static void Shrink(IImageProcessingContext copy, Size size, int longestEdge)
    {
        if (Math.Max(size.Width, size.Height) > longestEdge)
            copy.Resize(new ResizeOptions { Mode = ResizeMode.Max, Size = new Size(longestEdge, longestEdge) });
    }

    private static (RotateMode Turn, FlipMode Flip) ToUpright(Orientation orientation) => orientation switch
    {
        Orientation.Mirrored => (RotateMode.None, FlipMode.Horizontal),
        Orientation.UpsideDown => (RotateMode.Rotate180, FlipMode.None),
        Orientation.MirroredUpsideDown => (RotateMode.None, FlipMode.Vertical),
        Orientation.MirroredOnItsLeft => (RotateMode.Rotate90, FlipMode.Horizontal),
        Orientation.OnItsLeft => (RotateMode.Rotate90, FlipMode.None),
        Orientation.MirroredOnItsRight => (RotateMode.Rotate270, FlipMode.Horizontal),
        Orientation.OnItsRight => (RotateMode.Rotate270, FlipMode.None),
        _ => (RotateMode.None, FlipMode.None),
    };
}
