using System.Collections.Concurrent;
using System.Security.Cryptography;
using InspectLog.Journal;
using InspectLog.Journal.Storage;
using InspectLog.Photos;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Media;

/// <summary>Copies of photos and what is told of them: made when a photo comes in or, where they are missing, when first
/// asked for, and kept beside the media. Each photo is developed once at a time, and none holds up another.</summary>
/// <param name="garage">The garage.</param>
/// <param name="developer">Develops them.</param>
/// <param name="room">Room for originals in memory.</param>
/// <param name="life">What is under way when the program stops is given up.</param>
public sealed class PhotoCopies(Garage garage, IPhotoDeveloper developer, PhotoRoom room, IHostApplicationLifetime life)
{
    private readonly ConcurrentDictionary<Order, Lazy<Task<PhotoAnswer>>> _underWay = new();
    private readonly CopyFiles _files = CopyFiles.In(garage.Folder);
    private readonly Lock _slips = new();

    /// <summary>What was made of a photo; null where nothing was yet.</summary>
    /// <param name="sha256">The original.</param>
    public PhotoSlip? SlipOf(string sha256) => _files.SlipOf(sha256);

    /// <summary>Whether photos are being developed at this moment.</summary>
    public bool IsDeveloping => !_underWay.IsEmpty;

    /// <summary>A copy of a photo, in bounded time.</summary>
    /// <param name="sha256">The original.</param>
    /// <param name="kind">Which copy.</param>
    /// <param name="cancellationToken">Given up while waiting.</param>
    public async Task<PhotoCopy> OfAsync(string sha256, CopyKind kind, CancellationToken cancellationToken)
    {
        // Where a photo came without its original, the copy that came in its place is shown, decoded and drawn anew as any other.
        var file = !garage.Media.Has(sha256) && garage.Withheld(sha256)?.Copy is { } instead ? instead.Sha256 : sha256;
        if (!garage.Media.Has(file))
        {
            return new PhotoCopy.NoSuchPhoto();
        }

        return Known(sha256, kind) ?? Copy(
            await OnceAsync(
                new(sha256, kind == CopyKind.Print ? PhotoWork.Print : PhotoWork.Copies, IsInHand: false),
                work => FromStoreAsync(sha256, file, work),
                cancellationToken),
            kind);
    }

    /// <summary>Makes the copies of a photo that has just come in, so that whoever sent it is told at once if it cannot be
    /// shown: its slip says so then. Nothing is thrown where they cannot be made now.</summary>
    /// <param name="sha256">The original, which is in the media store.</param>
    /// <param name="original">Its bytes.</param>
    /// <param name="facts">What examining them gave.</param>
    public async Task TakeInAsync(string sha256, ReadOnlyMemory<byte> original, PhotoFacts facts)
    {
        if (Known(sha256, CopyKind.Display) is null)
        {
            await OnceAsync(
                new(sha256, PhotoWork.Copies, IsInHand: true), work => DevelopAsync(sha256, work, original, facts), CancellationToken.None);
        }
    }

    /// <summary>Forgets that a photo cannot be shown: it is tried again when it is asked for next.</summary>
    /// <param name="sha256">The original.</param>
    public void TryAgain(string sha256)
    {
        if (_files.SlipOf(sha256) is { Fault: not null })
        {
            _files.Forget(sha256);
        }
    }

    private PhotoCopy? Known(string sha256, CopyKind kind) => _files.SlipOf(sha256) is not { } slip ? null
        : slip.Fault is { } fault ? new PhotoCopy.CannotBeShown(fault)
        : _files.Copy(slip, kind) is { } copy ? new PhotoCopy.Ready(copy)
        : null;

    private static PhotoCopy Copy(PhotoAnswer answer, CopyKind kind) => answer switch
    {
        PhotoAnswer.Copies copies => new PhotoCopy.Ready(kind == CopyKind.Thumbnail ? copies.Thumbnail : copies.Display),
        PhotoAnswer.Print(var jpeg) => new PhotoCopy.Ready(jpeg),
        PhotoAnswer.NotShown(var fault) => new PhotoCopy.CannotBeShown(fault),
        _ => new PhotoCopy.Later(),
    };

    /// <summary>Develops a photo, or waits for whoever does it already.</summary>
    private async Task<PhotoAnswer> OnceAsync(
        Order order, Func<PhotoWork, Task<PhotoAnswer>> develop, CancellationToken cancellationToken)
    {
        var one = _underWay.GetOrAdd(order, _ => new(() => ForgottenAsync(order, develop)));
        try
        {
            return await one.Value.WaitAsync(cancellationToken);
        }
        catch (Exception problem) when (problem is OperationCanceledException or IOException or UnauthorizedAccessException)
        {
            // Nobody waits any more, the program stops, or the original cannot be read now.
            return new PhotoAnswer.NotNow();
        }
    }

    private async Task<PhotoAnswer> ForgottenAsync(Order order, Func<PhotoWork, Task<PhotoAnswer>> develop)
    {
        try
        {
            return await develop(order.Work);
        }
        finally
        {
            _underWay.TryRemove(order, out _);
        }
    }

    /// <summary>An original that is no longer what was sent is not shown in its place.</summary>
    private async Task<PhotoAnswer> FromStoreAsync(string sha256, string file, PhotoWork work)
    {
        using var place = await room.EnterAsync(life.ApplicationStopping);
        return await StreamedBytes.ReadAsync(garage.Media.OpenAsync(file, life.ApplicationStopping), life.ApplicationStopping) is { } bytes
            && Convert.ToHexStringLower(SHA256.HashData(bytes)) == file && PhotoIntake.Examine(bytes) is PhotoResult.Ok { Facts: var facts }
            ? await DevelopAsync(sha256, work, bytes, facts)
            : new PhotoAnswer.NotShown(PhotoFault.Damaged);
    }

    private async Task<PhotoAnswer> DevelopAsync(string sha256, PhotoWork work, ReadOnlyMemory<byte> original, PhotoFacts facts)
    {
        var answer = await developer.DevelopAsync(work, original, facts, life.ApplicationStopping);
        if (garage.IsLookedAtOnly)
        {
            return answer;
        }

        try
        {
            Keep(sha256, answer);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The disk is full, or cannot be written: it is shown all the same, and made again next time.
        }

        return answer;
    }

    private void Keep(string sha256, PhotoAnswer answer)
    {
        lock (_slips)
        {
            var before = _files.SlipOf(sha256) ?? new PhotoSlip(PhotoSlip.Current, sha256);
            var slip = answer switch
            {
                PhotoAnswer.Copies copies => before with
                {
                    Display = _files.Keep(sha256, CopyKind.Display, copies.Display),
                    Thumbnail = _files.Keep(sha256, CopyKind.Thumbnail, copies.Thumbnail),
                    Figures = copies.Figures,
                    Fault = null,
                },
                PhotoAnswer.Print(var jpeg) => before with { Print = _files.Keep(sha256, CopyKind.Print, jpeg) },
                PhotoAnswer.NotShown(var fault) when before.Display is null => before with { Fault = fault },
                _ => null,
            };
            if (slip is not null)
            {
                _files.Keep(slip);
            }
        }
    }

    /// <summary>What is under way.</summary>
    /// <param name="Sha256">The original.</param>
    /// <param name="Work">What is wanted.</param>
    /// <param name="IsInHand">Whether its bytes are in memory already. One that is has room for them, and must not wait for one
    /// that waits for room.</param>
    private sealed record Order(string Sha256, PhotoWork Work, bool IsInHand);
}
