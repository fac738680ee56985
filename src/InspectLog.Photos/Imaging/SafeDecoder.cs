using System.Runtime.InteropServices;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Memory;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Imaging;

/// <summary>The image library with everything switched off that photos do not need: two formats, no metadata, a bound
/// on each allocation.</summary>
internal static class SafeDecoder
{
    // The largest single buffer for 40 megapixels is four bytes a pixel, 160 MB.
    private const int AllocationLimitMegabytes = 256;
    private const int PoolMegabytes = 64;

    // Metadata is skipped by the decoders, not only left out of copies: compressed text and colour profiles in a PNG
    // can unpack to any size.
    private static readonly Configuration OnlyPhotos = MakeConfiguration();

    /// <summary>Whether the decoder finds a picture of this size in the header. Decodes no pixel.</summary>
    public static bool Identifies(ReadOnlyMemory<byte> file, int width, int height)
    {
        try
        {
            var info = Image.Identify(OnlyPhotos, AsStream(file));
            return info is not null && info.Width == width && info.Height == height;
        }
        catch (Exception problem) when (IsFaultOfTheFile(problem))
        {
            return false;
        }
    }

    /// <summary>Decodes the whole picture of a JPEG, which is opaque.</summary>
    /// <exception cref="InvalidDataException">It cannot be decoded.</exception>
    public static Image<Rgb24> DecodeJpeg(ReadOnlyMemory<byte> file) => Decode<Rgb24>(file);

    /// <summary>Decodes the whole picture of a PNG, which may be transparent.</summary>
    /// <exception cref="InvalidDataException">It cannot be decoded.</exception>
    public static Image<Rgba32> DecodePng(ReadOnlyMemory<byte> file) => Decode<Rgba32>(file);

    private static Image<T> Decode<T>(ReadOnlyMemory<byte> file)
        where T : unmanaged, IPixel<T>
    {
        try
        {
            return Image.Load<T>(OnlyPhotos, AsStream(file));
        }
        catch (Exception problem) when (IsFaultOfTheFile(problem))
        {
            throw new InvalidDataException("The photo is damaged and cannot be shown.", problem);
        }
    }

    /// <summary>Whether an exception out of the library can be laid to the bytes it was given. On hostile bytes it
    /// throws more kinds than it declares (index out of range, overflow, null reference), so only those that tell of
    /// the machine or of being stopped are left to pass.</summary>
    public static bool IsFaultOfTheFile(Exception problem) =>
        problem is not (OutOfMemoryException or OperationCanceledException);

    private static Configuration MakeConfiguration()
    {
        var configuration = new Configuration(new JpegConfigurationModule(), new PngConfigurationModule())
        {
            MemoryAllocator = MemoryAllocator.Create(new MemoryAllocatorOptions
            {
                AllocationLimitMegabytes = AllocationLimitMegabytes,
                MaximumPoolSizeMegabytes = PoolMegabytes,
            }),

            // Several photos are developed at once, each on a core of its own.
            MaxDegreeOfParallelism = 1,
        };
        configuration.ImageFormatsManager.SetDecoder(JpegFormat.Instance, new JpegDecoder { IgnoreMetadata = true });
        configuration.ImageFormatsManager.SetDecoder(PngFormat.Instance, new PngDecoder { IgnoreMetadata = true });
        return configuration;
    }

    private static MemoryStream AsStream(ReadOnlyMemory<byte> file) =>
        MemoryMarshal.TryGetArray(file, out var segment)
            ? new MemoryStream(segment.Array!, segment.Offset, segment.Count, writable: false)
            : new MemoryStream(file.ToArray(), writable: false);
}
