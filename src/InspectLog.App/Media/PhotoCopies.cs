using InspectLog.Journal;
using InspectLog.Photos;

namespace InspectLog.App.Media;

/// <summary>Upright display copies and thumbnails, made when first asked for and kept beside the media. They can be
/// deleted at any time. One photo is decoded at a time, which bounds the memory that pictures take.</summary>
public sealed class PhotoCopies(Garage garage) : IDisposable
{
    private readonly SemaphoreSlim _decoding = new(1, 1);

    /// <summary>Path of a copy; null when there is no such photo, or it cannot be decoded.</summary>
    /// <param name="sha256">The original.</param>
    /// <param name="longestEdge">Longest edge, pixels.</param>
    /// <param name="cancellationToken">Given up while waiting for another photo.</param>
    public async Task<string?> PathOf(string sha256, int longestEdge, CancellationToken cancellationToken)
    {
        if (garage.Media.PathOf(sha256) is not { } original)
        {
            return null;
        }

        var folder = Path.Combine(garage.Folder, "copies");
        var copy = Path.Combine(folder, FormattableString.Invariant($"{sha256}-{longestEdge}.jpg"));
        if (File.Exists(copy))
        {
            return copy;
        }

        await _decoding.WaitAsync(cancellationToken);
        try
        {
            var bytes = PhotoIntake.MakeCopy(await File.ReadAllBytesAsync(original, cancellationToken), longestEdge);
            Directory.CreateDirectory(folder);
            await File.WriteAllBytesAsync(copy + ".part", bytes, cancellationToken);
            File.Move(copy + ".part", copy, overwrite: true);
            return copy;
        }
        catch (InvalidDataException)
        {
            return null;
        }
        finally
        {
            _decoding.Release();
        }
    }

    public void Dispose() => _decoding.Dispose();
}
