using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Storage;

/// <summary>The entries of one journal in a file.</summary>
internal sealed class JournalFile(string path, IDurable durable, WriteLatch latch) : IEntryLog
{
    private long _length;

    /// <inheritdoc/>
    public string Place => path;

    /// <inheritdoc/>
    public WriteLatch Latch => latch;

    /// <inheritdoc/>
    public Stream OpenAfresh()
    {
        var stream = File.Exists(path) ? durable.OpenAfresh(path) : Stream.Null;
        _length = stream.Length;
        return stream;
    }

    /// <inheritdoc/>
    /// <remarks>The file is opened each time: one that is held open could not be replaced on every system.</remarks>
    public void Read(Span<byte> bytes, long at)
    {
        using var file = File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        while (!bytes.IsEmpty)
        {
            var read = RandomAccess.Read(file, bytes, at);
            if (read == 0)
            {
                throw new EndOfStreamException($"{path} is shorter than it was when it was opened");
            }

            bytes = bytes[read..];
            at += read;
        }
    }

    /// <inheritdoc/>
    /// <remarks>In one write, and synced. Whoever was told that a record was not kept must not find it there after the next
    /// start.</remarks>
    public void Append(ReadOnlyMemory<byte> record) => latch.Guard(() =>
    {
        using var file = Open();
        try
        {
            durable.Write(file, record.Span, _length);
            durable.Sync(file);
            if (_length == 0)
            {
                durable.SyncFolder(Path.GetDirectoryName(path)!);
            }
        }
        catch
        {
            CutBack(file);
            throw;
        }

        _length += record.Length;
    });

    /// <summary>Takes back what was just written and is not acknowledged. What stands before it was synced and is left
    /// alone, so this can make nothing worse. Where it fails too, the next start sets aside what is not whole; a whole
    /// entry that stayed cannot be told from one that was kept, and the capture's id keeps it from being recorded twice.
    /// </summary>
    private void CutBack(SafeFileHandle file)
    {
        try
        {
            durable.Cut(file, _length);
            durable.Sync(file);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            // As said; the first failure is the one that is told.
        }
    }

    /// <inheritdoc/>
    /// <remarks>The file is written anew beside its place and takes it by one rename: a torn end would make a journal part
    /// from the one it continues.</remarks>
    public void Continue(ReadOnlySpan<byte> lines) => latch.Guard(lines, further =>
    {
        var before = File.ReadAllBytes(path);
        if (before.Length != _length)
        {
            throw OtherLength(before.Length);
        }

        var incoming = path + ".new";
        using (var file = File.OpenHandle(incoming, FileMode.Create, FileAccess.Write))
        {
            durable.Write(file, before, 0);
            durable.Write(file, further, before.Length);
            durable.Sync(file);
        }

        File.Move(incoming, path, overwrite: true);
        durable.SyncFolder(Path.GetDirectoryName(path)!);
        _length += further.Length;
    });

    /// <inheritdoc/>
    public long SetAside(long soundBytes, string into)
    {
        var remains = File.ReadAllBytes(path)[(int)soundBytes..];
        latch.Guard(() =>
        {
            using (var copy = File.OpenHandle(into, FileMode.CreateNew, FileAccess.Write))
            {
                durable.Write(copy, remains, 0);
                durable.Sync(copy);
            }

            durable.SyncFolder(Path.GetDirectoryName(into)!);
            using var file = Open();
            durable.Cut(file, soundBytes);
            durable.Sync(file);
            _length = soundBytes;
        });
        return remains.Length;
    }

    /// <summary>Opens the file as it was left; a length of its own means that something else has written to it.</summary>
    private SafeFileHandle Open()
    {
        var mode = _length == 0 ? FileMode.OpenOrCreate : FileMode.Open;
        var file = File.OpenHandle(path, mode, FileAccess.Write, FileShare.Read);
        var length = RandomAccess.GetLength(file);
        if (length == _length)
        {
            return file;
        }

        file.Dispose();
        throw OtherLength(length);
    }

    private IOException OtherLength(long length) =>
        new($"{path} has {length} bytes and should have {_length}: another program changed it");
}
