using System.Buffers.Binary;

namespace InspectLog.Photos.Tests.Support;

/// <summary>The marker segments of a JPEG up to its first scan, read by hand (ISO/IEC 10918-1, B.1.1).</summary>
internal static class JpegSegments
{
    public static IReadOnlyList<byte> MarkersOf(ReadOnlySpan<byte> jpeg)
    {
        var markers = new List<byte>();
        for (var position = 2; ;)
        {
            Assert.Equal(0xFF, jpeg[position]);
            var marker = jpeg[position + 1];
            markers.Add(marker);
            if (marker == 0xDA)
                return markers;
            position += 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg[(position + 2)..]);
        }
    }

    /// <summary>Puts a segment right after the start of image.</summary>
    public static byte[] Insert(byte[] jpeg, byte marker, ReadOnlySpan<byte> content)
    {
        var segment = new byte[content.Length + 4];
        segment[0] = 0xFF;
        segment[1] = marker;
        BinaryPrimitives.WriteUInt16BigEndian(segment.AsSpan(2), (ushort)(content.Length + 2));
        content.CopyTo(segment.AsSpan(4));
        return [.. jpeg[..2], .. segment, .. jpeg[2..]];
    }
}
