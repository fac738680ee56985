namespace InspectLog.Photos.Formats;

/// <summary>The CRC of PNG chunks (ISO/IEC 15948, annex D): polynomial 0x04C11DB7, reflected, all ones before and
/// inverted after. The base class library keeps its own to itself.</summary>
internal static class Crc32
{
    private const uint ReflectedPolynomial = 0xEDB88320;

    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(index => OfByte((uint)index))];

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var next in bytes)
            crc = Table[(byte)(crc ^ next)] ^ (crc >> 8);
        return ~crc;
    }

    private static uint OfByte(uint value)
    {
        for (var bit = 0; bit < 8; bit++)
            value = (value & 1) == 0 ? value >> 1 : (value >> 1) ^ ReflectedPolynomial;
        return value;
    }
}
