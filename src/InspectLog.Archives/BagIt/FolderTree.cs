namespace InspectLog.Archives.BagIt;

/// <summary>A folder as a bag.</summary>
public sealed class FolderTree : IFileTree
{
    private readonly string _root;
    private readonly TreeFiles _files = new();

    private FolderTree(string root) => _root = root;

    /// <inheritdoc/>
    public IReadOnlyDictionary<string, long> Lengths => _files.Lengths;

    /// <inheritdoc/>
    public IReadOnlyList<BagFault> Faults => _files.Faults;

    /// <summary>Looks through a folder. Links are not followed.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static FolderTree Of(string folder)
    {
        var tree = new FolderTree(Path.GetFullPath(folder));
        tree.Walk(new DirectoryInfo(tree._root), "", depth: 0);
        tree._files.Finish();
        return tree;
    }

    /// <inheritdoc/>
    public Stream Open(string path) => Lengths.ContainsKey(path)
        ? new FileStream(Path.Combine(_root, path.Replace('/', Path.DirectorySeparatorChar)), FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16)
        : throw new FileNotFoundException("No file of this bag.", path);

    /// <inheritdoc/>
    public void Dispose()
    {
        // Nothing is held open.
    }

    private void Walk(DirectoryInfo folder, string prefix, int depth)
    {
        foreach (var one in folder.EnumerateFileSystemInfos().OrderBy(one => one.Name, StringComparer.Ordinal))
        {
            var path = prefix + one.Name;
            if (one.Attributes.HasFlag(FileAttributes.ReparsePoint))
            {
                _files.Refuse(path, "is a link, and links are not followed");
            }
            else if (one is FileInfo file)
            {
                _files.Add(path, file.Length);
            }
            else if (depth > BagPath.Longest)
            {
                _files.Refuse(path, "lies too deep");
            }
            else
            {
                Walk((DirectoryInfo)one, path + "/", depth + 1);
            }
        }
    }
}
