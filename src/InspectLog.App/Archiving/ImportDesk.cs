using System.Collections.Concurrent;
using System.Security.Cryptography;
using InspectLog.Archives.Checking;
using InspectLog.Archives.Importing;
using InspectLog.Archives.Zip;
using InspectLog.Journal;

namespace InspectLog.App.Archiving;

/// <summary>Archives that were sent and wait for somebody's word. Each lies in a file of the data folder until it was taken in;
/// the newest few are kept, until the program stops. Safe for use by many threads.</summary>
public sealed class ImportDesk : IDisposable
{
    /// <summary>Largest archive taken by a page, bytes.</summary>
    public const long LargestArchive = 1L << 40;

    private const int Most = 3;

    private readonly Garage _garage;
    private readonly string _folder;
    private readonly ConcurrentDictionary<string, SentArchive> _sent = new(StringComparer.Ordinal);
    private long _turn;

    public ImportDesk(Garage garage)
    {
        _garage = garage;
        _folder = Path.Combine(garage.Folder, "archives-sent");
        Forget();
    }

    /// <summary>Takes the file of an archive, and checks it. One that is not intact is not kept.</summary>
    /// <param name="file">Its bytes.</param>
    /// <param name="printed">What a printed report says, to be held against it; empty where nothing was given.</param>
    /// <param name="stop">Gives it up.</param>
    /// <returns>What was found, and the archive's number; null where it is not intact.</returns>
    public async Task<(string? Id, CheckedArchive Found)> TakeAsync(Stream file, string printed, CancellationToken stop)
    {
        Directory.CreateDirectory(_folder);
        var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        var path = Path.Combine(_folder, id);
        try
        {
            await using (var to = new FileStream(path, FileMode.CreateNew, FileAccess.Write))
            {
                await file.CopyToAsync(to, stop);
            }

            var found = await Task.Run(() => Check(path, stop), stop);
            if (!found.IsIntact)
            {
                File.Delete(path);
                return (null, found);
            }

            Keep(id, new(path, found.Facts!, printed, Interlocked.Increment(ref _turn)));
            return (id, found);
        }
        catch
        {
            File.Delete(path);
            throw;
        }
    }

    /// <summary>An archive that was sent; null where it is not here any more.</summary>
    /// <returns>What it tells, and what a printed report was said to say.</returns>
    public (ArchiveFacts Facts, string Printed)? Find(string id) => _sent.GetValueOrDefault(id) is { } sent ? (sent.Facts, sent.Printed) : null;

    /// <summary>Takes an archive in, and forgets it.</summary>
    /// <returns>The vehicle; null where the archive is not here any more.</returns>
    /// <exception cref="ImportRefusedException">It cannot be taken in.</exception>
    public string? TakeIn(string id, CancellationToken stop)
    {
        if (_sent.GetValueOrDefault(id) is not { } sent)
        {
            return null;
        }

        using (var tree = ZipTree.Of(sent.Path))
        {
            var (vehicle, _) = new ArchiveImport(_garage, ArchiveFiles.FreeSpace).Run(tree, sent.Facts, stop);
            Drop(id);
            return vehicle;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Forget();

    private static CheckedArchive Check(string path, CancellationToken stop)
    {
        using var tree = ZipTree.Of(path);
        return ArchiveFiles.Check.Check(tree, stop: stop);
    }

    private void Keep(string id, SentArchive sent)
    {
        _sent[id] = sent;
        foreach (var (old, _) in _sent.OrderByDescending(one => one.Value.Turn).Skip(Most))
        {
            Drop(old);
        }
    }

    private void Drop(string id)
    {
        if (_sent.TryRemove(id, out var sent))
        {
            File.Delete(sent.Path);
        }
    }

    private void Forget()
    {
        if (Directory.Exists(_folder))
        {
            Directory.Delete(_folder, recursive: true);
        }
    }

    private sealed record SentArchive(string Path, ArchiveFacts Facts, string Printed, long Turn);
}
