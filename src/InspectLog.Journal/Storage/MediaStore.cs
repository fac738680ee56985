using System.Security.Cryptography;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Storage;

/// <summary>Recordings and photos, named by the SHA-256 of their bytes. Written once, never changed.</summary>
public sealed class MediaStore
{
    private readonly string _root;
    private readonly IDurable _durable;
    private readonly WriteLatch _latch;

    internal MediaStore(string root, IDurable durable, WriteLatch latch)
    {
        _root = root;
        _durable = durable;
        _latch = latch;
    }

    private string Incoming => Path.Combine(_root, "incoming");

    /// <summary>Keeps a file: written under another name, synced, renamed, and the folder synced. When this returns
    /// the bytes are on disk. Keeping the same bytes twice keeps them once.</summary>
    /// <param name="content">The bytes.</param>
    /// <param name="type">Media type.</param>
    /// <exception cref="JournalReadOnlyException">The disk is full or a sync failed. Nothing was acknowledged.</exception>
    public MediaFile Keep(ReadOnlySpan<byte> content, string type)
    {
        var file = new MediaFile(Convert.ToHexStringLower(SHA256.HashData(content)), content.Length, type);
        _latch.Guard(content, bytes => Store(bytes, file));
        return file;
    }

    /// <summary>Path of a kept file; null when it is not there.</summary>
    /// <param name="sha256">Its name, 64 lower-case hex digits; anything else gives null.</param>
    public string? PathOf(string sha256) =>
        IsName(sha256) && File.Exists(PlaceOf(sha256)) ? PlaceOf(sha256) : null;

    /// <summary>Reads a kept file through and compares it with its name.</summary>
    /// <param name="file">The file, as the journal names it.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public MediaCondition Check(MediaFile file)
    {
        if (PathOf(file.Sha256) is not { } path)
        {
            return MediaCondition.Missing;
        }

        using var bytes = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        return bytes.Length == file.Bytes && Convert.ToHexStringLower(SHA256.HashData(bytes)) == file.Sha256
            ? MediaCondition.Whole
            : MediaCondition.Damaged;
    }

    /// <summary>Removes what an interrupted <see cref="Keep"/> left behind: it was never acknowledged.</summary>
    internal void RemoveUnfinished()
    {
        if (Directory.Exists(Incoming))
        {
            Directory.Delete(Incoming, recursive: true);
        }
    }

    private void Store(ReadOnlySpan<byte> content, MediaFile file)
    {
        var place = PlaceOf(file.Sha256);
        var folder = Path.GetDirectoryName(place)!;
        MakeFolder(folder);
        if (Check(file) != MediaCondition.Whole)
        {
            File.Move(WriteIncoming(content), place, overwrite: true);
        }

        // Also when the file was there already: whoever put it there may have stopped short of this.
        _durable.SyncFolder(folder);
    }

    private string WriteIncoming(ReadOnlySpan<byte> content)
    {
        Directory.CreateDirectory(Incoming);
        var path = Path.Combine(Incoming, Path.GetRandomFileName());
        try
        {
            using var file = File.OpenHandle(path, FileMode.CreateNew, FileAccess.Write);
            _durable.Write(file, content, 0);
            _durable.Sync(file);
            return path;
        }
        catch (IOException)
        {
            File.Delete(path); // gives the space back when the disk is full
            throw;
        }
    }

    private void MakeFolder(string folder)
    {
        if (!Directory.Exists(folder))
        {
            Directory.CreateDirectory(folder);
        }

        _durable.SyncFolder(_root);
    }

    private string PlaceOf(string sha256) => Path.Combine(_root, sha256[..2], sha256);

    private static bool IsName(string sha256) => sha256.Length == 64 && sha256.All(char.IsAsciiHexDigitLower);
}

/// <summary>What reading a kept file through has shown.</summary>
public enum MediaCondition
{
    /// <summary>It is the file the journal names.</summary>
    Whole,

    /// <summary>It is not there.</summary>
    Missing,

    /// <summary>Its bytes are not the ones that were kept.</summary>
    Damaged,
}
