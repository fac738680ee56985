using System.Buffers.Binary;
using InspectLog.Photos.Alignment;

namespace InspectLog.Photos.Worker;

/// <summary>A picture in shades of grey as the body of a frame: width and height (16 bit, little-endian each), then its shades.
/// </summary>
internal static class GreyFrame
{
    private const int Header = 4;

    public static byte[] Body(GreyPicture picture)
    {
        var body = new byte[Header + picture.Values.Length];
        BinaryPrimitives.WriteUInt16LittleEndian(body, (ushort)picture.Width);
        BinaryPrimitives.WriteUInt16LittleEndian(body.AsSpan(2), (ushort)picture.Height);
        picture.Values.CopyTo(body, Header);
        return body;
    }

    /// <summary>The picture; null where the body holds none.</summary>
    public static GreyPicture? Read(ReadOnlySpan<byte> body)
    {
        if (body.Length < Header)
            return null;
        var (width, height) = (BinaryPrimitives.ReadUInt16LittleEndian(body), BinaryPrimitives.ReadUInt16LittleEndian(body[2..]));
        return width > 0 && height > 0 && width * height == body.Length - Header ? new(width, height, body[Header..].ToArray()) : null;
    }
}
