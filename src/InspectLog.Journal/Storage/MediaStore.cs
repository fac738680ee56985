using System.Security.Cryptography;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Storage;

/// <summary>Recordings and photos in files of a folder.</summary>
internal sealed class MediaStore : IMediaStore
{
    private readonly MediaFiles _files;
    private readonly IncomingFiles _incoming;
    private readonly IDurable _durable;
    private readonly WriteLatch _latch;

    public MediaStore(string root, IDurable durable, WriteLatch latch)
    {
        _files = new MediaFiles(root);
        _incoming = new IncomingFiles(root, durable);
        _durable = durable;
        _latch = latch;
    }

    /// <inheritdoc/>
    /// <remarks>Written under another name, synced, renamed, and the folder synced.</remarks>
    public MediaFile Keep(ReadOnlySpan<byte> content, string type)
    {
        var file = new MediaFile(Convert.ToHexStringLower(SHA256.HashData(content)), content.Length, type);
        _latch.Guard(content, bytes => Store(bytes, file));
        return file;
    }

    /// <inheritdoc/>
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

    /// <inheritdoc/>
    public bool Has(string sha256) => PathOf(sha256) is not null;

    /// <inheritdoc/>
    public Task<Stream?> OpenAsync(string sha256, CancellationToken stop) => Task.FromResult(_files.Open(sha256));

    /// <summary>Path of a kept file; null when it is not there.</summary>
    public string? PathOf(string sha256) => _files.PathOf(sha256);

    /// <inheritdoc/>
    public MediaCondition Check(MediaFile file) => _files.Check(file);

    /// <summary>Removes what an interrupted <see cref="Keep(ReadOnlySpan{byte}, string)"/> left behind: it was never acknowledged.</summary>
    public void RemoveUnfinished() => _incoming.RemoveAll();

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
