using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Storage;

/// <summary>The file of one journal. Grows by whole records, each on disk before <see cref="Append"/> returns.</summary>
internal sealed class JournalFile(string path, IDurable durable, WriteLatch latch)
{
    private long _length;

    /// <summary>The file.</summary>
    public string Path => path;

    /// <summary>Reads the whole file; empty when it does not exist.</summary>
    public byte[] Read()
    {
        var bytes = File.Exists(path) ? durable.ReadAfresh(path) : [];
        _length = bytes.Length;
        return bytes;
    }

    /// <summary>Appends a record in one write and syncs it.</summary>
    /// <exception cref="JournalReadOnlyException">It may not be on disk; nothing more can be written.</exception>
    public void Append(ReadOnlyMemory<byte> record) => latch.Guard(() =>
    {
        var isNew = _length == 0;
        using var file = Open();
        durable.Write(file, record.Span, _length);
        durable.Sync(file);
        if (isNew)
        {
            durable.SyncFolder(System.IO.Path.GetDirectoryName(path)!);
        }

        _length += record.Length;
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
            RandomAccess.SetLength(file, soundBytes);
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
        throw new IOException($"{path} has {length} bytes and should have {_length}: another program changed it");
    }
}
