namespace InspectLog.Archives.BagIt;

/// <summary>Collects the files of a tree, and refuses names that could be taken for one another or lead elsewhere.</summary>
internal sealed class TreeFiles
{
    private readonly Dictionary<string, long> _lengths = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _keys = new(StringComparer.Ordinal);
    private readonly HashSet<string> _folders = new(StringComparer.Ordinal);
    private readonly List<BagFault> _faults = [];

    public IReadOnlyDictionary<string, long> Lengths => _lengths;

    public IReadOnlyList<BagFault> Faults => _faults;

    /// <summary>Notes something wrong.</summary>
    public void Refuse(string path, string words) => _faults.Add(new(Shown(path), words));

    /// <summary>Takes a file; false where it is refused.</summary>
    public bool Add(string path, long length)
    {
        if (BagPath.Fault(path) is { } fault)
        {
            Refuse(path, fault);
            return false;
        }

        var key = BagPath.Key(path);
        if (!_keys.TryAdd(key, path))
        {
            Refuse(path, _keys[key] == path ? "is there twice" : $"cannot be told from {_keys[key]} on some systems");
            return false;
        }

        _lengths.Add(path, length);
        for (var slash = key.IndexOf('/', StringComparison.Ordinal); slash > 0; slash = key.IndexOf('/', slash + 1))
        {
            _folders.Add(key[..slash]);
        }

        return true;
    }

    /// <summary>To be called when all are added: a name may be that of a file or of a folder, not of both.</summary>
    public void Finish()
    {
        foreach (var key in _keys.Keys.Where(_folders.Contains).Order(StringComparer.Ordinal))
        {
            Refuse(_keys[key], "is a file and a folder at once");
        }
    }

    // A name from a stranger, fit to be printed.
    private static string Shown(string path)
    {
        var cut = path.Length > BagPath.Longest ? path[..BagPath.Longest] + "…" : path;
        return string.Concat(cut.Select(c => char.IsControl(c) ? '\uFFFD' : c));
    }
}
