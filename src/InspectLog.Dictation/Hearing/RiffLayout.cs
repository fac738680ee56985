using System.Buffers.Binary;

namespace InspectLog.Dictation.Hearing;

/// <summary>Where format and samples lie in a WAV file. Allocates nothing and stays within the bytes given.</summary>
internal readonly record struct RiffLayout(WavProblem? Problem, WavFormat Format, int DataStart, int DataLength)
{
    private const int RiffHeader = 12;
    private const int ChunkHeader = 8;

    /// <summary>Writers that cannot seek back leave 0 or a very large size; sox writes a little below 2^31.</summary>
    private const uint SmallestPlaceholder = 0x7FFF_0000;

    public static RiffLayout Of(ReadOnlySpan<byte> file)
    {
        if (!file.StartsWith("RIFF"u8))
            return Failed(WavProblem.NotWav);
        if (file.Length < RiffHeader)
            return Failed(WavProblem.Truncated);
        if (!file[8..].StartsWith("WAVE"u8))
            return Failed(WavProblem.NotWav);

        return Walk(file);
    }

    private static RiffLayout Walk(ReadOnlySpan<byte> file)
    {
        WavFormat? format = null;
        long at = RiffHeader;
        while (at + ChunkHeader <= file.Length)
        {
            var header = file[(int)at..];
            var size = BinaryPrimitives.ReadUInt32LittleEndian(header[4..]);
            var body = (int)at + ChunkHeader;
            if (header.StartsWith("data"u8))
                return format is { } known ? Data(file, body, size, known) : Failed(WavProblem.NotWav);
            if (size > file.Length - body)
                return Failed(WavProblem.Truncated);
            if (header.StartsWith("fmt "u8))
            {
                if (size < WavFormat.ShortestChunk)
                    return Failed(WavProblem.NotWav);
                format = WavFormat.Of(file.Slice(body, (int)size));
            }

            at = Next(body, size);
        }

        return Failed(at >= file.Length && format is not null ? WavProblem.Empty : WavProblem.Truncated);
    }

    private static RiffLayout Data(ReadOnlySpan<byte> file, int start, uint size, WavFormat format)
    {
        var there = file.Length - start;
        var sizeUnknown = size >= SmallestPlaceholder || (size == 0 && !IsChunks(file[start..]));
        if (sizeUnknown)
            return new(null, format, start, there & ~1);
        if (size > there || (size % 2 != 0 && format.IsTaken))
            return Failed(WavProblem.Truncated);

        return new(null, format, start, (int)size);
    }

    /// <summary>Whether the rest is a chain of whole chunks: then a size of 0 is meant, and they are not samples.</summary>
    private static bool IsChunks(ReadOnlySpan<byte> rest)
    {
        long at = 0;
        while (at + ChunkHeader <= rest.Length)
        {
            var header = rest.Slice((int)at, ChunkHeader);
            if (header[..4].ContainsAnyExceptInRange((byte)' ', (byte)'~'))
                return false;
            at = Next((int)at + ChunkHeader, BinaryPrimitives.ReadUInt32LittleEndian(header[4..]));
        }

        return at == rest.Length;
    }

    /// <summary>Chunks start at even positions.</summary>
    private static long Next(int body, uint size) => body + (long)size + (size & 1);

    private static RiffLayout Failed(WavProblem problem) => new(problem, default, 0, 0);
}
