using System.Security.Cryptography;
using System.Text.Json;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Backups;

/// <summary>A folder with a backup: the same files as in the data folder, their list, and what a backup in progress writes.</summary>
/// <remarks>Files named by their hash are laid into their places one by one: they only ever add. All others are written aside
/// first, and change places together by a list of renames (<c>switch.json</c>) that is on disk before the first of them: whoever
/// finds it goes through it again. So the backup is the earlier one or the newer one, whenever it is broken off.</remarks>
internal sealed class BackupFolder(string root, IDurable durable)
{
    /// <summary>The place of what is taken away.</summary>
    public const string Away = "";

    private const string LockName = "inspectlog-backup.lock";
    private const string SwitchName = "switch.json";
    private const string Incoming = "incoming";

    private readonly IncomingFiles _incoming = new(root, durable);

    public string Root => root;

    /// <summary>Whether it is missing, empty, or one with a backup, be it one that never got to its end.</summary>
    public bool IsFit => !Directory.Exists(root) || !Directory.EnumerateFileSystemEntries(root).Any()
        || File.Exists(At(LockName)) || File.Exists(At(BackupManifest.FileName));

    /// <summary>Makes the folder where it is missing and takes it for this process.</summary>
    /// <exception cref="IOException">It cannot be made, or another process has it.</exception>
    public FileStream Take()
    {
        Directory.CreateDirectory(root);
        try
        {
            return new FileStream(At(LockName), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException cause) when (DataFolder.IsHeldByAnother(cause))
        {
            throw new IOException($"A backup into {root} is under way already. Wait until it is done.", cause);
        }
    }

    /// <summary>What the backup holds; null where none was completed.</summary>
    /// <exception cref="FormatException">Its list cannot be read, in a clause.</exception>
    /// <exception cref="IOException">The same.</exception>
    public BackupManifest? Manifest() =>
        PlaceOf(BackupManifest.FileName) is { } file ? BackupManifest.Read(File.ReadAllBytes(file)) : null;

    /// <summary>Where a file of the backup is: in its place, or where it waits for a switch that was broken off. Null where it is
    /// not there.</summary>
    public string? PlaceOf(string path)
    {
        var waiting = Switch().Where(one => one.To == path).Select(one => At(one.From)).FirstOrDefault(File.Exists);
        return waiting ?? (File.Exists(At(path)) ? At(path) : null);
    }

    /// <summary>Ends a switch that was broken off, and clears what else was left.</summary>
    public void TidyUp()
    {
        Finish();
        _incoming.RemoveAll();
    }

    /// <summary>Writes a file aside, and reads it back.</summary>
    /// <returns>Its path below the folder.</returns>
    /// <exception cref="InvalidDataException">What was read is not what it should be.</exception>
    /// <exception cref="IOException">It could not be written, or was not there as it was written.</exception>
    public string Add(Stream content, long bytes, string sha256)
    {
        var place = _incoming.Write(content, new MediaFile(sha256, bytes, ""));
        return HashAfresh(place) == sha256
            ? $"{Incoming}/{Path.GetFileName(place)}"
            : throw new IOException($"The disk of {root} did not keep what was written: what was read back is something else. Use another disk.");
    }

    /// <summary>Lays a file that was written aside into its place at once.</summary>
    public void Place(string from, string to)
    {
        MakeFolderOf(to);
        File.Move(At(from), At(to), overwrite: true);
        durable.SyncFolder(Path.GetDirectoryName(At(to))!);
    }

    /// <summary>Lets all of them change places together.</summary>
    /// <param name="files">Where each is, and where it belongs.</param>
    public void SwitchTo(IReadOnlyList<(string From, string To)> files)
    {
        foreach (var (_, to) in files.Where(file => file.To != Away))
        {
            MakeFolderOf(to);
        }

        durable.SyncFolder(At(Incoming));
        WholeFile.Write(durable, At(SwitchName), JsonSerializer.SerializeToUtf8Bytes(files.Select(one => new Move(one.From, one.To))));
        Finish();
    }

    /// <summary>SHA-256 of a file as the disk has it, lower-case hex.</summary>
    public static string HashAfresh(string path)
    {
        using var file = new Durable().OpenAfresh(path);
        return Convert.ToHexStringLower(SHA256.HashData(file));
    }

    private void Finish()
    {
        var moves = Switch();
        foreach (var (from, to) in moves.Where(one => File.Exists(At(one.From))))
        {
            if (to == Away)
            {
                File.Delete(At(from));
            }
            else
            {
                File.Move(At(from), At(to), overwrite: true);
            }
        }

        foreach (var folder in moves.Select(one => Path.GetDirectoryName(At(one.To == Away ? one.From : one.To))!).Distinct())
        {
            durable.SyncFolder(folder);
        }

        if (moves.Count > 0)
        {
            File.Delete(At(SwitchName));
            durable.SyncFolder(root);
        }
    }

    private List<Move> Switch()
    {
        if (!File.Exists(At(SwitchName)))
        {
            return [];
        }

        try
        {
            var moves = JsonSerializer.Deserialize<List<Move>>(File.ReadAllBytes(At(SwitchName)));
            if (moves?.TrueForAll(move => PathBelow.Is(move.From) && (move.To == Away || PathBelow.Is(move.To))) == true)
            {
                return moves;
            }
        }
        catch (JsonException)
        {
            // Told below, like one that leads elsewhere.
        }

        throw new IOException($"An earlier backup into {root} was broken off, and its list {SwitchName} is damaged. Back up into another folder.");
    }

    private void MakeFolderOf(string path)
    {
        var missing = new Stack<string>();
        for (var folder = Path.GetDirectoryName(At(path))!; !Directory.Exists(folder); folder = Path.GetDirectoryName(folder)!)
        {
            missing.Push(folder);
        }

        foreach (var folder in missing)
        {
            Directory.CreateDirectory(folder);
            durable.SyncFolder(Path.GetDirectoryName(folder)!);
        }
    }

    private string At(string path) => Path.Combine(root, path.Replace('/', Path.DirectorySeparatorChar));

    private sealed record Move(string From, string To);
}
