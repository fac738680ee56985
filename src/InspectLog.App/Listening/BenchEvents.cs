using System.Collections.Concurrent;
using System.Threading.Channels;

namespace InspectLog.App.Listening;

/// <summary>Something the open pages of an inspection want to know of.</summary>
public abstract record BenchEvent
{
    /// <summary>A transcription has come further.</summary>
    /// <param name="Recording">Sequence of the recording's entry.</param>
    /// <param name="Share">Share done, 0 to 1.</param>
    public sealed record Progress(long Recording, double Share) : BenchEvent;

    /// <summary>The inspection has changed; the page should fetch itself again.</summary>
    public sealed record Changed : BenchEvent;
}

/// <summary>Passes events from the worker and from requests to the open pages of the same inspection.</summary>
public sealed class BenchEvents
{
    /// <summary>A page that has fallen this far behind loses its oldest events; each "changed" says it all anyway.</summary>
    private const int MostWaiting = 64;

    private readonly ConcurrentDictionary<(string Vehicle, long Inspection, Guid Page), Channel<BenchEvent>> _pages = new();

    /// <summary>Tells the open pages of an inspection.</summary>
    public void Publish(string vehicleId, long inspection, BenchEvent happened)
    {
        foreach (var (page, channel) in _pages)
        {
            if (IsOf(page, vehicleId, inspection))
            {
                channel.Writer.TryWrite(happened);
            }
        }
    }

    /// <summary>Tells the open pages of every inspection.</summary>
    public void PublishToAll(BenchEvent happened)
    {
        foreach (var channel in _pages.Values)
        {
            channel.Writer.TryWrite(happened);
        }
    }

    /// <summary>Whether somebody has an inspection open.</summary>
    public bool IsFollowed(string vehicleId, long inspection) => _pages.Keys.Any(page => IsOf(page, vehicleId, inspection));

    /// <summary>Follows the events of an inspection, from now on until it is disposed.</summary>
    public Following Follow(string vehicleId, long inspection)
    {
        var page = (vehicleId, inspection, Guid.NewGuid());
        var channel = Channel.CreateBounded<BenchEvent>(
            new BoundedChannelOptions(MostWaiting) { FullMode = BoundedChannelFullMode.DropOldest });
        _pages[page] = channel;
        return new(channel.Reader, () => _pages.TryRemove(page, out _));
    }

    private static bool IsOf((string Vehicle, long Inspection, Guid Page) page, string vehicleId, long inspection) =>
        page.Vehicle == vehicleId && page.Inspection == inspection;
}

/// <summary>The events that one page follows.</summary>
public sealed class Following(ChannelReader<BenchEvent> events, Action end) : IDisposable
{
    /// <summary>Each as it comes, until it is cancelled.</summary>
    public IAsyncEnumerable<BenchEvent> AllAsync(CancellationToken cancellationToken) => events.ReadAllAsync(cancellationToken);

    /// <inheritdoc/>
    public void Dispose() => end();
}
