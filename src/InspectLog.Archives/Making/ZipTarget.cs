using System.IO.Hashing;
using InspectLog.Archives.Zip;
using InspectLog.Journal.Storage;

namespace InspectLog.Archives.Making;

/// <summary>Writes a bag as a ZIP, in the one spelling that is checked to the last byte (<see cref="ZipSpelling"/>).</summary>
public sealed class ZipTarget : IBagTarget
{
    private readonly string _parent;
    private readonly string _name;
    private readonly string _making;
    private readonly ZipSpelling _spelling;
    private readonly FileStream _file;
    private readonly List<ZipFile> _files = [];
    private bool _isComplete;

    /// <summary>Begins a bag.</summary>
    /// <param name="parent">The folder it is to lie in; made where it is missing.</param>
    /// <param name="name">Its name without the ending; where it is taken, a number follows it. In the ZIP, everything lies in a
    /// folder of this name.</param>
    /// <param name="day">The day it is made.</param>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public ZipTarget(string parent, string name, DateOnly day)
    {
        _parent = Path.GetFullPath(parent);
        _name = name;
        _spelling = new(day);
        _making = Path.Combine(_parent, $".{name}.{Path.GetRandomFileName()}");
        Directory.CreateDirectory(_parent);
        _file = new FileStream(_making, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16);
    }

    /// <inheritdoc/>
    public async Task AddAsync(string path, long? length, Func<Stream, Task> write)
    {
        var begun = new ZipFile($"{_name}/{path}", length ?? 0, 0, _file.Position);
        var before = _spelling.Before(begun);
        await _file.WriteAsync(before).ConfigureAwait(false);
        var counted = new CountedWrites(_file);
        await using (counted.ConfigureAwait(false))
        {
            await write(counted).ConfigureAwait(false);
        }

        var file = begun with { Length = counted.Written, Crc32 = counted.Crc32 };
        var end = _file.Position;
        if (_spelling.Before(file) is var known && known.Length != before.Length)
        {
            throw new IOException($"{path} became larger than was said when it was begun.");
        }

        _file.Position = begun.At;
        await _file.WriteAsync(known).ConfigureAwait(false);
        _file.Position = end;
        _files.Add(file);
    }

    /// <inheritdoc/>
    public string Complete()
    {
        _file.Write(_spelling.After(_files, _file.Position));
        _file.Flush();
        DurableFiles.Sync(_file.SafeFileHandle);
        _file.Dispose();
        var place = FreeNames.Take(_parent, _name, ".zip", name => System.IO.File.Move(_making, name));
        _isComplete = true;
        DurableFiles.SyncFolder(_parent);
        return place;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _file.Dispose();
        if (!_isComplete)
        {
            System.IO.File.Delete(_making);
        }
    }

    /// <summary>Passes writes on, and counts them.</summary>
    private sealed class CountedWrites(Stream to) : WriteOnlyStream
    {
        private readonly Crc32 _crc = new();

        public long Written { get; private set; }

        public uint Crc32 => _crc.GetCurrentHashAsUInt32();

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            to.Write(buffer);
            _crc.Append(buffer);
            Written += buffer.Length;
        }
    }
}
