namespace InspectLog.Photos.Formats;

/// <summary>The outside of a picture file, walked from its first marker to its last without decoding a pixel.</summary>
internal abstract record PhotoStructure
{
    private PhotoStructure()
    {
    }

    /// <summary>Every part is there, up to the end mark. More may follow: phones append short films.</summary>
    /// <param name="Format">Format walked.</param>
    /// <param name="Width">Width as stored, pixels.</param>
    /// <param name="Height">Height as stored, pixels.</param>
    /// <param name="Exif">The TIFF structure of the first EXIF block; empty where there is none.</param>
    internal sealed record Whole(PhotoFormat Format, int Width, int Height, ReadOnlyMemory<byte> Exif)
        : PhotoStructure
    {
        /// <summary>What the pixels of a PNG are made of; null for a JPEG.</summary>
        public PngParts? Png { get; init; }
    }

    internal sealed record Faulty(StructureFault Fault) : PhotoStructure;

    public static readonly PhotoStructure EndsEarly = new Faulty(StructureFault.EndsEarly);

    public static readonly PhotoStructure Damaged = new Faulty(StructureFault.Damaged);

    public static readonly PhotoStructure RareCoding = new Faulty(StructureFault.RareCoding);

    public static PhotoStructure Read(PhotoFormat format, ReadOnlyMemory<byte> file) =>
        format == PhotoFormat.Jpeg ? JpegStructure.Read(file) : PngStructure.Read(file);
}

internal enum StructureFault
{
    EndsEarly,
    Damaged,
    RareCoding,

    /// <summary>The file is whole from end to end, but holds fewer pixels than its header says.</summary>
    PixelsMissing,
}
