using Microsoft.AspNetCore.HostFiltering;
using Microsoft.Extensions.Options;
using Microsoft.Extensions.Primitives;

namespace InspectLog.App.Network;

/// <summary>Knows the names this computer is reached by, looks again now and then, and tells the host filter when they
/// change: a router may give the computer another address at any time. Safe for use by many threads.</summary>
public sealed class NamesWatch : IOptionsChangeTokenSource<HostFilteringOptions>, IDisposable
{
    private static readonly TimeSpan LookAgainAfter = TimeSpan.FromSeconds(5);

    private readonly Lock _looking = new();
    private readonly Func<ReachableNames> _look;
    private readonly TimeProvider _time;
    private CancellationTokenSource _changed = new();
    private ReachableNames _names;
    private long _looked;

    /// <param name="look">Looks which names there are.</param>
    /// <param name="time">The clock.</param>
    public NamesWatch(Func<ReachableNames> look, TimeProvider time)
    {
        (_look, _time) = (look, time);
        (_names, _looked) = (look(), time.GetTimestamp());
    }

    string? IOptionsChangeTokenSource<HostFilteringOptions>.Name => Options.DefaultName;

    /// <summary>The names, at most a few seconds old.</summary>
    public ReachableNames Now()
    {
        CancellationTokenSource? before = null;
        ReachableNames names;
        lock (_looking)
        {
            if (_time.GetElapsedTime(_looked) >= LookAgainAfter)
            {
                _looked = _time.GetTimestamp();
                var now = _look();
                if (!now.Equals(_names))
                {
                    _names = now;
                    (before, _changed) = (_changed, new());
                }
            }

            names = _names;
        }

        before?.Cancel();
        before?.Dispose();
        return names;
    }

    public IChangeToken GetChangeToken()
    {
        lock (_looking)
        {
            return new CancellationChangeToken(_changed.Token);
        }
    }

    public void Dispose() => _changed.Dispose();
}
