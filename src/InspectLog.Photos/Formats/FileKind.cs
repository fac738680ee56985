namespace InspectLog.Photos.Formats;

/// <summary>What a file is, by its first bytes: as far as it helps to say what to do with it.</summary>
internal enum FileKind
{
    Unknown,
    Jpeg,
    Png,
    Heic,
    Avif,
    JpegXl,
    Jpeg2000,
    WebP,
    Gif,
    Bmp,
    Tiff,
    Svg,
    Pdf,
    Video,
}

internal static class FileKinds
{
    public static PhotoFormat? AsPhoto(this FileKind kind) => kind switch
    {
        FileKind.Jpeg => PhotoFormat.Jpeg,
        FileKind.Png => PhotoFormat.Png,
        _ => null,
    };

    public static FileKind Recognise(ReadOnlySpan<byte> file)
    {
        // The first two or four bytes decide, so that a file cut off or garbled right after them is told to be broken.
        if (file.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8]))
            return FileKind.Jpeg;
        if (file.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G']))
            return FileKind.Png;
        if (file.StartsWith("GIF8"u8))
            return FileKind.Gif;
        if (file.StartsWith("II*\0"u8) || file.StartsWith("MM\0*"u8) || file.StartsWith("II+\0"u8))
            return FileKind.Tiff;
        if (file.StartsWith("%PDF"u8))
            return FileKind.Pdf;
        if (file.StartsWith("RIFF"u8) && HasAt(file, 8, "WEBP"u8))
            return FileKind.WebP;
        if (file.StartsWith("RIFF"u8) && HasAt(file, 8, "AVI "u8))
            return FileKind.Video;
        if (file.StartsWith((ReadOnlySpan<byte>)[0x1A, 0x45, 0xDF, 0xA3]))
            return FileKind.Video;
        if (file.StartsWith((ReadOnlySpan<byte>)[0xFF, 0x0A]) || HasAt(file, 4, "JXL \r\n"u8))
            return FileKind.JpegXl;
        if (HasAt(file, 4, "jP  "u8) || file.StartsWith((ReadOnlySpan<byte>)[0xFF, 0x4F, 0xFF, 0x51]))
            return FileKind.Jpeg2000;
        if (HasAt(file, 4, "ftyp"u8) && file.Length >= 12)
            return OfBrand(file[8..12]);
        if (IsBmp(file))
            return FileKind.Bmp;
        return file[..Math.Min(file.Length, 1024)].IndexOf("<svg"u8) >= 0 ? FileKind.Svg : FileKind.Unknown;
    }

    /// <summary>Files of the ISO base media format tell themselves apart by their major brand (ISO/IEC 14496-12,
    /// 23008-12 for the HEIF ones).</summary>
    private static FileKind OfBrand(ReadOnlySpan<byte> brand)
    {
        if (brand.SequenceEqual("avif"u8) || brand.SequenceEqual("avis"u8))
            return FileKind.Avif;
        return brand.StartsWith("he"u8) || brand.SequenceEqual("mif1"u8) || brand.SequenceEqual("msf1"u8)
            ? FileKind.Heic
            : FileKind.Video;
    }

    // "BM" alone begins many a text; the reserved bytes of the header are zero.
    private static bool IsBmp(ReadOnlySpan<byte> file) =>
        file.StartsWith("BM"u8) && HasAt(file, 6, "\0\0\0\0"u8);

    private static bool HasAt(ReadOnlySpan<byte> file, int offset, ReadOnlySpan<byte> mark) =>
        file.Length >= offset + mark.Length && file.Slice(offset, mark.Length).SequenceEqual(mark);
}
