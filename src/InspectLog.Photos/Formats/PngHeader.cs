using System.Buffers.Binary;

namespace InspectLog.Photos.Formats;

/// <summary>The header of a PNG and what it demands of the pixel data (W3C PNG Third Edition, 11.2.1).</summary>
/// <param name="Width">Width, pixels.</param>
/// <param name="Height">Height, pixels.</param>
/// <param name="Depth">Bits a sample.</param>
/// <param name="Samples">Samples a pixel: one for greys and palettes, three for colours, one more with alpha.</param>
/// <param name="IsInterlaced">Whether the pixels come in the seven passes of Adam7.</param>
internal readonly record struct PngHeader(int Width, int Height, int Depth, int Samples, bool IsInterlaced)
{
    private const int Length = 13;

    /// <summary>First row and column of each pass and the steps between them (W3C PNG Third Edition, 8).</summary>
    private static readonly (int Row, int Column, int Down, int Across)[] Adam7 =
        [(0, 0, 8, 8), (0, 4, 8, 8), (4, 0, 8, 4), (0, 2, 4, 4), (2, 0, 4, 2), (0, 1, 2, 2), (1, 0, 2, 1)];

    /// <summary>The header; null where it is none that the standard allows.</summary>
    public static PngHeader? Read(ReadOnlySpan<byte> data)
    {
        if (data.Length != Length)
            return null;

        var (depth, colour, interlace) = (data[8], data[9], data[12]);
        var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(data), BinaryPrimitives.ReadInt32BigEndian(data[4..]));
        var samples = SamplesOf(colour, depth);
        return width > 0 && height > 0 && samples > 0 && data[10] == 0 && data[11] == 0 && interlace <= 1
            ? new PngHeader(width, height, depth, samples, interlace == 1)
            : null;
    }

    /// <summary>Bytes of pixel data before compression: every row with the filter type before it.</summary>
    public long PixelBytes()
    {
        if (!IsInterlaced)
            return Rows(Width, Height);

        var bytes = 0L;
        foreach (var (row, column, down, across) in Adam7)
            bytes += Rows(Steps(Width, column, across), Steps(Height, row, down));
        return bytes;
    }

    private long Rows(int width, int height) =>
        width == 0 ? 0 : height * (1 + ((((long)width * Depth * Samples) + 7) / 8));

    private static int Steps(int length, int first, int step) =>
        length <= first ? 0 : ((length - first - 1) / step) + 1;

    /// <summary>0 where the standard does not allow the depth with the colour type (W3C PNG Third Edition, table
    /// 12).</summary>
    private static int SamplesOf(byte colour, byte depth) => (colour, depth) switch
    {
        (0, 1 or 2 or 4 or 8 or 16) => 1,
        (2, 8 or 16) => 3,
        (3, 1 or 2 or 4 or 8) => 1,
        (4, 8 or 16) => 2,
        (6, 8 or 16) => 4,
        _ => 0,
    };
}
