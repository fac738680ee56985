using System.Collections.Concurrent;

namespace InspectLog.App.Access;

/// <summary>When paired devices were last seen, since the program was started.</summary>
public sealed class Sightings
{
    private readonly ConcurrentDictionary<long, DateTimeOffset> _seen = new();

    /// <summary>Notes that a device was here.</summary>
    public void Note(long access, DateTimeOffset when) => _seen[access] = when;

    /// <summary>When a device was last seen; null where it was not.</summary>
    public DateTimeOffset? Last(long access) => _seen.TryGetValue(access, out var when) ? when : null;
}
