using System.Security.Cryptography;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Photos;

namespace InspectLog.App.Media;

/// <summary>Takes in photos that are sent, so many at a time that memory stays within bounds.</summary>
/// <param name="room">Room for originals in memory.</param>
/// <param name="copies">Makes their copies.</param>
public sealed class IncomingPhotos(PhotoRoom room, PhotoCopies copies)
{
    /// <summary>Reads and examines what was sent.</summary>
    /// <param name="read">Reads it, once there is room; null where it did not arrive whole.</param>
    /// <param name="refuse">Is told why it is not taken.</param>
    /// <param name="cancellationToken">Given up.</param>
    /// <returns>The photo, which holds its room until <see cref="IncomingPhoto.ShowAsync"/> is done or it is disposed of;
    /// null where it is not taken.</returns>
    public async Task<IncomingPhoto?> TakeAsync(
        Func<CancellationToken, Task<byte[]?>> read, Action<string> refuse, CancellationToken cancellationToken)
    {
        var place = await room.EnterAsync(cancellationToken);
        IncomingPhoto? taken = null;
        try
        {
            if (await read(cancellationToken) is not { } bytes)
            {
                refuse("The photo did not arrive whole. Send it again.");
            }
            else if (PhotoIntake.Examine(bytes) is var result && result is PhotoResult.Ok(var facts))
            {
                taken = new(bytes, facts, place, copies);
            }
            else
            {
                refuse(((PhotoResult.Refused)result).Message);
            }

            return taken;
        }
        finally
        {
            if (taken is null)
            {
                place.Dispose();
            }
        }
    }
}

/// <summary>A photo that comes in: in memory from when it is read until its copies are made.</summary>
public sealed class IncomingPhoto : IDisposable
{
    private readonly byte[] _bytes;
    private readonly IDisposable _place;
    private readonly PhotoCopies _copies;

    internal IncomingPhoto(byte[] bytes, PhotoFacts facts, IDisposable place, PhotoCopies copies)
    {
        (_bytes, Facts, _place, _copies) = (bytes, facts, place, copies);
        Sha256 = Convert.ToHexStringLower(SHA256.HashData(bytes));
    }

    /// <summary>Its SHA-256, lower-case hex.</summary>
    public string Sha256 { get; }

    /// <summary>What examining it gave.</summary>
    public PhotoFacts Facts { get; }

    /// <summary>Keeps the original bit for bit. It is on disk when this returns.</summary>
    /// <exception cref="Journal.JournalReadOnlyException">Nothing can be written at present.</exception>
    public MediaFile Keep(IMediaStore store) => store.Keep(_bytes, MediaTypes.Of(Facts.Format));

    /// <summary>Makes its copies, once the original is kept, and gives up its room.</summary>
    public async Task ShowAsync()
    {
        using (_place)
        {
            await _copies.TakeInAsync(Sha256, _bytes, Facts);
        }
    }

    public void Dispose() => _place.Dispose();
}
