using System.Text.Json;
using InspectLog.Journal.Index;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Erasing;

/// <summary>An erasure that was decided, as it is on disk: what changes places and what is deleted. It names nobody. As long as
/// its list is not there nothing has happened; from then on it is gone through to its end, by whoever finds it.</summary>
/// <param name="root">The data folder.</param>
/// <param name="durable">Writes and syncs.</param>
internal sealed class PendingErasure(string root, IDurable durable)
{
    /// <summary>Name of the list in the data folder.</summary>
    public const string ListName = "erasing.json";

    /// <summary>Name of the folder in which the journals are written anew.</summary>
    public const string FolderName = "erasing";

    // What comes in, is being downloaded or can be made again: of whom it is nobody knows, and nothing of it is the record.
    private static readonly string[] Passing = ["uploads", "pieces", "archives", "archives-sent"];

    private static readonly JsonSerializerOptions Format = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase, RespectNullableAnnotations = true };

    private readonly List<(string Staged, string To)> _moves = [];

    /// <summary>Whether one was decided in a data folder and is not done.</summary>
    public static bool IsIn(string root) => File.Exists(Path.Combine(root, ListName));

    /// <summary>Writes a file anew, aside.</summary>
    /// <param name="path">Its place, below the data folder, with slashes.</param>
    /// <param name="bytes">Its bytes; null takes it away.</param>
    /// <exception cref="IOException">It could not be written.</exception>
    public void Stage(string path, byte[]? bytes)
    {
        Directory.CreateDirectory(At(FolderName));
        if (bytes is null)
        {
            _moves.Add(("", path));
            return;
        }

        var staged = $"{FolderName}/{_moves.Count}";
        WholeFile.Write(durable, At(staged), bytes);
        _moves.Add((staged, path));
    }

    /// <summary>Decides it: when this returns it will be done, come what may.</summary>
    /// <param name="media">Names of recordings and photos that go.</param>
    /// <param name="files">Other files that go, below the data folder, with slashes.</param>
    /// <exception cref="IOException">It could not be written.</exception>
    public void Decide(IEnumerable<string> media, IEnumerable<string> files)
    {
        durable.SyncFolder(root); // the folder of what was staged
        WholeFile.Write(durable, At(ListName), JsonSerializer.SerializeToUtf8Bytes(
            new List([.. _moves.Select(move => new Move(move.Staged, move.To))], [.. media], [.. files]), Format));
    }

    /// <summary>Takes back what was written aside, where nothing was decided.</summary>
    public void TakeBack()
    {
        if (IsIn(root) && TryRead() is null)
        {
            File.Delete(At(ListName)); // says nothing, and is decided anew
        }

        if (Directory.Exists(At(FolderName)) && !IsIn(root))
        {
            Directory.Delete(At(FolderName), recursive: true);
        }
    }

    /// <summary>Goes through the list, from wherever it was left; nothing where there is none.</summary>
    /// <param name="index">Makes the index anew, which must hold nothing of what is gone.</param>
    /// <exception cref="IOException">It could not be done; it is gone on with at the next start.</exception>
    /// <exception cref="InvalidDataException">The list is damaged, or leads out of the data folder. Nothing was done.</exception>
    public void Finish(Action index)
    {
        if (!IsIn(root))
        {
            return;
        }

        var list = Read();
        var folders = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (staged, to) in list.Moves)
        {
            if (staged.Length == 0)
            {
                Delete(At(to), folders);
            }
            else if (File.Exists(At(staged)))
            {
                File.Move(At(staged), At(to), overwrite: true);
                folders.Add(Path.GetDirectoryName(At(to))!);
            }
        }

        Sync(folders); // before what they no longer name goes
        foreach (var path in list.Media.Select(new MediaFiles(At("media")).PlaceOf).Concat(list.Files.Select(At)).Concat(list.Media.SelectMany(CopiesOf)).Concat(InPassing()).ToList())
        {
            Delete(path, folders);
        }

        Sync(folders);
        index();
        if (Directory.Exists(At(FolderName)))
        {
            Directory.Delete(At(FolderName), recursive: true);
        }

        File.Delete(At(ListName));
        try
        {
            durable.SyncFolder(root);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            // All of it is done. Should the list be there again after a power cut, it is gone through once more and changes nothing.
        }
    }

    /// <summary>Deletes the files of an index that nobody has open.</summary>
    public void DeleteIndex() => IndexFiles.Delete(new DataFolder(root).Index);

    private List Read() => TryRead() ?? throw new InvalidDataException(
        $"The erasing of a person's data was begun in this folder and is not done, and its list {ListName} is damaged: some of it may still be here. Erase the person once more.");

    /// <summary>The list; null where it is damaged, or names what is not in the data folder: nothing of it is done then.</summary>
    private List? TryRead()
    {
        try
        {
            return JsonSerializer.Deserialize<List>(File.ReadAllBytes(At(ListName)), Format) is { } list && IsOfThisFolder(list) ? list : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private bool IsOfThisFolder(List list) => list is { Moves: not null, Media: not null, Files: not null }
        && list.Moves.All(move => (move.Staged.Length == 0 || PathBelow.IsIn(root, move.Staged)) && PathBelow.IsIn(root, move.To))
        && list.Media.All(MediaFiles.IsName)
        && list.Files.All(path => PathBelow.IsIn(root, path));

    private IEnumerable<string> CopiesOf(string sha256)
    {
        var folder = At($"copies/{sha256[..2]}");
        return Directory.Exists(folder) ? Directory.EnumerateFiles(folder, sha256 + "*") : [];
    }

    private IEnumerable<string> InPassing() => Passing.Select(At).Where(Directory.Exists)
        .SelectMany(folder => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories));

    private static void Delete(string path, HashSet<string> folders)
    {
        if (File.Exists(path))
        {
            File.Delete(path);
            folders.Add(Path.GetDirectoryName(path)!);
        }
    }

    private void Sync(HashSet<string> folders)
    {
        foreach (var folder in folders.Where(Directory.Exists))
        {
            durable.SyncFolder(folder);
        }

        folders.Clear();
    }

    private string At(string path) => Path.Combine(root, path.Replace('/', Path.DirectorySeparatorChar));

    private sealed record List(IReadOnlyList<Move> Moves, IReadOnlyList<string> Media, IReadOnlyList<string> Files);

    private sealed record Move(string Staged, string To);
}
