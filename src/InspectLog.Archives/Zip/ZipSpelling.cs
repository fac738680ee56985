using System.Buffers.Binary;
using System.Text;

namespace InspectLog.Archives.Zip;

/// <summary>A file in a ZIP.</summary>
/// <param name="Name">Its path.</param>
/// <param name="Length">Bytes.</param>
/// <param name="Crc32">Its CRC-32.</param>
/// <param name="At">Where its header begins.</param>
internal sealed record ZipFile(string Name, long Length, uint Crc32, long At);

/// <summary>How this program writes a ZIP: files are stored and not compressed, one right after the other, and each byte
/// around them has one spelling only (APPNOTE 6.3.10, version 2.0 or 4.5 for what is large). So that a changed byte is found wherever it is. Pure.
/// </summary>
/// <param name="Day">The day that stands as that of all files.</param>
internal sealed record ZipSpelling(DateOnly Day)
{
    private const ushort Plain = 20;
    private const ushort Large = 45;
    private const ushort Utf8 = 0x0800;
    private const ushort UnixMaker = 0x0300;
    private const uint PlainFile = 0x81A40000; // a file that its owner may write and all may read
    private const ushort LargeField = 0x0001;

    /// <summary>The day as ZIP has it: years from 1980.</summary>
    private ushort DosDay => (ushort)((Math.Clamp(Day.Year, 1980, 2107) - 1980) << 9 | Day.Month << 5 | Day.Day);

    /// <summary>What stands before the bytes of a file.</summary>
    public byte[] Before(ZipFile file)
    {
        var isLarge = file.Length >= uint.MaxValue;
        return new Bytes()
            .Four(0x04034b50)
            .Two(isLarge ? Large : Plain).Two(Utf8).Two(0).Two(0).Two(DosDay)
            .Four(file.Crc32)
            .Four(isLarge ? uint.MaxValue : (uint)file.Length).Four(isLarge ? uint.MaxValue : (uint)file.Length)
            .Two((ushort)Encoding.UTF8.GetByteCount(file.Name)).Two((ushort)(isLarge ? 20 : 0))
            .Text(file.Name)
            .LengthsOf(isLarge ? file : null)
            .ToArray();
    }

    /// <summary>All that stands after the files: their list, and its end.</summary>
    /// <param name="files">The files in their order.</param>
    /// <param name="at">Where the list begins.</param>
    public byte[] After(IReadOnlyList<ZipFile> files, long at)
    {
        var list = new Bytes();
        foreach (var file in files)
        {
            Listed(list, file);
        }

        var length = list.Length;
        return (files.Count >= ushort.MaxValue || at >= uint.MaxValue || length >= uint.MaxValue ? LargeEnd(list, files.Count, at, length) : list)
            .Four(0x06054b50).Two(0).Two(0)
            .Two((ushort)Math.Min(files.Count, ushort.MaxValue)).Two((ushort)Math.Min(files.Count, ushort.MaxValue))
            .Four((uint)Math.Min(length, uint.MaxValue)).Four((uint)Math.Min(at, uint.MaxValue)).Two(0)
            .ToArray();
    }

    private void Listed(Bytes list, ZipFile file)
    {
        var (isLarge, isFar) = (file.Length >= uint.MaxValue, file.At >= uint.MaxValue);
        var extra = (isLarge ? 16 : 0) + (isFar ? 8 : 0);
        var version = isLarge || isFar ? Large : Plain;
        list.Four(0x02014b50)
            .Two((ushort)(UnixMaker | version)).Two(version).Two(Utf8).Two(0).Two(0).Two(DosDay)
            .Four(file.Crc32)
            .Four(isLarge ? uint.MaxValue : (uint)file.Length).Four(isLarge ? uint.MaxValue : (uint)file.Length)
            .Two((ushort)Encoding.UTF8.GetByteCount(file.Name)).Two((ushort)(extra > 0 ? extra + 4 : 0)).Two(0).Two(0).Two(0)
            .Four(PlainFile).Four(isFar ? uint.MaxValue : (uint)file.At)
            .Text(file.Name);
        if (extra > 0)
        {
            list.Two(LargeField).Two((ushort)extra);
            if (isLarge)
            {
                list.Eight(file.Length).Eight(file.Length);
            }

            if (isFar)
            {
                list.Eight(file.At);
            }
        }
    }

    private static Bytes LargeEnd(Bytes list, int count, long at, long length) => list
        .Four(0x06064b50).Eight(44).Two(UnixMaker | Large).Two(Large).Four(0).Four(0).Eight(count).Eight(count).Eight(length).Eight(at)
        .Four(0x07064b50).Four(0).Eight(at + length).Four(1);

    /// <summary>Numbers as ZIP writes them, one after the other.</summary>
    private sealed class Bytes
    {
        private readonly List<byte> _bytes = [];

        public long Length => _bytes.Count;

        public Bytes Two(ushort number)
        {
            Span<byte> two = stackalloc byte[2];
            BinaryPrimitives.WriteUInt16LittleEndian(two, number);
            return Add(two);
        }

        public Bytes Four(uint number)
        {
            Span<byte> four = stackalloc byte[4];
            BinaryPrimitives.WriteUInt32LittleEndian(four, number);
            return Add(four);
        }

        public Bytes Eight(long number)
        {
            Span<byte> eight = stackalloc byte[8];
            BinaryPrimitives.WriteInt64LittleEndian(eight, number);
            return Add(eight);
        }

        public Bytes Text(string text) => Add(Encoding.UTF8.GetBytes(text));

        public Bytes LengthsOf(ZipFile? large) =>
            large is null ? this : Two(LargeField).Two(16).Eight(large.Length).Eight(large.Length);

        public byte[] ToArray() => [.. _bytes];

        private Bytes Add(ReadOnlySpan<byte> bytes)
        {
            _bytes.AddRange(bytes);
            return this;
        }
    }
}
