using System.Buffers.Binary;
using System.Text;

namespace InspectLog.Photos.Formats;

/// <summary>Walks the chunks of a PNG (ISO/IEC 15948, W3C PNG Third Edition) to its end chunk and checks the CRC of
/// each.</summary>
internal sealed class PngStructure
{
    /// <summary>Chunk length, type and CRC, without the data.</summary>
    public const int Frame = 12;

    private readonly List<(string Type, ReadOnlyMemory<byte> Data)> _colours = [];
    private readonly List<ReadOnlyMemory<byte>> _pixels = [];
    private PngHeader? _header;
    private ReadOnlyMemory<byte> _headerData;
    private ReadOnlyMemory<byte> _exif;
    private bool _pixelsEnded;

    private PngStructure()
    {
    }

    public static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    public static PhotoStructure Read(ReadOnlyMemory<byte> file)
    {
        if (!file.Span.StartsWith(Signature))
            return Signature.StartsWith(file.Span) ? PhotoStructure.EndsEarly : PhotoStructure.Damaged;
        return new PngStructure().Walk(file[Signature.Length..]);
    }

    private PhotoStructure Walk(ReadOnlyMemory<byte> rest)
    {
        while (true)
        {
            if (ReadChunk(rest, out var type, out var data) is { } fault)
                return fault;
            if (_header is not null && type == "IEND")
                return Finish();
            if (Take(type, data) is { } wrong)
                return wrong;
            rest = rest[(Frame + data.Length)..];
        }
    }

    /// <summary>Keeps what a chunk is needed for; what is wrong with it, or null.</summary>
    private PhotoStructure? Take(string type, ReadOnlyMemory<byte> data)
    {
        if (_header is null || type == "IHDR")
            return TakeHeader(type, data);
        if (type == "IDAT")
            return TakePixels(data);

        _pixelsEnded = _pixels.Count > 0;
        if (type is "PLTE" or "tRNS" && !_pixelsEnded)
            _colours.Add((type, data));
        else if (type == "eXIf" && _exif.IsEmpty)
            _exif = data;
        return IsForeign(type) ? PhotoStructure.RareCoding : null;
    }

    private PhotoStructure? TakeHeader(string type, ReadOnlyMemory<byte> data)
    {
        if (_header is not null || type != "IHDR")
            return IsForeign(type) ? PhotoStructure.RareCoding : PhotoStructure.Damaged;

        _header = PngHeader.Read(data.Span);
        _headerData = data;
        return _header is null ? PhotoStructure.Damaged : null;
    }

    /// <summary>The pixel data stands in one run of chunks (5.6); decoders look at the first run only.</summary>
    private PhotoStructure? TakePixels(ReadOnlyMemory<byte> data)
    {
        if (_pixelsEnded)
            return PhotoStructure.Damaged;
        _pixels.Add(data);
        return null;
    }

    private PhotoStructure Finish() => _header is { } header && _pixels.Count > 0
        ? new PhotoStructure.Whole(PhotoFormat.Png, header.Width, header.Height, _exif)
        {
            Png = new PngParts(header, _headerData, _colours, _pixels),
        }
        : PhotoStructure.Damaged;

    /// <summary>Whether a chunk changes what the pixels mean and is not of the standard: whoever does not know it must
    /// not guess at them (5.4).</summary>
    private static bool IsForeign(string type) =>
        char.IsAsciiLetterUpper(type[0]) && type is not ("IHDR" or "PLTE" or "IDAT" or "IEND");

    private static PhotoStructure? ReadChunk(
        ReadOnlyMemory<byte> rest, out string type, out ReadOnlyMemory<byte> data)
    {
        type = "";
        data = default;
        if (rest.Length < Frame)
            return PhotoStructure.EndsEarly;

        var length = BinaryPrimitives.ReadUInt32BigEndian(rest.Span);
        if (length > int.MaxValue)
            return PhotoStructure.Damaged;
        if (length > rest.Length - Frame)
            return PhotoStructure.EndsEarly;

        data = rest.Slice(8, (int)length);
        type = Encoding.Latin1.GetString(rest.Span.Slice(4, 4));
        var crc = BinaryPrimitives.ReadUInt32BigEndian(rest.Span[(8 + data.Length)..]);
        return crc == Crc32.Of(rest.Span.Slice(4, 4 + data.Length)) ? null : PhotoStructure.Damaged;
    }
}
