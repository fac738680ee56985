using InspectLog.Journal.Storage;

namespace InspectLog.Archives.Making;

/// <summary>Clean copies of the photos of an archive, each made once: they lie in a folder of their own until the archive is
/// made.</summary>
internal sealed class Pictures(ArchiveContents contents, ICleanCopies copies) : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-copies-");
    private readonly HashSet<string> _cannotBeShown = [];

    /// <summary>The copy of a photo; null where it cannot be shown, or is not here.</summary>
    public async Task<byte[]?> OfAsync(string sha256, CancellationToken stop)
    {
        // What an entry names comes from a journal, so it is looked at before it becomes part of a path.
        if (sha256.Length != 64 || !sha256.All(char.IsAsciiHexDigitLower) || _cannotBeShown.Contains(sha256))
        {
            return null;
        }

        var kept = Path.Combine(_folder.FullName, sha256);
        if (File.Exists(kept))
        {
            return await File.ReadAllBytesAsync(kept, stop).ConfigureAwait(false);
        }

        if (await MakeAsync(sha256, stop).ConfigureAwait(false) is not { } copy)
        {
            _cannotBeShown.Add(sha256);
            return null;
        }

        await File.WriteAllBytesAsync(kept, copy, stop).ConfigureAwait(false);
        return copy;
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private async Task<byte[]?> MakeAsync(string sha256, CancellationToken stop)
    {
        if (await contents.Source.OpenAsync(sha256, stop).ConfigureAwait(false) is { } original)
        {
            await using (original.ConfigureAwait(false))
            {
                return await copies.OfAsync(original, stop).ConfigureAwait(false);
            }
        }

        return contents.KnownWithheld(sha256) is { Copy: { } copy }
            ? await StreamedBytes.ReadAsync(contents.Source.OpenAsync(copy.Sha256, stop), stop).ConfigureAwait(false)
            : null;
    }
}
