using System.Buffers.Binary;

namespace InspectLog.Archives.Zip;

/// <summary>The end of a ZIP, read before all else: it tells how long the list of files is, which the framework would read into
/// memory whole.</summary>
internal static class ZipTail
{
    private const uint End = 0x06054b50;
    private const uint End64 = 0x06064b50;
    private const uint Locator64 = 0x07064b50;
    private const int EndLength = 22;
    private const int LongestComment = ushort.MaxValue;

    /// <summary>Where the list of files begins; null where this is no ZIP.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static long? DirectoryStart(Stream zip)
    {
        var tail = new byte[Math.Min(zip.Length, EndLength + LongestComment + 20)];
        zip.Position = zip.Length - tail.Length;
        zip.ReadExactly(tail);
        for (var at = tail.Length - EndLength; at >= 0; at--)
        {
            if (Number(tail, at) == End)
            {
                var start = Number(tail, at + 16);
                return start == uint.MaxValue ? Start64(zip, tail, at) : start;
            }
        }

        return null;
    }

    private static long? Start64(Stream zip, byte[] tail, int end)
    {
        if (end < 20 || Number(tail, end - 20) != Locator64)
        {
            return null;
        }

        var record = BinaryPrimitives.ReadInt64LittleEndian(tail.AsSpan(end - 12));
        if (record < 0 || record > zip.Length - 56)
        {
            return null;
        }

        var bytes = new byte[56];
        zip.Position = record;
        zip.ReadExactly(bytes);
        return Number(bytes, 0) == End64 ? BinaryPrimitives.ReadInt64LittleEndian(bytes.AsSpan(48)) : null;
    }

    private static uint Number(byte[] bytes, int at) => BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(at));
}
