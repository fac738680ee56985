using InspectLog.Photos.Formats;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Processing;

namespace InspectLog.Photos.Imaging;

/// <summary>Makes the copy of a photo that is shown: upright, no larger than asked, nothing but pixels.</summary>
internal static class UprightCopy
{
    private const int Quality = 85;

    /// <exception cref="InvalidDataException">The file cannot be decoded.</exception>
    public static byte[] Make(ReadOnlyMemory<byte> file, Orientation orientation, int longestEdge)
    {
        using var image = SafeDecoder.Decode(file);
        image.Mutate(copy =>
        {
            // Smaller first: everything after it then has fewer pixels to move.
            if (Math.Max(image.Width, image.Height) > longestEdge)
                copy.Resize(new ResizeOptions { Mode = ResizeMode.Max, Size = new Size(longestEdge, longestEdge) });

            var (turn, flip) = ToUpright(orientation);
            copy.RotateFlip(turn, flip).BackgroundColor(Color.White);
        });

        using var jpeg = new MemoryStream();
        image.Save(jpeg, new JpegEncoder { Quality = Quality });
        return jpeg.ToArray();
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
