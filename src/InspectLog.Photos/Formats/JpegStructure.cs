using System.Buffers.Binary;

namespace InspectLog.Photos.Formats;

/// <summary>Walks the marker segments of a JPEG (ISO/IEC 10918-1, annex B) from start to end of image.</summary>
/// <remarks>Looking for the two bytes of the end mark at the end of the file would not do: thumbnails inside EXIF have
/// one too, and phones append data after it.</remarks>
internal sealed class JpegStructure
{
    // A progressive JPEG has about ten scans. Each costs a pass over all blocks, however few bytes it has.
    private const int MostScans = 100;

    private readonly ReadOnlyMemory<byte> _file;
    private int _position = 2;
    private int _width;
    private int _height;
    private int _scans;
    private ReadOnlyMemory<byte> _exif;

    private JpegStructure(ReadOnlyMemory<byte> file) => _file = file;

    private static ReadOnlySpan<byte> ExifName => "Exif\0\0"u8;

    private ReadOnlySpan<byte> Rest => _file.Span[_position..];

    public static PhotoStructure Read(ReadOnlyMemory<byte> file) => new JpegStructure(file).Walk();

    private PhotoStructure Walk()
    {
        while (true)
        {
            if (ReadMarker(out var marker) is { } noMarker)
                return noMarker;
            if (marker == Marker.EndOfImage)
                return Finish();
            if (ReadSegment(out var segment) is { } noSegment)
                return noSegment;
            if (Take(marker, segment) is { } fault)
                return fault;
        }
    }

    private PhotoStructure? ReadMarker(out byte marker)
    {
        marker = 0;
        if (Rest.IsEmpty)
            return PhotoStructure.EndsEarly;
        if (Rest[0] != Marker.Prefix)
            return PhotoStructure.Damaged;

        var fill = Rest.IndexOfAnyExcept(Marker.Prefix);
        if (fill < 0)
            return PhotoStructure.EndsEarly;

        marker = Rest[fill];
        _position += fill + 1;
        return Marker.HasNoPlaceHere(marker) ? PhotoStructure.Damaged : null;
    }

    private PhotoStructure? ReadSegment(out ReadOnlyMemory<byte> segment)
    {
        segment = default;
        if (Rest.Length < 2)
            return PhotoStructure.EndsEarly;

        var length = BinaryPrimitives.ReadUInt16BigEndian(Rest);
        if (length < 2)
            return PhotoStructure.Damaged;
        if (Rest.Length < length)
            return PhotoStructure.EndsEarly;

        segment = _file.Slice(_position + 2, length - 2);
        _position += length;
        return null;
    }

    private PhotoStructure? Take(byte marker, ReadOnlyMemory<byte> segment)
    {
        if (Marker.IsStartOfFrame(marker))
            return TakeFrame(marker, segment.Span);
        if (marker == Marker.StartOfScan)
            return SkipScan();
        if (marker == Marker.App1 && _exif.IsEmpty && segment.Span.StartsWith(ExifName))
            _exif = segment[ExifName.Length..];
        return null;
    }

    private PhotoStructure? TakeFrame(byte marker, ReadOnlySpan<byte> frame)
    {
        if (_width > 0 || frame.Length < 6)
            return PhotoStructure.Damaged;

        _height = BinaryPrimitives.ReadUInt16BigEndian(frame[1..]);
        _width = BinaryPrimitives.ReadUInt16BigEndian(frame[3..]);
        if (marker > Marker.StartOfFrame2 || frame[0] != 8 || _height == 0)
            return PhotoStructure.RareCoding;
        return _width == 0 ? PhotoStructure.Damaged : null;
    }

    /// <summary>Moves to the marker after the entropy-coded data: 0xFF followed by neither 0x00 (a stuffed byte) nor a
    /// restart marker.</summary>
    private PhotoStructure? SkipScan()
    {
        if (_width == 0 || ++_scans > MostScans)
            return PhotoStructure.Damaged;

        while (true)
        {
            var found = Rest.IndexOf(Marker.Prefix);
            if (found < 0 || found + 1 >= Rest.Length)
                return PhotoStructure.EndsEarly;

            var next = Rest[found + 1];
            var inScan = next == Marker.Stuffing || Marker.IsRestart(next);
            _position += inScan ? found + 2 : found;
            if (!inScan)
                return null;
        }
    }

    private PhotoStructure Finish() => _scans == 0
        ? PhotoStructure.Damaged
        : new PhotoStructure.Whole(PhotoFormat.Jpeg, _width, _height, _exif);

    private static class Marker
    {
        public const byte Stuffing = 0x00;
        public const byte StartOfFrame0 = 0xC0;
        public const byte StartOfFrame2 = 0xC2;
        public const byte HuffmanTables = 0xC4;
        public const byte ReservedForExtensions = 0xC8;
        public const byte ArithmeticConditions = 0xCC;
        public const byte StartOfFrame15 = 0xCF;
        public const byte Restart0 = 0xD0;
        public const byte Restart7 = 0xD7;
        public const byte StartOfImage = 0xD8;
        public const byte EndOfImage = 0xD9;
        public const byte StartOfScan = 0xDA;
        public const byte App1 = 0xE1;
        public const byte Prefix = 0xFF;

        public static bool IsRestart(byte marker) => marker is >= Restart0 and <= Restart7;

        public static bool IsStartOfFrame(byte marker) =>
            marker is >= StartOfFrame0 and <= StartOfFrame15
                and not (HuffmanTables or ReservedForExtensions or ArithmeticConditions);

        /// <summary>Markers that stand alone or are reserved: none may come between segments.</summary>
        public static bool HasNoPlaceHere(byte marker) =>
            marker < StartOfFrame0 || IsRestart(marker) || marker == StartOfImage;
    }
}
