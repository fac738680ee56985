using System.Buffers.Binary;
using System.IO.Compression;

namespace InspectLog.Photos.Formats;

/// <summary>The chunks of a PNG that its pixels are made of.</summary>
/// <param name="Header">What the header says.</param>
/// <param name="HeaderData">The header as it stands.</param>
/// <param name="Colours">The palette and the transparency, as they stand.</param>
/// <param name="Pixels">The pixel data, compressed, chunk by chunk.</param>
internal sealed record PngParts(
    PngHeader Header,
    ReadOnlyMemory<byte> HeaderData,
    IReadOnlyList<(string Type, ReadOnlyMemory<byte> Data)> Colours,
    IReadOnlyList<ReadOnlyMemory<byte>> Pixels)
{
    private const int BlockSize = 1 << 16;
    private const int ZlibHeader = 2;

    /// <summary>The image library loses its place in the passes of an interlaced picture with an empty pass. Such
    /// pictures are four pixels wide at most.</summary>
    private const int NarrowestInterlaced = 5;

    /// <summary>What is wrong with the pixel data; null where all that the header demands is there. Unpacks it block
    /// by block and keeps none of it, and stops where the picture is full.</summary>
    /// <remarks>The image library never returns from an interlaced picture whose data ends early: at the end of the
    /// data it starts the same pass again (PngDecoderCore.DecodeInterlacedPixelData of 2.1.13).</remarks>
    public StructureFault? Fault()
    {
        if (Header is { IsInterlaced: true, Width: < NarrowestInterlaced })
            return StructureFault.RareCoding;

        var packed = Packed();
        if (!IsZlib(packed))
            return StructureFault.Damaged;

        using var source = new MemoryStream(packed, ZlibHeader, packed.Length - ZlibHeader);
        using var unpacked = new DeflateStream(source, CompressionMode.Decompress);
        try
        {
            return Reaches(unpacked, Header.PixelBytes()) ? null : StructureFault.PixelsMissing;
        }
        catch (InvalidDataException)
        {
            return StructureFault.Damaged;
        }
    }

    /// <summary>The picture as a file of its own with nothing but what its pixels need, the pixel data in one piece:
    /// what is decoded is then what was looked at, however the file was cut into chunks.</summary>
    public byte[] Plain()
    {
        using var file = new MemoryStream();
        file.Write(PngStructure.Signature);
        Write(file, "IHDR", HeaderData.Span);
        foreach (var (type, data) in Colours)
            Write(file, type, data.Span);
        Write(file, "IDAT", Packed());
        Write(file, "IEND", []);
        return file.ToArray();
    }

    private byte[] Packed()
    {
        var packed = new byte[Pixels.Sum(part => part.Length)];
        var position = 0;
        foreach (var part in Pixels)
        {
            part.Span.CopyTo(packed.AsSpan(position));
            position += part.Length;
        }

        return packed;
    }

    /// <summary>The two bytes before the data (RFC 1950, 2.2): deflate, no preset dictionary, and their check.</summary>
    private static bool IsZlib(ReadOnlySpan<byte> packed) =>
        packed.Length > ZlibHeader
        && (packed[0] & 0x0F) == 8
        && (packed[1] & 0x20) == 0
        && BinaryPrimitives.ReadUInt16BigEndian(packed) % 31 == 0;

    private static bool Reaches(DeflateStream unpacked, long demanded)
    {
        var block = new byte[BlockSize];
        while (demanded > 0)
        {
            var read = unpacked.Read(block);
            if (read == 0)
                return false;
            demanded -= read;
        }

        return true;
    }

    private static void Write(MemoryStream file, string type, ReadOnlySpan<byte> data)
    {
        var chunk = new byte[PngStructure.Frame + data.Length];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        System.Text.Encoding.ASCII.GetBytes(type, chunk.AsSpan(4));
        data.CopyTo(chunk.AsSpan(8));
        var end = 8 + data.Length;
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(end), Crc32.Of(chunk.AsSpan(4, 4 + data.Length)));
        file.Write(chunk);
    }
}
