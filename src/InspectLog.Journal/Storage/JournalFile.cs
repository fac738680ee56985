using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Storage;

/// <summary>The file of one journal. Grows by whole records, each on disk before <see cref="Append"/> returns.</summary>
internal sealed class JournalFile(string path, IDurable durable, WriteLatch latch)
{
    private long _length;

    /// <summary>The file.</summary>
    public string Path => path;

    /// <summary>Closes it, and what stands beside it, to writing.</summary>
    public WriteLatch Latch => latch;

    /// <summary>Reads the whole file; empty when it does not exist.</summary>
    public byte[] Read()
    {
        var bytes = File.Exists(path) ? durable.ReadAfresh(path) : [];
        _length = bytes.Length;
        return bytes;
    }

    /// <summary>Appends a record in one write and syncs it. Of one that fails nothing stays: whoever was told that it was
    /// not kept must not find it there after the next start.</summary>
    /// <exception cref="JournalReadOnlyException">It may not be on disk; nothing more can be written.</exception>
    public void Append(ReadOnlyMemory<byte> record) => latch.Guard(() =>
    {
        using var file = Open();
        try
        {
            durable.Write(file, record.Span, _length);
            durable.Sync(file);
            if (_length == 0)
            {
                durable.SyncFolder(System.IO.Path.GetDirectoryName(path)!);
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
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // As said; the first failure is the one that is told.
        }
    }

    /// <summary>Adds many lines at once, all or none: the file is written anew beside its place and takes it by one rename.
    /// A torn end would make a journal part from the one it continues.</summary>
    /// <exception cref="JournalReadOnlyException">They may not be on disk; nothing more can be written.</exception>
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
        durable.SyncFolder(System.IO.Path.GetDirectoryName(path)!);
        _length += further.Length;
    });

    /// <summary>Copies what follows the sound part into a file, syncs that, and only then cuts it off.</summary>
    /// <returns>How many bytes that was.</returns>
    /// <exception cref="JournalReadOnlyException">The bytes could not be set aside; they are still in place.</exception>
    public long SetAside(int soundBytes, string into)
    {
        var remains = File.ReadAllBytes(path)[soundBytes..];
        latch.Guard(() =>
        {
            using (var copy = File.OpenHandle(into, FileMode.CreateNew, FileAccess.Write))
            {
                durable.Write(copy, remains, 0);
                durable.Sync(copy);
            }

            durable.SyncFolder(System.IO.Path.GetDirectoryName(into)!);
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
