using System.Buffers.Binary;
using System.IO.Compression;

namespace InspectLog.Photos.Tests.Support;

/// <summary>PNG files built chunk by chunk (W3C PNG Third Edition, 5 and 11), with a CRC of the test's own.</summary>
internal static class PngChunks
{
    public static byte[] File(params byte[][] chunks) =>
        [0x89, .. "PNG\r\n\x1A\n"u8, .. chunks.SelectMany(chunk => chunk)];

    public static byte[] Chunk(string type, ReadOnlySpan<byte> data)
    {
        var chunk = new byte[12 + data.Length];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        System.Text.Encoding.ASCII.GetBytes(type).CopyTo(chunk, 4);
        data.CopyTo(chunk.AsSpan(8));
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8 + data.Length), Crc(chunk.AsSpan(4, 4 + data.Length)));
        return chunk;
    }

    /// <summary>A grey picture's header: eight bits, no interlace.</summary>
    public static byte[] Header(int width, int height)
    {
        var data = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(data, width);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(4), height);
        data[8] = 8;
        return Chunk("IHDR", data);
    }

    /// <summary>A header of any colour type and depth.</summary>
    public static byte[] Header(int width, int height, byte depth, byte colour, bool interlaced)
    {
        var data = Header(width, height)[8..21];
        (data[8], data[9], data[12]) = (depth, colour, interlaced ? (byte)1 : (byte)0);
        return Chunk("IHDR", data);
    }

    public static byte[] Pixels(int width, int height) => Chunk("IDAT", Packed((width + 1) * height));

    /// <summary>So many zero bytes, compressed as pixel data is.</summary>
    public static byte[] Packed(int zeros)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal))
            zlib.Write(new byte[zeros]);
        return packed.ToArray();
    }

    public static byte[] End() => Chunk("IEND", []);

    public static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var next in bytes)
        {
            crc ^= next;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc >> 1) ^ ((crc & 1) * 0xEDB88320u);
        }

        return ~crc;
    }
}
