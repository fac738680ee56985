using System.Buffers.Binary;
using System.Globalization;

namespace InspectLog.Dictation.Hearing;

/// <summary>What the fmt chunk of a WAV file says.</summary>
internal readonly record struct WavFormat(ushort Coding, ushort Channels, uint Rate, ushort BlockAlign, ushort Bits)
{
    public const ushort Pcm = 1;
    public const int ShortestChunk = 16;

    private const ushort Extensible = 0xFFFE;
    private const int ExtensibleChunk = 40;

    public bool IsTaken => this is { Coding: Pcm, Channels: 1, Rate: PcmAudio.SampleRate, BlockAlign: 2, Bits: 16 };

    /// <param name="chunk">Body of the fmt chunk, at least <see cref="ShortestChunk"/> bytes.</param>
    public static WavFormat Of(ReadOnlySpan<byte> chunk) => new(
        CodingOf(chunk),
        BinaryPrimitives.ReadUInt16LittleEndian(chunk[2..]),
        BinaryPrimitives.ReadUInt32LittleEndian(chunk[4..]),
        BinaryPrimitives.ReadUInt16LittleEndian(chunk[12..]),
        BinaryPrimitives.ReadUInt16LittleEndian(chunk[14..]));

    public override string ToString()
    {
        var channels = Channels switch { 1 => "mono", 2 => "stereo", _ => $"of {Channels} channels" };
        var coding = Coding == Pcm ? "PCM" : $"in coding {Coding}";
        return string.Create(CultureInfo.InvariantCulture, $"{Rate / 1000.0:0.###} kHz, {channels}, {Bits}-bit {coding}");
    }

    /// <summary>The coding; that of the sub-format where the chunk is an extensible one.</summary>
    private static ushort CodingOf(ReadOnlySpan<byte> chunk)
    {
        var coding = BinaryPrimitives.ReadUInt16LittleEndian(chunk);
        if (coding != Extensible || chunk.Length < ExtensibleChunk)
            return coding;

        // KSDATAFORMAT_SUBTYPE_*: the first two bytes are the plain coding, the rest is fixed.
        ReadOnlySpan<byte> fixedPart = [0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xAA, 0, 0x38, 0x9B, 0x71];
        var subFormat = chunk.Slice(24, 16);
        return subFormat[2..].SequenceEqual(fixedPart) ? BinaryPrimitives.ReadUInt16LittleEndian(subFormat) : coding;
    }
}
