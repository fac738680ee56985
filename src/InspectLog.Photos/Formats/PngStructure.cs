using System.Buffers.Binary;

namespace InspectLog.Photos.Formats;

/// <summary>Walks the chunks of a PNG (ISO/IEC 15948, W3C PNG Third Edition) to its end chunk and checks the CRC of
/// each.</summary>
internal static class PngStructure
{
    private const int HeaderLength = 13;

    // Chunk length, type and CRC, without the data.
    private const int Frame = 12;

    private static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    public static PhotoStructure Read(ReadOnlyMemory<byte> file)
    {
        if (!file.Span.StartsWith(Signature))
            return Signature.StartsWith(file.Span) ? PhotoStructure.EndsEarly : PhotoStructure.Damaged;

        var size = (Width: 0, Height: 0);
        var exif = ReadOnlyMemory<byte>.Empty;
        var hasPixels = false;
        for (var rest = file[Signature.Length..]; ;)
        {
            if (ReadChunk(rest, out var type, out var data) is { } fault)
                return fault;
            rest = rest[(Frame + data.Length)..];

            if (size.Width == 0)
            {
                if (!type.SequenceEqual("IHDR"u8) || !TryReadSize(data.Span, out size))
                    return PhotoStructure.Damaged;
            }
            else if (type.SequenceEqual("IHDR"u8))
                return PhotoStructure.Damaged;
            else if (type.SequenceEqual("IDAT"u8))
                hasPixels = true;
            else if (type.SequenceEqual("eXIf"u8) && exif.IsEmpty)
                exif = data;
            else if (type.SequenceEqual("IEND"u8))
                return hasPixels
                    ? new PhotoStructure.Whole(PhotoFormat.Png, size.Width, size.Height, exif)
                    : PhotoStructure.Damaged;
        }
    }

    private static PhotoStructure? ReadChunk(
        ReadOnlyMemory<byte> rest, out ReadOnlySpan<byte> type, out ReadOnlyMemory<byte> data)
    {
        type = default;
        data = default;
        if (rest.Length < Frame)
            return PhotoStructure.EndsEarly;

        var length = BinaryPrimitives.ReadUInt32BigEndian(rest.Span);
        if (length > int.MaxValue)
            return PhotoStructure.Damaged;
        if (length > rest.Length - Frame)
            return PhotoStructure.EndsEarly;

        data = rest.Slice(8, (int)length);
        type = rest.Span.Slice(4, 4);
        var crc = BinaryPrimitives.ReadUInt32BigEndian(rest.Span[(8 + data.Length)..]);
        return crc == Crc32.Of(rest.Span.Slice(4, 4 + data.Length)) ? null : PhotoStructure.Damaged;
    }

    private static bool TryReadSize(ReadOnlySpan<byte> header, out (int Width, int Height) size)
    {
        size = default;
        if (header.Length != HeaderLength)
            return false;

        size = (BinaryPrimitives.ReadInt32BigEndian(header), BinaryPrimitives.ReadInt32BigEndian(header[4..]));
        return size is { Width: > 0, Height: > 0 };
    }
}
