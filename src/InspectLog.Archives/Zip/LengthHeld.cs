namespace InspectLog.Archives.Zip;

/// <summary>Reads what a ZIP packed, and not a byte more than the ZIP says there is: a bomb says little and becomes much.</summary>
internal sealed class LengthHeld : Stream
{
    private readonly Stream _packed;
    private long _left;

    /// <summary>Holds a file to its length.</summary>
    public LengthHeld(Stream packed, long length) => (_packed, Length, _left) = (packed, length, length);

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length { get; }

    public override long Position
    {
        get => Length - _left;
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        int read;
        try
        {
            read = _packed.Read(buffer);
        }
        catch (Exception damage) when (damage is ArgumentException or IndexOutOfRangeException or OverflowException)
        {
            throw new InvalidDataException("What was packed cannot be unpacked.", damage);
        }

        _left -= read;
        return _left < 0 || (read == 0 && _left > 0 && buffer.Length > 0)
            ? throw new InvalidDataException("A file in the ZIP has another length than the ZIP says.")
            : read;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _packed.Dispose();
        }

        base.Dispose(disposing);
    }
}
