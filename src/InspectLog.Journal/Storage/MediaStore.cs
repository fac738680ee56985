using System.Security.Cryptography;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Storage;

/// <summary>Recordings and photos, named by the SHA-256 of their bytes. Written once, never changed.</summary>
public sealed class MediaStore
{
    private readonly MediaFiles _files;
    private readonly IncomingFiles _incoming;
    private readonly IDurable _durable;
    private readonly WriteLatch _latch;

    internal MediaStore(string root, IDurable durable, WriteLatch latch)
    {
        _files = new MediaFiles(root);
        _incoming = new IncomingFiles(root, durable);
        _durable = durable;
        _latch = latch;
    }

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

    /// <summary>Keeps a file of any size, under the name it must have.</summary>
    /// <param name="content">Its bytes.</param>
    /// <param name="file">What they must be.</param>
    /// <exception cref="InvalidDataException">They are not those of the file; nothing was kept.</exception>
    /// <exception cref="JournalReadOnlyException">The disk is full or a sync failed. Nothing was acknowledged.</exception>
    public void KeepFrom(Stream content, MediaFile file) => _latch.Guard(() =>
    {
        var place = _files.PlaceOf(file.Sha256);
        var folder = Path.GetDirectoryName(place)!;
        MakeFolder(folder);
        if (Check(file) != MediaCondition.Whole)
        {
            File.Move(_incoming.Write(content, file), place, overwrite: true);
        }

        _durable.SyncFolder(folder);
    });

    /// <summary>Path of a kept file; null when it is not there.</summary>
    /// <param name="sha256">Its name, 64 lower-case hex digits; anything else gives null.</param>
    public string? PathOf(string sha256) => _files.PathOf(sha256);

    /// <summary>Reads a kept file through and compares it with its name and length.</summary>
    /// <param name="file">The file, as the journal names it.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public MediaCondition Check(MediaFile file) => _files.Check(file);

    /// <summary>Removes what an interrupted <see cref="Keep(ReadOnlySpan{byte}, string)"/> left behind: it was never acknowledged.</summary>
    internal void RemoveUnfinished() => _incoming.RemoveAll();

    private void Store(ReadOnlySpan<byte> content, MediaFile file)
    {
        var place = _files.PlaceOf(file.Sha256);
        var folder = Path.GetDirectoryName(place)!;
        MakeFolder(folder);
        if (Check(file) != MediaCondition.Whole)
        {
            File.Move(_incoming.Write(content), place, overwrite: true);
        }

        // Also when the file was there already: whoever put it there may have stopped short of this.
        _durable.SyncFolder(folder);
    }

    private void MakeFolder(string folder)
    {
        Directory.CreateDirectory(folder);
        _durable.SyncFolder(_files.Root);
    }
}
