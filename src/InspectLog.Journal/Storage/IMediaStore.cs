using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Storage;

/// <summary>Recordings and photos, named by the SHA-256 of their bytes. Written once, never changed. It gives streams and
/// never paths: where the bytes lie is its own business.</summary>
/// <remarks>Keeping is synchronous. It ends with fsync, for which no system here has an asynchronous call: it would only move
/// the waiting to another thread, and whoever keeps something waits for it in any case. Reading is by streams, whose own
/// reads are asynchronous.</remarks>
public interface IMediaStore
{
    /// <summary>Keeps bytes. When this returns they are on disk. Keeping the same bytes twice keeps them once.</summary>
    /// <param name="content">The bytes.</param>
    /// <param name="type">Media type.</param>
    /// <exception cref="JournalReadOnlyException">The disk is full or a sync failed. Nothing was acknowledged.</exception>
    MediaFile Keep(ReadOnlySpan<byte> content, string type);

    /// <summary>Keeps bytes of any length, under the name they must have.</summary>
    /// <param name="content">The bytes.</param>
    /// <param name="file">What they must be.</param>
    /// <exception cref="InvalidDataException">They are not those of the file; nothing was kept.</exception>
    /// <exception cref="JournalReadOnlyException">The disk is full or a sync failed. Nothing was acknowledged.</exception>
    void KeepFrom(Stream content, MediaFile file);

    /// <summary>Whether something of this name is there.</summary>
    /// <param name="sha256">64 lower-case hex digits; anything else is never there.</param>
    bool Has(string sha256);

    /// <summary>Opens what is kept; null when it is not there. The stream can seek and knows its length.</summary>
    /// <param name="sha256">Its name, 64 lower-case hex digits; anything else gives null.</param>
    /// <param name="stop">Gives it up.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    Task<Stream?> OpenAsync(string sha256, CancellationToken stop);

    /// <summary>Reads what is kept through and compares it with its name and length.</summary>
    /// <param name="file">The file, as the journal names it.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    MediaCondition Check(MediaFile file);
}

/// <summary>Reads streams of known length.</summary>
public static class StreamedBytes
{
    /// <summary>All of a stream, which is closed then; null of none.</summary>
    /// <param name="opening">Opens the stream.</param>
    /// <param name="stop">Gives it up.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static async Task<byte[]?> ReadAsync(Task<Stream?> opening, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(opening);
        var stream = await opening.ConfigureAwait(false);
        if (stream is null)
        {
            return null;
        }

        await using (stream.ConfigureAwait(false))
        {
            var bytes = new byte[stream.Length];
            await stream.ReadExactlyAsync(bytes, stop).ConfigureAwait(false);
            return bytes;
        }
    }
}
