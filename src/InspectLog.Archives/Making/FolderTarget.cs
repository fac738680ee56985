using InspectLog.Journal.Storage;

namespace InspectLog.Archives.Making;

/// <summary>Writes a bag as a folder.</summary>
public sealed class FolderTarget : IBagTarget
{
    private readonly string _parent;
    private readonly string _name;
    private readonly string _making;
    private readonly List<string> _files = [];
    private readonly HashSet<string> _folders;
    private bool _isComplete;

    /// <summary>Begins a bag.</summary>
    /// <param name="parent">The folder it is to lie in; made where it is missing.</param>
    /// <param name="name">Its name; where it is taken, a number follows it.</param>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public FolderTarget(string parent, string name)
    {
        _parent = Path.GetFullPath(parent);
        _name = name;
        _making = Path.Combine(_parent, $".{name}.{Path.GetRandomFileName()}");
        _folders = [_making];
        Directory.CreateDirectory(_making);
    }

    /// <inheritdoc/>
    public async Task AddAsync(string path, long? length, Func<Stream, Task> write)
    {
        var place = Path.Combine(_making, path.Replace('/', Path.DirectorySeparatorChar));
        for (var folder = Path.GetDirectoryName(place)!; _folders.Add(folder); folder = Path.GetDirectoryName(folder)!)
        {
            Directory.CreateDirectory(folder);
        }

        var file = new FileStream(place, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16);
        await using (file.ConfigureAwait(false))
        {
            await write(file).ConfigureAwait(false);
        }

        _files.Add(place);
    }

    /// <inheritdoc/>
    public string Complete()
    {
        _files.ForEach(DurableFiles.Sync);
        foreach (var folder in _folders)
        {
            DurableFiles.SyncFolder(folder);
        }

        var place = FreeNames.Take(_parent, _name, "", name => Directory.Move(_making, name));
        _isComplete = true;
        DurableFiles.SyncFolder(_parent);
        return place;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!_isComplete && Directory.Exists(_making))
        {
            Directory.Delete(_making, recursive: true);
        }
    }
}
