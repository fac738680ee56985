using InspectLog.Journal.Storage;
namespace InspectLog.Journal.Index;

/// <summary>One of the two files of the index, which takes every write and remembers that one failed.</summary>
/// <remarks>LiteDB 5.0.21 cannot be told of a failed write: a commit that is broken off half way, by a full disk, leaves a
/// transaction that can be neither rolled back nor closed; the file stays open, and the finalizer of the transaction
/// ends the process. So the write is said to have worked, and whoever uses the database asks for
/// <see cref="Failure"/> after each use and gives it up.</remarks>
internal sealed class IndexFile(string path) : Stream
{
    private readonly FileStream _file = new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read, bufferSize: 0);

    /// <summary>Why the first of its writes that failed did so; null when all worked.</summary>
    public Exception? Failure { get; private set; }

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => true;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => _file.Length;

    /// <inheritdoc/>
    public override long Position
    {
        get => _file.Position;
        set => _file.Position = value;
    }

    /// <inheritdoc/>
    public override void Flush() => Try(_file.Flush);

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => _file.Read(buffer, offset, count);

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => _file.Seek(offset, origin);

    /// <inheritdoc/>
    public override void SetLength(long value) => Try(() => _file.SetLength(value));

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Try(() => _file.Write(buffer, offset, count));

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            Try(_file.Dispose);
        }

        base.Dispose(disposing);
    }

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception failure) when (DiskFailure.Is(failure))
        {
            Failure ??= failure;
        }
    }
}
