using System.Collections.Concurrent;
using InspectLog.Photos;
using InspectLog.Photos.Alignment;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Media;

/// <summary>Lays earlier photos over later ones of the same view. A photo is known by the hash of its bytes, so that what was found
/// for a pair holds for good. Safe for use by many threads.</summary>
/// <param name="copies">The copies that pages show.</param>
/// <param name="developer">Makes the small pictures that are compared.</param>
public sealed class LaidOverPhotos(PhotoCopies copies, IPhotoDeveloper developer) : IDisposable
{
    private readonly ConcurrentDictionary<(string Then, string Now), LaidOver> _found = new();
    private readonly SemaphoreSlim _turn = new(1, 1); // a core is left to those who capture

    /// <summary>Lays one over the other; takes a few tenths of a second for a pair that nobody asked for yet.</summary>
    /// <param name="then">SHA-256 of the earlier photo.</param>
    /// <param name="now">SHA-256 of the later photo.</param>
    /// <param name="cancellationToken">Given up while waiting.</param>
    public async Task<LaidOver> OfAsync(string then, string now, CancellationToken cancellationToken)
    {
        if (_found.TryGetValue((then, now), out var known))
        {
            return known;
        }

        if (await GreyAsync(then, cancellationToken) is not { } earlier || await GreyAsync(now, cancellationToken) is not { } later)
        {
            return new LaidOver.NotSeen();
        }

        await _turn.WaitAsync(cancellationToken);
        try
        {
            var way = await Task.Run(() => ViewAlignment.Of(earlier, later), cancellationToken);
            return _found.GetOrAdd((then, now), way is null ? new LaidOver.OtherView() : new LaidOver.Fits(way));
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _turn.Dispose();

    /// <summary>Of the display copy, which is decoded in a fraction of the original's time.</summary>
    private async Task<GreyPicture?> GreyAsync(string sha256, CancellationToken cancellationToken) =>
        await copies.OfAsync(sha256, CopyKind.Display, cancellationToken) is PhotoCopy.Ready(var jpeg)
        && PhotoIntake.Examine(jpeg) is PhotoResult.Ok { Facts: var facts }
        && await developer.DevelopAsync(PhotoWork.Grey, jpeg, facts, cancellationToken) is PhotoAnswer.Grey(var picture)
            ? picture
            : null;
}
