using System.Buffers.Binary;
using InspectLog.Paper.Blocks;

namespace InspectLog.Paper.Layout;

/// <summary>How large a JPEG picture is (ITU-T T.81, B.2.2), without looking at its pixels. Pure.</summary>
internal static class JpegSize
{
    /// <summary>Width and height in pixels; null where it is no JPEG file, or says nothing of its size.</summary>
    public static Spot? Of(ReadOnlySpan<byte> file)
    {
        if (file.Length < 4 || file[0] != 0xFF || file[1] != 0xD8)
        {
            return null;
        }

        for (var at = 2; at + 9 < file.Length && file[at] == 0xFF;)
        {
            var marker = file[at + 1];
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
            {
                var (height, width) = (BinaryPrimitives.ReadUInt16BigEndian(file[(at + 5)..]), BinaryPrimitives.ReadUInt16BigEndian(file[(at + 7)..]));
                return width > 0 && height > 0 ? new(width, height) : null;
            }

            at += marker == 0xFF ? 1 : 2 + BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
        }

        return null;
    }
}
