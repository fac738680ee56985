namespace InspectLog.Journal.Verification;

/// <summary>Reads a file line by line, in bytes: a line may be as long as it likes, and no more than one is held.</summary>
/// <param name="file">The file; stays open.</param>
internal sealed class LineReader(Stream file) : IDisposable
{
    private const byte LineEnd = (byte)'\n';

    private readonly BufferedStream _bytes = new(file, 1 << 16);
    private readonly MemoryStream _line = new();

    /// <summary>The next line without its end.</summary>
    /// <exception cref="EndOfStreamException">There is none, or its end is missing.</exception>
    public ReadOnlyMemory<byte> Next()
    {
        _line.SetLength(0);
        for (var next = _bytes.ReadByte(); next != LineEnd; next = _bytes.ReadByte())
        {
            if (next < 0)
            {
                throw new EndOfStreamException("The journal became shorter while it was read.");
            }

            _line.WriteByte((byte)next);
        }

        return _line.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose() => _line.Dispose();
}
