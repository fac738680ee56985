using System.Buffers.Binary;
using System.Text;

namespace InspectLog.Dictation.Tests.Hearing;

/// <summary>Makes WAV files of every kind, good and bad, chunk by chunk.</summary>
internal static class Wav
{
    public static byte[] File(params byte[][] chunks)
    {
        var body = chunks.SelectMany(chunk => chunk).ToArray();
        return [.. "RIFF"u8, .. UInt32((uint)(body.Length + 4)), .. "WAVE"u8, .. body];
    }

    public static byte[] Chunk(string id, byte[] body, uint? size = null)
    {
        var pad = body.Length % 2 == 1 ? new byte[] { 0 } : [];
        return [.. Encoding.ASCII.GetBytes(id), .. UInt32(size ?? (uint)body.Length), .. body, .. pad];
    }

    public static byte[] Format(ushort coding = 1, ushort channels = 1, uint rate = 16_000, ushort bits = 16, byte[]? extra = null)
    {
        var align = (ushort)(channels * bits / 8);
        return Chunk("fmt ",
            [.. UInt16(coding), .. UInt16(channels), .. UInt32(rate), .. UInt32(rate * align), .. UInt16(align), .. UInt16(bits), .. extra ?? []]);
    }

    public static byte[] Extensible(ushort subCoding) => Format(coding: 0xFFFE, extra:
        [.. UInt16(22), .. UInt16(16), .. UInt32(4), .. UInt16(subCoding), 0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xAA, 0, 0x38, 0x9B, 0x71]);

    public static byte[] Data(params short[] samples) => Chunk("data", Samples(samples));

    public static byte[] Samples(params short[] samples) => [.. samples.SelectMany(sample => UInt16((ushort)sample))];

    private static byte[] UInt16(ushort value)
    {
        var bytes = new byte[2];
        BinaryPrimitives.WriteUInt16LittleEndian(bytes, value);
        return bytes;
    }

    private static byte[] UInt32(uint value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes, value);
        return bytes;
    }
}
