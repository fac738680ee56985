namespace InspectLog.Journal.Storage;

/// <summary>Reads a file part by part, each of whole lines, so that a long one is never in memory as a whole.</summary>
/// <param name="file">The file.</param>
/// <param name="partBytes">Length of a part, bytes; a longer line makes it longer.</param>
internal sealed class WholeLines(Stream file, int partBytes)
{
    private const byte LineEnd = (byte)'\n';
    private const int LongestPart = 4 * 1024 * 1024;

    private byte[] _rest = [];

    /// <summary>Reads a file in parts that are long enough for all processors.</summary>
    public static WholeLines Of(Stream file) => new(file, (int)Math.Min(LongestPart, file.Length + 1));

    /// <summary>The next lines with their ends, and at the end what is left without one; null where nothing is left.</summary>
    public ReadOnlyMemory<byte>? Next()
    {
        var part = _rest;
        var filled = _rest.Length;
        while (true)
        {
            Array.Resize(ref part, filled + partBytes);
            var read = file.ReadAtLeast(part.AsSpan(filled), partBytes, throwOnEndOfStream: false);
            var newFrom = filled;
            filled += read;
            if (read < partBytes)
            {
                _rest = [];
                return filled == 0 ? default(ReadOnlyMemory<byte>?) : part.AsMemory(0, filled); // null alone would be empty memory
            }

            if (part.AsSpan(newFrom, read).LastIndexOf(LineEnd) is >= 0 and var end)
            {
                var length = newFrom + end + 1;
                _rest = part[length..filled];
                return part.AsMemory(0, length);
            }
        }
    }
}
